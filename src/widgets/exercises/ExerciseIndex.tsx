/** On the list of exercises: whose numbers, and all tries of that learner. */
import { LearnerForm, useMember } from './LearnerForm.tsx';
import { Tries } from './Tries.tsx';

export const Whose = LearnerForm;

export function AllTries({ titles }: { titles: Readonly<Record<string, string>> }) {
  return <Tries learner={useMember().learner} titles={titles} />;
}

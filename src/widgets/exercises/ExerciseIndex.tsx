/** On the list of exercises: whose numbers, and all tries of that learner. */
import { exercises } from '../../exercises/index.ts';
import { LearnerForm, useMember } from './LearnerForm.tsx';
import { Tries } from './Tries.tsx';

const titles = Object.fromEntries(exercises.map(({ id, title }) => [id, title]));

export const Whose = LearnerForm;

export function AllTries() {
  return <Tries learner={useMember().learner} titles={titles} />;
}

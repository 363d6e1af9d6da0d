/** The page of one exercise: whose numbers, the task, the worked example, the tries. */
import type { Exercise } from '../../exercises/core/exercise.ts';
import { units } from '../../notebook/units.ts';
import type { GivenFigure } from './GivenNumbers.tsx';
import { LearnerForm, useMember } from './LearnerForm.tsx';
import { OwnTask } from './OwnTask.tsx';
import { Tries } from './Tries.tsx';
import { Worked } from './Worked.tsx';

interface Props {
  exercise: Exercise;
  /** Where the question needs a drawing to be understood. */
  figure?: GivenFigure | undefined;
}

function ExercisePage({ exercise, figure }: Props) {
  const { learner } = useMember();
  const system = units.value;
  return (
    <>
      <section class="mine" aria-labelledby="mine">
        <h2 id="mine">My numbers</h2>
        <LearnerForm />
        {learner ? (
          <OwnTask
            key={`${learner.className} ${learner.number} ${system}`}
            exercise={exercise}
            learner={learner}
            system={system}
            figure={figure}
          />
        ) : (
          <p class="own-task only-awake">
            Your class and your number give you numbers of your own, the same on every device.
          </p>
        )}
      </section>
      <section aria-labelledby="worked">
        <h2 id="worked">A worked example</h2>
        <Worked exercise={exercise} system="mm" figure={figure} />
        <Worked exercise={exercise} system="inch" figure={figure} />
      </section>
      <Tries learner={learner} exercise={exercise.id} titles={{}} />
    </>
  );
}

/** The island of an exercise. */
export const pageOf = (exercise: Exercise, figure?: GivenFigure) => () => (
  <ExercisePage exercise={exercise} figure={figure} />
);

/** The tries of the learner who is at the page, to look back at and to print. They stay on this device. */
import { clearTries, type Member, tries } from '../../notebook/learning/exercises.ts';

interface Props {
  learner: Member | undefined;
  /** One exercise alone, else all. */
  exercise?: string;
  /** Titles by id. */
  titles: Readonly<Record<string, string>>;
}

export function Tries({ learner, exercise, titles }: Props) {
  const own = learner
    ? tries.value.filter(
        (one) =>
          one.className === learner.className &&
          one.number === learner.number &&
          (exercise === undefined || one.exercise === exercise),
      )
    : [];
  return (
    <section class="tries" aria-labelledby="tries">
      <h2 id="tries">My tries</h2>
      <p>
        Nothing is sent anywhere: your tries stay in this browser until you clear them. Who wants to see them
        gets them from you, on paper.
      </p>
      {learner && own.length > 0 && (
        <>
          <p class="of-whom">
            Class {learner.className}, number {learner.number}
          </p>
          <ol>
            {own.map((one, at) => (
              <li key={at}>
                {exercise === undefined && `${titles[one.exercise] ?? one.exercise}, `}
                {one.asked}: <b>{one.entry}</b> {one.right && <span aria-hidden="true">✓ </span>}
                <span class="said">{one.said}</span>
              </li>
            ))}
          </ol>
          <p>
            <button type="button" onClick={() => print()}>
              print this page
            </button>{' '}
            <button type="button" class="quiet" onClick={clearTries}>
              clear all tries
            </button>
          </p>
        </>
      )}
      {own.length === 0 && <p class="none-yet">None yet.</p>}
    </section>
  );
}

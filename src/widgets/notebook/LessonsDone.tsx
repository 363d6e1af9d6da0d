/** On the notebook's page: how far the reader is in each lesson. */
import { useProgress } from '../home/use-progress.ts';
import { href } from '../kit/href.ts';

interface Props {
  course: readonly { readonly id: string; readonly title: string; readonly steps: readonly string[] }[];
}

export function LessonsDone({ course }: Props) {
  const { progress } = useProgress();
  const doneIn = ({ id, steps }: Props['course'][number]) =>
    steps.filter((step) => progress[id]?.steps[step]).length;
  const whole = course.filter((lesson) => doneIn(lesson) === lesson.steps.length).length;
  return (
    <section aria-labelledby="lessons-done">
      <h2 id="lessons-done">How far I am</h2>
      <p>
        {whole} of {course.length} lessons are done.
      </p>
      <ol class="lessons-done">
        {course.map((lesson) => {
          const done = doneIn(lesson);
          return (
            <li key={lesson.id}>
              <a href={href(`lessons/${lesson.id}/`)}>{lesson.title}</a>{' '}
              <small>{done === lesson.steps.length ? 'done ✓' : `${done} of ${lesson.steps.length}`}</small>
            </li>
          );
        })}
      </ol>
    </section>
  );
}

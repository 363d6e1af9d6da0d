/** How far the reader is in one lesson: a small box for each of its questions, hatched in pencil when it is done. */
import { useProgress } from './use-progress.ts';

export interface Props {
  lesson: string;
  /** Names of its steps, in order. */
  steps: readonly string[];
}

export default function StepsDone({ lesson, steps }: Props) {
  const states = useProgress().progress[lesson]?.steps ?? {};
  const done = steps.filter((step) => states[step]).length;
  const skipped = steps.filter((step) => states[step] === 'skipped').length;
  const words =
    done === 0
      ? `${steps.length} questions`
      : done < steps.length
        ? `${done} of ${steps.length}`
        : skipped > 0
          ? `done, ${skipped} skipped`
          : 'done';
  return (
    <p class="steps-done">
      {steps.map((step) => (
        <i key={step} class={states[step]} />
      ))}
      {words}
    </p>
  );
}

/**
 * The fold at the head of a lesson: three questions from earlier lessons. The page is built with three that are the same for
 * everybody; once it is opened, the reader's own are fetched in their place.
 */
import type { ComponentChildren } from 'preact';
import { useOpen } from '../kit/use-open.ts';
import { useFetched } from './use-fetched.ts';
import { fetchWords } from './words.ts';

interface Props {
  lesson: string;
  /** Where the questions are. */
  file: string;
  children?: ComponentChildren;
}

export default function RecallHere({ lesson, file, children }: Props) {
  const { open, fold } = useOpen();
  const { found } = useFetched(
    async () => ({ part: await import('./late-recall.tsx'), ...(await fetchWords(file)) }),
    open.value,
  );
  return (
    <details class="recalls" {...fold}>
      <summary>
        <span>Do you still know?</span> Three questions from earlier lessons
      </summary>
      <div class="recalls-in">
        {typeof found === 'object' ? (
          <found.part.BeforeLesson lesson={lesson} questions={found.questions} />
        ) : (
          <>
            {open.value && (
              <p role="status">
                {found === 'missing'
                  ? 'Your own questions could not be fetched. These are the same for everybody, and nothing is kept of them. Close this and open it again when there is a network.'
                  : 'One moment …'}
              </p>
            )}
            {/* Those built into the page would be read for a moment and then change. */}
            <div hidden={open.value && found === undefined}>{children}</div>
          </>
        )}
      </div>
    </details>
  );
}

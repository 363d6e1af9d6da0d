/**
 * The line "my tries" under a figure. What keeps the tries is fetched with the first touch of the figure; all that is
 * done here is to look at what stood there before.
 */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useOpen } from '../kit/use-open.ts';
import { type TryLog, tryIn } from './try-in.ts';

export function LabTries({ title }: { title: string }) {
  const { open, fold } = useOpen();
  const log = useSignal<TryLog | 'missing' | undefined>(undefined);
  const wake = () => {
    const lab = fold.ref.current?.closest('.lab');
    if (!lab || typeof log.peek() === 'object') return;
    const start = tryIn(lab);
    import('./tries-log.tsx').then(
      ({ logOf }) => {
        if (typeof log.peek() !== 'object') log.value = logOf(lab, title, start);
      },
      () => {
        log.value = 'missing';
      },
    );
  };
  useEffect(() => {
    const lab = fold.ref.current?.closest('.lab');
    for (const touch of ['pointerdown', 'keydown'])
      lab?.addEventListener(touch, wake, { capture: true, once: true });
  }, []);
  useEffect(() => {
    if (open.value) wake();
  }, [open.value]);
  const found = log.value;
  return (
    <div class="lab-tries">
      <details {...fold}>
        <summary>my tries</summary>
        {typeof found === 'object' ? (
          <found.List />
        ) : (
          found && (
            <p role="status">
              The tries could not be fetched. Close this and open it again when there is a network.
            </p>
          )
        )}
      </details>
      {typeof found === 'object' && <found.Nudge />}
    </div>
  );
}

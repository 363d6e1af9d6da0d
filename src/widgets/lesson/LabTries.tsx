/**
 * The line "my tries" under a figure. What keeps the tries is fetched with the first touch of the figure; all that is
 * done here is to look at what stood there before.
 */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { LabTry, Setting } from '../../notebook/lab-tries.ts';
import { useOpen } from '../kit/use-open.ts';
import type { TryLog } from './tries-log.tsx';

const settingOf = (control: Element): Setting[] => {
  const field = control.querySelector<HTMLInputElement | HTMLSelectElement>(
    '[type=text],select,[type=range]',
  );
  const name = control.querySelector('label')?.firstChild?.textContent?.trim();
  if (!field || !name) return [];
  const shown =
    field.tagName === 'SELECT'
      ? (field as HTMLSelectElement).selectedOptions[0]?.text
      : field.type === 'range'
        ? field.getAttribute('aria-valuetext')
        : `${field.value} ${control.querySelector('.unit')?.textContent ?? ''}`;
  return [{ name, shown: shown?.trim() ?? '', value: field.value, main: !control.closest('.more') }];
};

/** What stands in a figure's controls and results now, as the reader sees it. */
export function tryIn(lab: Element): LabTry {
  const lines = (selector: string) =>
    // biome-ignore lint/performance/useDomNodeTextContent: what is seen, without the other units.
    [...lab.querySelectorAll<HTMLElement>(selector)].slice(0, 2).map((one) => one.innerText.trim());
  const got = lines('.results > .result > summary > strong');
  const labels = lines('.results > .result .result-label');
  return {
    set: [...lab.querySelectorAll('.control')].flatMap(settingOf),
    // A figure without rows says what it shows.
    got: got.length ? got.map((value, at) => `${labels[at]}: ${value}`) : lines('.says').slice(0, 1),
  };
}

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

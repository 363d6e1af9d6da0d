/** What stands in a figure at one moment, read from the page as the reader sees it. */
import type { FunctionComponent } from 'preact';
import type { LabTry, Setting } from '../../notebook/learning/lab-tries.ts';

/** The parts of a log that are shown: the tries, and the nudge. */
export interface TryLog {
  readonly List: FunctionComponent;
  readonly Nudge: FunctionComponent;
}

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

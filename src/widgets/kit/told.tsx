/** The words of a verdict's state, and its numbers in the reader's units. */
import { type Told, tell } from '../../box/core/tell.ts';
import type { State, Verdict } from '../../box/core/verdict.ts';

/** Mark, and word, of each state. */
export const stateWords: Readonly<Record<State, readonly [mark: string, word: string]>> = {
  usual: ['✓', 'inside the usual range'],
  unusual: ['△', 'outside the usual range'],
  breaks: ['×', 'breaks something'],
  unknown: ['?', 'cannot be judged'],
};

/** "0.047 in, half way from 1/32 to 1/16": the number, and the mark of the rule beside it. */
export const numberAndMark = (measured: string): readonly [number: string, mark: string] => {
  const [number = '', ...mark] = measured.split(', ');
  return [number, mark.join(', ')];
};

/** The worst first, so that a reader on a phone sees it without scrolling. */
export const worstFirst = (one: Verdict, other: Verdict): number =>
  order.indexOf(one.state) - order.indexOf(other.state);
const order: readonly State[] = ['breaks', 'unusual', 'unknown', 'usual'];

/** How many verdicts are in each state, in a sentence; who cannot be judged is only named where there are some. */
export function countOf(verdicts: readonly Verdict[]): string {
  const count = (state: State) => verdicts.filter((one) => one.state === state).length;
  const unknown = count('unknown');
  return `${count('breaks')} rules broken, ${count('unusual')} outside the usual range, ${count('usual')} inside it${unknown ? `, ${unknown} that cannot be judged` : ''}`;
}

/** One text of a verdict, in both units; the style sheet shows the reader's. */
export function InBoth({ verdict, part }: { verdict: Verdict; part: (told: Told) => string }) {
  const [mm, inch] = [part(tell(verdict, 'mm')), part(tell(verdict, 'inch'))];
  if (mm === inch) return <span class="number">{mm}</span>;
  return (
    <>
      <span class="number mm">{mm}</span>
      <span class="number inch">{inch}</span>
    </>
  );
}

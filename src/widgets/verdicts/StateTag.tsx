/** What a rule says of the box in one word, with its mark: drawn, so that no face need be fetched for it. */
import type { State } from '../../box/core/verdict.ts';

const words: Readonly<Record<State, readonly [word: string, shape: string]>> = {
  usual: ['kept', 'M1.5 6.5L4.5 9.5L10.5 2.5'],
  unusual: ['look', 'M6 1.2L11.2 10.4H0.8Z'],
  breaks: ['breaks', 'M2 2L10 10M10 2L2 10'],
  unknown: ['not known', 'M1 6H11'],
};

export function StateTag({ state }: { state: State }) {
  const [word, shape] = words[state];
  return (
    <span class={`state-tag ${state}`}>
      <svg viewBox="0 0 12 12" aria-hidden="true">
        <path d={shape} />
      </svg>{' '}
      {word}
    </span>
  );
}

/** The mark of a state, always beside its word or its count: drawn, so that no face need be fetched for it. */

/** How many of some warnings break something, and how many are to be looked at. */
export interface Count {
  readonly breaks: number;
  readonly looks: number;
}

const shapes = {
  kept: 'M1.5 6.5L4.5 9.5L10.5 2.5',
  look: 'M6 1.2L11.2 10.4H0.8Z',
  breaks: 'M2 2L10 10M10 2L2 10',
} as const;

export const Mark = ({ of }: { of: keyof typeof shapes }) => (
  <svg class="mark-drawn" viewBox="0 0 12 12" aria-hidden="true">
    <path d={shapes[of]} />
  </svg>
);

/** How many warnings, the broken ones first; nothing where there are none. */
export function CountMark({ count: { breaks, looks } }: { count: Count }) {
  if (breaks + looks === 0) return null;
  const state = breaks > 0 ? 'breaks' : 'look';
  return (
    <span class={`count ${state}`}>
      <Mark of={state} /> {breaks || looks}
      <span class="heard">{breaks > 0 ? ' broken' : ' to look at'}</span>
    </span>
  );
}

/** Two sheets for the lid of August: one for a phone or a column of text, one for a page as wide as the front page. */
import { INCH } from '../../../units/index.ts';
import type { GuessFrame } from '../../parts/guess-frame.ts';

/** What the edge may be pushed, mm: as far as the rule goes. */
export const augustRange = { low: 0, high: INCH / 4 } as const;

/** All in user units of the sheet, unless it says otherwise. */
export interface AugustLayout {
  readonly frame: GuessFrame;
  /** User units for a millimeter of the box, and how many times larger the lens shows it. */
  readonly whole: number;
  readonly times: number;
  /** Where the box stands: its middle, its top, and how much of its height is shown, mm. */
  readonly box: { readonly middle: number; readonly top: number; readonly shown: number };
  readonly lens: {
    readonly left: number;
    readonly top: number;
    readonly right: number;
    readonly foot: number;
  };
  /** In the lens: where the lid's edge stands in March, and the wood above the groove. */
  readonly zero: number;
  readonly above: number;
  /** Between lines of words. */
  readonly line: number;
  /** Whether words keep their size whatever the width of the sheet. */
  readonly atSize: boolean;
}

/** A sheet on which the mark is dragged along the lens. */
function layout(width: number, height: number, rest: Omit<AugustLayout, 'frame'>): AugustLayout {
  const { zero, whole, times, lens, above } = rest;
  // Below the words beside the lid's edge.
  const y = lens.foot - (lens.foot - lens.top - above) * 0.36;
  const way = (augustRange.high - augustRange.low) * whole * times;
  return { ...rest, frame: { width, height, from: [zero, y], to: [zero + way, y] } };
}

export const narrowSheet = layout(350, 282, {
  whole: 2.75,
  times: 13,
  box: { middle: 175, top: 34, shown: 15 },
  lens: { left: 2, top: 94, right: 348, foot: 224 },
  zero: 96,
  above: 26,
  line: 18,
  atSize: false,
});

export const wideSheet = layout(952, 302, {
  whole: 10 / 3,
  times: 12,
  box: { middle: 232, top: 56, shown: 300 },
  lens: { left: 510, top: 26, right: 930, foot: 232 },
  zero: 628,
  above: 36,
  line: 21,
  atSize: true,
});

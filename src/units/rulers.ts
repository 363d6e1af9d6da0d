/**
 * The rulers a reader may have, and what a size reads on one. A size that lies between two marks has `~` before it; one
 * that is rounded the safe way, a panel down or a rough board up, lies on a mark by intent.
 *
 * Without a choice a reader in inches has a rule in 32nds, and one in millimeters a rule in halves: the finest lines that
 * are told apart with the naked eye at a bench, and those the example of the site lies on.
 */
import { INCH, type UnitSystem } from './kinds.ts';
import { NOISE, type Rounding, roundSteps } from './rounding.ts';

export const rulerNames = ['1/16 in', '1/32 in', '1/64 in', '0.01 in', '1 mm', '0.5 mm'] as const;
export type RulerName = (typeof rulerNames)[number];

export interface Ruler {
  readonly name: RulerName;
  readonly system: UnitSystem;
  /** From one mark to the next, mm. */
  readonly mark: number;
  /** The next finer mark a maker works to with a knife: for panels and for what is left beside them, mm. */
  readonly fit: number;
  /** How a number that lies on a mark is printed. */
  readonly print: { readonly denominator?: 100 | 64; readonly digits?: 1 | 2 };
}

const inches = (name: RulerName, mark: number): Ruler => ({
  name,
  system: 'inch',
  mark: mark * INCH,
  fit: INCH / 64,
  print: { denominator: 64 },
});
const millimeters = (name: RulerName, mark: number): Ruler => ({
  name,
  system: 'mm',
  mark,
  fit: 0.1,
  print: { digits: 1 },
});

export const rulers: Readonly<Record<RulerName, Ruler>> = {
  '1/16 in': inches('1/16 in', 1 / 16),
  '1/32 in': inches('1/32 in', 1 / 32),
  '1/64 in': inches('1/64 in', 1 / 64),
  '0.01 in': { ...inches('0.01 in', 0.01), fit: 0.01 * INCH, print: { denominator: 100 } },
  '1 mm': millimeters('1 mm', 1),
  '0.5 mm': millimeters('0.5 mm', 0.5),
};

/** What a reader of these units measures with until they say otherwise. */
export const usualRuler: Readonly<Record<UnitSystem, Ruler>> = {
  mm: rulers['0.5 mm'],
  inch: rulers['1/32 in'],
};

/** The ruler each of the two ways of writing uses: the reader's own, and the usual one of the other units. */
export type RulerPair = Readonly<Record<UnitSystem, Ruler>>;
export const pairOf = (ruler: Ruler): RulerPair => ({ ...usualRuler, [ruler.system]: ruler });

/** Whether a length in mm is a whole number of marks; arithmetic noise counts as on the mark. */
export const isOn = (value: number, mark: number): boolean =>
  Math.abs(value / mark - Math.round(value / mark)) < NOISE;

/** The length of the mark that a length in mm is rounded to. */
export const toMark = (value: number, mark: number, round?: Rounding): number =>
  roundSteps(value / mark, round) * mark;

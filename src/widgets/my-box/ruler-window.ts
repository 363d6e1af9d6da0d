/** What of a number's field is drawn as a ruler: which marks, how far apart, and where numbers stand below it. */
import type { NumberField } from '../../box/core/field.ts';
import { INCH, type Ruler } from '../../units/index.ts';

/** Marks are drawn at least so far apart, px; about so far where there is room. */
const least = 4.4;
const usual = 9;
/** Between two numbers below the ruler, px. */
const apart = 46;
/** Blank beside the first and the last mark, px. */
const margin = 14;

/** All in whole steps. */
export interface Window {
  readonly from: number;
  readonly to: number;
  /** Between two numbers. */
  readonly label: number;
}

/** Whole numbers of steps after which a longer line and a number may stand: halves and quarters of an inch, or tenths. */
const rounds = (isBinary: boolean): readonly number[] =>
  isBinary ? [1, 2, 4, 8, 16, 32, 64, 128, 256] : [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** Steps that halve an inch again and again; others count in tens. */
export const isBinary = (step: number, { system }: Ruler): boolean => {
  const parts = INCH / step;
  return system === 'inch' && Math.abs(Math.log2(parts) - Math.round(Math.log2(parts))) < 1e-6;
};

/**
 * The window on a field that is shown while a number rests at `now`: from the field's beginning where the number is near
 * it, so that small numbers stand at their place, else around it.
 * @param ends of the field, in steps
 * @param width of the drawing, px
 */
export function windowOf(
  ends: readonly [least: number, most: number],
  now: number,
  width: number,
  binary: boolean,
): Window {
  const room = Math.max(80, width - 2 * margin);
  const span = Math.min(
    ends[1] - ends[0],
    Math.floor(room / (ends[1] - ends[0] <= room / least ? least : usual)),
  );
  const from = now - ends[0] <= span * 0.8 ? ends[0] : Math.min(ends[1] - span, now - Math.round(span / 2));
  const px = room / Math.max(1, span);
  const label = rounds(binary).find((count) => count * px >= apart) ?? span;
  return { from, to: from + span, label };
}

/** Place of a step on the drawing, px. */
export const placeOf = (count: number, { from, to }: Window, width: number): number =>
  margin + ((count - from) / Math.max(1, to - from)) * (width - 2 * margin);

/** The step at a place on the drawing, not whole. */
export const countAt = (x: number, { from, to }: Window, width: number): number =>
  from + ((x - margin) / (width - 2 * margin)) * (to - from);

/** How long the line at a step is, px: longer where more rounds meet. */
export function lineAt(count: number, binary: boolean, label: number): number {
  if (count % label === 0) return 15;
  if (binary) return count % Math.max(1, label / 2) === 0 ? 11 : 7;
  return label % 5 === 0 && count % 5 === 0 ? 11 : 7;
}

/** The ends of a field in steps of a ruler. */
export const endsOf = ({ low, high }: NumberField, step: number): readonly [number, number] => [
  Math.ceil(low / step - 1e-9),
  Math.floor(high / step + 1e-9),
];

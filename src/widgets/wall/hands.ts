/** A show of hands: what can be said by a raised hand, how many hands there were, and where the truth lies. Pure. */
import { format, INCH, type Kind, type UnitSystem } from '../../units/index.ts';

/** The ranges of a scale that hands are counted in. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** No more ranges than a teacher can ask for one after the other. */
const most = 7;

/** Round widths from small to large: 1, 2 and 5 of every power of ten, or halvings of an inch. */
const widths = (isInches: boolean) =>
  isInches
    ? Array.from({ length: 16 }, (_, power) => (INCH / 128) * 2 ** power)
    : Array.from({ length: 8 }, (_, power) => [1, 2, 5].map((times) => times * 10 ** (power - 3))).flat();

/**
 * A scale in a few ranges with round bounds; the last one ends where the scale does, and takes along less than half a range.
 * @param low lowest value of the scale, in the stored unit
 * @param high highest
 */
export function rangesOf(
  { kind, low, high }: { readonly kind: Kind; readonly low: number; readonly high: number },
  system: UnitSystem,
): readonly Range[] {
  const isInches = kind === 'length' && system === 'inch';
  const width = widths(isInches).find((one) => Math.round((high - low) / one) <= most) ?? (high - low) / most;
  const count = Math.max(1, Math.round((high - low) / width + 1e-9));
  return Array.from({ length: count }, (_, at) => ({
    from: low + at * width,
    to: at === count - 1 ? high : low + (at + 1) * width,
  }));
}

/** Which range a value lies in; what lies beyond the scale belongs to its ends. */
export const rangeOf = (ranges: readonly Range[], value: number): number => {
  const at = ranges.findIndex(({ to }) => value < to);
  return at < 0 ? ranges.length - 1 : at;
};

/** “0–0.5 mm”, as short as it can be written. */
export function nameOfRange({ from, to }: Range, kind: Kind, system: UnitSystem): string {
  const write = (value: number, unit: boolean) =>
    format(value, kind, {
      system,
      unit,
      ...(kind === 'length' &&
        (system === 'inch' ? { denominator: 64 } : { digits: isWhole(from, to) ? 0 : 1 })),
    });
  return `${write(from, false)}\u2013${write(to, true)}`;
}
const isWhole = (...values: readonly number[]) =>
  values.every((value) => Math.abs(value - Math.round(value)) < 1e-9);

/** How many hands, in words. */
export const inHands = (count: number): string => (count === 1 ? '1 hand' : `${count} hands`);

/** What a verdict says in numbers, printed so that they bear it out. */
import { type FormatOptions, format, INCH, type UnitSystem } from '../../units/index.ts';
import { type Check, inside, type Range, type Verdict } from './verdict.ts';

/** A verdict's numbers as one reader sees them. */
export interface Told {
  readonly measured: string;
  /** "at least 2 mm", "3 to 6 mm"; empty where the range is open on both sides. */
  readonly usual: string;
}

/** Finer and finer ways to print, until a number outside its range no longer reads as the limit itself. */
const finest = { digits: 3, denominator: 1000 } as const;
const finer: readonly Omit<FormatOptions, 'system'>[] = [{}, { digits: 2, denominator: 64 }, finest];

/** The range as this reader's own page gives it, in mm, where the verdict is the same by it. */
export function rangeFor({ check: { usual: own }, measured, usual }: Verdict, system: UnitSystem): Range {
  if (typeof own === 'function' || !('mm' in own)) return usual;
  const [low, high] = own[system];
  const native: Range = system === 'mm' ? [low, high] : [low * INCH, high * INCH];
  return inside(measured, native) === inside(measured, usual) ? native : usual;
}

/**
 * Prints a verdict so that its numbers bear it out: never "1/32 in, outside the usual range (at least 1/32 in)".
 * What lies so near the limit that a thousandth of an inch does not part them is "just over" or "just under" it.
 */
export function tell(verdict: Verdict, system: UnitSystem): Told {
  const { check, measured } = verdict;
  const [low, high] = rangeFor(verdict, system);
  const print = (value: number, options: Omit<FormatOptions, 'system'>) =>
    format(value, check.kind, {
      ...(check.digits !== undefined && { digits: check.digits }),
      ...options,
      system,
    });
  const isInside = Number.isNaN(measured) || inside(measured, [low, high]);
  // Noise that counts as inside must not be printed as outside.
  const shown = isInside ? Math.min(high, Math.max(low, measured)) : measured;
  const limit = shown < low ? low : high;
  const ways = check.as ? ([{ as: 'exact' }, finest] as const) : finer;
  const parted = ways.find((one) => isInside || print(shown, one) !== print(limit, one));
  const options = parted ?? ways[0]!;
  const just = parted ? '' : shown < limit ? 'just under ' : 'just over ';
  const [least, most] = [low, high].map((end) => (Number.isFinite(end) ? print(end, options) : ''));
  const usual =
    least && most ? `${least} to ${most}` : least ? `at least ${least}` : most ? `at most ${most}` : '';
  return { measured: just + withMark(print(shown, options), print(shown, { as: 'fine' }), check), usual };
}

/** A small number with the mark beside it, where the mark is that of the very number. */
const withMark = <V>(exact: string, fine: string, { as }: Check<V>) =>
  as && fine.startsWith(exact) ? fine : exact;

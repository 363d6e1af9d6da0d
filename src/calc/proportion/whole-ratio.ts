/**
 * The whole-number ratio p : q nearest to any ratio, with q up to a limit.
 *
 * Walks down the Stern–Brocot tree: between a/b and c/d stands (a + c)/(b + d), their mediant; the ratio lies on
 * one side of it, so the other half of the tree is dropped. When the mediant's q passes the limit, the last two
 * ends are the nearest fractions from below and from above. (Graham, Knuth and Patashnik, Concrete Mathematics,
 * section 4.5; from memory.)
 */
import { firstRefusal, type Refused } from '../core/refusal.ts';

export interface WholeRatio {
  /** Length to width, in lowest terms: p parts to q parts. */
  readonly p: number;
  readonly q: number;
  /** By how many percent p : q is longer (positive) or shorter than the ratio asked for. */
  readonly difference: number;
}

/**
 * @param ratio length over width, from 0.01 to 100.
 * @param largest the largest q allowed, a whole number from 1 to 1000; for rulers and finger counts up to 64.
 * @returns the nearest; of two equally near ones that with the smaller q. A sentence where an input is unfit.
 */
export function nearestWholeRatio(ratio: number, largest: number): WholeRatio | Refused {
  const refused = firstRefusal(
    ['ratio', ratio, 0.01, 100, ''],
    ['largest number of parts', largest, 1, 1000, ''],
  );
  if (refused) return refused;
  let [below, above] = [
    { p: 0, q: 1 },
    { p: 1, q: 0 },
  ];
  for (;;) {
    const mediant = { p: below.p + above.p, q: below.q + above.q };
    if (mediant.q > largest) break;
    if (mediant.p / mediant.q === ratio) return { ...mediant, difference: 0 };
    if (mediant.p / mediant.q < ratio) below = mediant;
    else above = mediant;
  }
  const miss = ({ p, q }: { p: number; q: number }) => Math.abs(p / q - ratio);
  const near = miss(below) - miss(above) || below.q - above.q;
  // A side of no parts at all is no ratio.
  const nearer = near < 0 && below.p > 0 ? below : above;
  return { ...nearer, difference: 100 * (nearer.p / nearer.q / ratio - 1) };
}

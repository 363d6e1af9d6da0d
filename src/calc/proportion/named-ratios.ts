/**
 * Ratios that have a name, as numbers of length to width. Pure numbers, no units.
 *
 *   golden ratio   r = 1 + 1 / r, hence r = (1 + √5) / 2: cut a square off, and the rest has the same shape
 *   root two       r = 2 / r,     hence r = √2: cut it in half, and each half has the same shape
 *
 * A name says nothing about how pleasing a ratio is; see the rule `simple-ratio` for how weak that evidence is.
 */

/** (1 + √5) / 2 ≈ 1.618034, the positive solution of r² = r + 1. */
export const goldenRatio = (1 + Math.sqrt(5)) / 2;

export interface NamedRatio {
  /** Short, for a drawing: "3:2". */
  readonly name: string;
  /** For a sentence: "three to two". */
  readonly words: string;
  /** Length over width, 1 or more. */
  readonly value: number;
}

/** The named ratios, shortest first. */
export const namedRatios = [
  { name: '1:1', words: 'square', value: 1 },
  { name: '4:3', words: 'four to three', value: 4 / 3 },
  { name: '√2:1', words: 'root two, the shape of A-series paper', value: Math.SQRT2 },
  { name: '3:2', words: 'three to two', value: 3 / 2 },
  { name: '8:5', words: 'eight to five', value: 8 / 5 },
  { name: 'golden', words: 'the golden ratio', value: goldenRatio },
  { name: '5:3', words: 'five to three', value: 5 / 3 },
  { name: '2:1', words: 'two to one', value: 2 },
] as const satisfies readonly NamedRatio[];

/**
 * The named ratio nearest to a ratio, by percent and not by difference, so that both directions count alike.
 * @param ratio length over width, any positive number.
 * @param among which ratios to choose from; the first of equals wins.
 */
export function nearestNamedRatio(
  ratio: number,
  among: readonly NamedRatio[] = namedRatios,
): NamedRatio | undefined {
  const distance = ({ value }: NamedRatio) => Math.abs(Math.log(ratio / value));
  return among.reduce<NamedRatio | undefined>(
    (best, one) => (best && distance(best) <= distance(one) ? best : one),
    undefined,
  );
}

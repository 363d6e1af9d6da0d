/**
 * What to expect of a box cut with the reader's own errors: worst case, and a few thousand boxes cut at random.
 *
 * Each error is the largest that usually happens, ±. In a random run every cut draws its own error, evenly between
 * the two ends; the same seed gives the same boxes. Angles are in degrees, everything else in mm.
 *
 *   corner    the widest gap at a corner once the others are closed
 *   square    how far a corner stands off square, from opposite parts of unequal length, diagonals clamped equal
 *   lid       what is left of the lid's running clearance at the narrower end
 */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export interface Errors {
  /** ± degrees of every cut across a part. */
  readonly angle: number;
  /** ± mm of every part's length. */
  readonly length: number;
  /** ± mm of every step of the finger jig; it adds up where the mating parts are cut apart. */
  readonly step: number;
}

export interface Cut {
  /** Height of the walls and their thickness; mm. */
  readonly height: number;
  readonly wall: number;
  /** Miters close at 45°, all other joints at square ends. */
  readonly mitered: boolean;
  /** Steps of a finger jig on each end; 0 for joints without one. */
  readonly steps: number;
  /** Running clearance the lid is cut for. */
  readonly lidClearance: number;
}

export interface Expected {
  readonly corner: number;
  readonly square: number;
  /** Negative: the lid jams. */
  readonly lid: number;
}

/** How one box comes out: `draw(± largest)` gives each error. */
function boxOf(cut: Cut, errors: Errors, draw: (largest: number) => number): Expected {
  const radians = Math.PI / 180;
  const side1 = draw(errors.length);
  const side2 = draw(errors.length);
  const end1 = draw(errors.length);
  const end2 = draw(errors.length);
  // Where opposite parts differ, the four corners cannot all be square; the last one takes the difference.
  const mismatch = Math.max(Math.abs(side1 - side2), Math.abs(end1 - end2));
  let corner: number;
  if (cut.mitered) {
    let angle = 0;
    for (let index = 0; index < 8; index++) angle += draw(errors.angle);
    corner = cut.wall * Math.SQRT2 * Math.abs(Math.sin(angle * radians)) + mismatch / Math.SQRT2;
  } else {
    // A square end that leans opens along the height; fingers that drift apart hold the corner open by their sum.
    let drift = 0;
    for (let index = 0; index < cut.steps; index++) drift += draw(errors.step) - draw(errors.step);
    corner = cut.height * Math.abs(Math.tan(draw(errors.angle) * radians)) + Math.abs(drift);
  }
  // Clamped to equal diagonals, four unequal sides make a trapezoid: each corner leans by half the difference.
  const square = mismatch / 2;
  // Grooves stand as far apart as the ends are long; the lid itself is cut with the same length error.
  const lid = cut.lidClearance + Math.min(end1, end2) - draw(errors.length);
  return { corner, square, lid };
}

/** Every error at its end, all in the bad direction. */
export function worstCase(cut: Cut, errors: Errors): Expected {
  const mismatch = 2 * errors.length;
  const radians = Math.PI / 180;
  return {
    corner: cut.mitered
      ? cut.wall * Math.SQRT2 * Math.sin(Math.min(90, 8 * errors.angle) * radians) + mismatch / Math.SQRT2
      : cut.height * Math.tan(errors.angle * radians) + 2 * cut.steps * errors.step,
    square: mismatch / 2,
    lid: cut.lidClearance - 2 * errors.length,
  };
}

export interface RandomRun {
  readonly boxes: number;
  /** The value that half of the boxes stay below, and 95 of 100; for the lid, that they stay above. */
  readonly half: Expected;
  readonly most: Expected;
  /** Share of boxes whose lid jams, 0 to 1. */
  readonly jams: number;
  /** Every box, in the order drawn, for a histogram. */
  readonly all: readonly Expected[];
}

/**
 * Cuts so many boxes at random.
 * @param seed any whole number; the same seed gives the same boxes
 * @param boxes a few thousand settle the 95 of 100 to about two per cent
 */
export function randomRun(cut: Cut, errors: Errors, seed: number, boxes = 2000): RandomRun {
  const random = xoroshiro128plus(seed);
  const draw = (largest: number) => (2 * uniformFloat64(random) - 1) * largest;
  const all = Array.from({ length: boxes }, () => boxOf(cut, errors, draw));
  const at = (key: keyof Expected, share: number) => {
    const sorted = all.map((one) => one[key]).sort((a, b) => a - b);
    return sorted[Math.min(boxes - 1, Math.floor(share * boxes))]!;
  };
  const quantile = (share: number): Expected => ({
    corner: at('corner', share),
    square: at('square', share),
    lid: at('lid', 1 - share),
  });
  return {
    boxes,
    half: quantile(0.5),
    most: quantile(0.95),
    jams: all.filter(({ lid }) => lid < 0).length / boxes,
    all,
  };
}

/**
 * Which error costs most: how much the corner gap of 95 in 100 boxes shrinks when one error alone is taken away.
 * @returns the errors, the costliest first, with the gap saved in mm.
 */
export function costliest(
  cut: Cut,
  errors: Errors,
  seed: number,
  boxes = 1000,
): { error: keyof Errors; saves: number }[] {
  const now = randomRun(cut, errors, seed, boxes).most.corner;
  return (Object.keys(errors) as (keyof Errors)[])
    .map((error) => ({
      error,
      saves: now - randomRun(cut, { ...errors, [error]: 0 }, seed, boxes).most.corner,
    }))
    .sort((a, b) => b.saves - a.saves);
}

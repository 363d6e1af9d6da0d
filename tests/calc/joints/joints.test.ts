/** Joint spacing. Sources beside each value; the worked numbers of the trade are common practice, no source. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as layout from '../../../src/calc/joints/finger-layout.ts';
import * as area from '../../../src/calc/joints/glue-area.ts';
import * as fit from '../../../src/calc/joints/joint-fit.ts';

const inch = 25.4;
const height = fc.double({ min: 15, max: 300, noNaN: true });
const width = fc.double({ min: 2, max: 25, noNaN: true });

describe('finger layout', () => {
  // Common practice, no source: 4 in at 3/8 in gives 10.7; use 11 × 9.5 = 105 mm or 13 × 7.9 = 103 mm.
  test('a wall 4 in high and a 3/8 in cutter give 10.7 fingers', () => {
    expect(layout.fingerCount.compute({ H: 4 * inch, f: (3 / 8) * inch })).toBeCloseTo(10.67, 2);
    const odd = (f: number) => {
      const n = layout.nearestOddCount.compute({ H: 4 * inch, f });
      return [n, layout.heightFromFingers.compute({ n, f })];
    };
    expect(odd((5 / 16) * inch)).toEqual([13, expect.closeTo(103.2, 1)]);
    expect(odd((3 / 8) * inch)).toEqual([11, expect.closeTo(104.8, 1)]);
  });

  // By hand: 9.5 + 9.5 + … ten times is 95; 102 − 95 = 7.
  test('what is left at the edge is what ten whole fingers leave of the height', () => {
    expect(layout.sliver.compute({ H: 102, f: 9.5 })).toBeCloseTo(7, 9);
    const fingers = layout.fingerLayout(102, 9.5);
    expect(fingers).toHaveLength(11);
    expect(fingers.at(-1)).toEqual({ from: 95, to: 102, wall: 'first', whole: false });
  });

  test('inch cutters come out whole in spite of rounding', () => {
    for (let count = 3; count < 60; count++)
      for (const part of [1 / 4, 5 / 16, 3 / 8]) {
        const cutter = part * inch;
        expect(layout.sliver.compute({ H: count * cutter, f: cutter })).toBeLessThan(1e-6);
        expect(layout.fingerLayout(count * cutter, cutter)).toHaveLength(count);
        expect(layout.pieces(count * cutter, cutter)).toBe(count);
      }
  });

  // By hand: 60 / 8 = 7.5, so 7 × 8 = 56 below, 8 × 8 = 64 above, and odd 9 × 8 = 72 above.
  test('names the nearest heights that come out whole', () => {
    expect(layout.wholeHeights(60, 8)).toEqual({ below: 56, above: 64 });
    expect(layout.wholeHeights(60, 8, true)).toEqual({ below: 56, above: 72 });
    expect(layout.wholeHeights(56, 8, true)).toEqual({ below: 56, above: 56 });
    expect(layout.wholeHeights(6, 8, true)).toEqual({ below: 0, above: 8 });
  });

  test('an even number is as near to both odd neighbors, and the larger is named', () => {
    expect(layout.nearestOddCount.compute({ H: 80, f: 8 })).toBe(11);
    expect(layout.nearestOddCount.compute({ H: 10, f: 25 })).toBe(3);
  });

  test('the fingers always fill the height, without a gap, the walls in turn', () => {
    fc.assert(
      fc.property(height, width, (H, f) => {
        const fingers = layout.fingerLayout(H, f);
        expect(fingers[0]!.from).toBe(0);
        expect(fingers.at(-1)!.to).toBeCloseTo(H, 6);
        for (const [index, finger] of fingers.entries()) {
          expect(finger.wall).toBe(index % 2 ? 'second' : 'first');
          if (index) expect(finger.from).toBeCloseTo(fingers[index - 1]!.to, 9);
        }
        expect(fingers).toHaveLength(layout.pieces(H, f));
      }),
    );
  });

  test('the nearest odd number is odd, and no other odd number from 3 up is nearer', () => {
    fc.assert(
      fc.property(height, width, (H, f) => {
        const odd = layout.nearestOddCount.compute({ H, f });
        expect(odd % 2).toBe(1);
        for (const other of [odd - 2, odd + 2].filter((count) => count >= 3))
          expect(Math.abs(odd * f - H)).toBeLessThanOrEqual(Math.abs(other * f - H) + 1e-6);
      }),
    );
  });

  test('an odd layout reads the same from both edges, an even one does not', () => {
    const walls = (count: number) => layout.fingerLayout(count * 8, 8).map(({ wall }) => wall);
    expect(walls(7).toReversed()).toEqual(walls(7));
    expect(walls(8).toReversed()).not.toEqual(walls(8));
  });

  test('sizes that make no sense give no fingers', () => {
    for (const [H, f] of [
      [0, 8],
      [-5, 8],
      [50, 0],
      [Number.NaN, 8],
      [50, Number.NaN],
    ] as const)
      expect(layout.fingerLayout(H, f)).toEqual([]);
  });
});

describe('fit and steps', () => {
  // Worked apart from this code: 12 steps of 0.03 mm are 0.36 mm; chance errors 0.03 mm on one wall 0.10 mm.
  test('twelve steps of 0.03 mm come to 0.36 mm', () => {
    expect(fit.addedStepError.compute({ i: 12, delta: 0.03 })).toBeCloseTo(0.36, 9);
    // Two walls cut separately: √2 times the 0.10 mm of one.
    expect(fit.randomStepError.compute({ i: 12, sigma: 0.03 }) / Math.SQRT2).toBeCloseTo(0.1, 2);
  });

  // Common practice, no source: 0.05 mm per step over 12 steps is 0.6 mm and will not close.
  test('twelve steps of 0.05 mm will not close', () => {
    expect(fit.addedStepError.compute({ i: 12, delta: 0.05 })).toBeCloseTo(0.6, 9);
    expect(fit.bindingStep(12, 0.05, 0.25)).toBe(6);
  });

  test('names the first step that is off by more than the play, and none where the joint closes', () => {
    expect(fit.bindingStep(9, 0.03, 0.1)).toBe(4);
    expect(fit.bindingStep(3, 0.03, 0.1)).toBeUndefined();
    expect(fit.bindingStep(9, 0, 0)).toBeUndefined();
    expect(fit.bindingStep(2, 0.05, 0.1)).toBeUndefined();
  });

  /** Tries the real thing: two rows of fingers with different steps, and every shift of one against the other. */
  const closes = (steps: number, step: number, delta: number, play: number): boolean => {
    const slot = (step + play) / 2;
    let [low, high] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    // Wall A is shifted by x. Its finger j lies between slots j−1 and j of A; wall B's slot j holds it.
    for (let j = 0; j <= steps; j++) {
      const [a, b] = [j * step, j * (step + delta)];
      // A's finger starts at a + x, B's slot at b: x ≥ b − a. It ends at a + x + (step − slot), the slot at b + slot.
      low = Math.max(low, b - a);
      high = Math.min(high, b + slot - (a + step - slot));
    }
    return low <= high + 1e-9;
  };

  test('agrees with trying every shift of two real rows of fingers', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: 0, max: 40 }),
        (steps, delta, play) => {
          const bound = fit.bindingStep(steps, delta / 100, play / 100);
          expect(bound === undefined).toBe(closes(steps, 16, delta / 100, play / 100));
        },
      ),
    );
  });

  // By hand: an 8.05 mm slot at a 16 mm step leaves a finger of 7.95 mm.
  test('a slot 0.05 mm over half the step leaves 0.1 mm of play', () => {
    expect(fit.fingerPlay.compute({ k: 8.05, p: 16 })).toBeCloseTo(8.05 - 7.95, 9);
  });

  // Worked apart from this code: walnut, 6.35 mm, tangential 0.00274 (Wood Handbook Table 13-5), 5 points of moisture.
  test('a quarter-inch walnut finger swells by 0.087 mm', () => {
    expect(fit.fingerSwelling.compute({ f: 6.35, C: 0.00274, dM: 5 })).toBeCloseTo(0.087, 3);
  });

  // Counted on paper: A-B-A-B-A has slots of A at 2 and 4.
  test('five fingers need two steps along a wall, six need three', () => {
    expect(fit.stepsAlong.compute({ n: 5 })).toBe(2);
    expect(fit.stepsAlong.compute({ n: 6 })).toBe(3);
  });
});

describe('glue area', () => {
  // Common practice, no source: a corner 90 mm high in 10 mm wood.
  test.each([
    [10, 800],
    [6, 1400],
    [5, 1700],
  ])('fingers of %s mm give %s mm² of long grain', (f, expected) => {
    expect(area.fingerGlueArea.compute({ n: 90 / f, t: 10 })).toBe(expected);
  });

  test('the same corner mitered has 1270 mm², of end grain', () => {
    expect(area.miterGlueArea.compute({ H: 90, t: 10 })).toBeCloseTo(1273, 0);
  });

  // Worked apart from this code: 3/8 in walls, 3 in high, 1/4 in fingers, per mm of height.
  test('per millimeter of height: fingers 13.1, miter 13.5, three dovetails 7.2', () => {
    const corner = { H: 76.2, t: 9.525 };
    const fingers = area.fingerGlueArea.compute({ n: layout.pieces(76.2, 6.35), t: corner.t });
    expect(fingers / corner.H).toBeCloseTo(13.1, 1);
    expect(fingers / area.buttGlueArea.compute(corner)).toBeCloseTo(1.375, 3);
    expect(area.miterGlueArea.compute(corner) / corner.H).toBeCloseTo(13.5, 1);
    for (const s of [6, 8]) {
      const tails = area.dovetailGlueArea.compute({ N: 6, t: corner.t, s });
      expect(tails / corner.H).toBeCloseTo(7.2, 1);
    }
  });

  test('halving the fingers about doubles the area, and never falls short of it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 60 }), fc.double({ min: 3, max: 20, noNaN: true }), (n, t) => {
        const of = (count: number) => area.fingerGlueArea.compute({ n: count, t });
        expect(of(2 * n) / of(n)).toBeGreaterThanOrEqual(2);
        expect(of(2 * n) / of(n)).toBeLessThanOrEqual(2.5 + 1e-9);
      }),
    );
  });
});

/** A line followed round a box comes out as the relations say, and as a box folded from a strip of paper. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stepAtCut, stepAtFourth, stepBetweenLeaves } from '../../../src/calc/board/grain-round.ts';
import { lineRound, matchesOfOrder, stepsRound, type Wood } from '../../../src/calc/board/line-round.ts';

const wood: fc.Arbitrary<Wood> = fc.record({
  length: fc.double({ min: 60, max: 400, noNaN: true }),
  width: fc.double({ min: 40, max: 300, noNaN: true }),
  kerf: fc.double({ min: 0.5, max: 5, noNaN: true }),
  planing: fc.double({ min: 0, max: 3, noNaN: true }),
  slope: fc.double({ min: 0, max: 10, noNaN: true }),
  rings: fc.double({ min: 15, max: 90, noNaN: true }),
});

test('from one strip it steps by a kerf’s rise three times, and falls back by the whole strip’s at the fourth corner', () => {
  fc.assert(
    fc.property(wood, (w) => {
      const steps = stepsRound(lineRound(w, false, 7));
      const small = stepAtCut.compute({ k: w.kerf, a: w.slope });
      const whole = stepAtFourth.compute({ L: w.length, W: w.width, k: w.kerf, a: w.slope });
      [small, small, small, -whole].forEach((step, i) => {
        expect(steps[i]!).toBeCloseTo(step, 7);
      });
      // Once round, all steps and all rises together come back to the start: the box is closed.
      const rises = lineRound(w, false, 7).reduce((sum, { start, end }) => sum + end - start, 0);
      expect(rises + steps.reduce((sum, one) => sum + one, 0)).toBeCloseTo(0, 7);
    }),
  );
});

test('from a pair it steps by a kerf’s rise at two corners and by the leaves’ shift at the other two', () => {
  fc.assert(
    fc.property(wood, (w) => {
      const steps = stepsRound(lineRound(w, true, 7));
      const small = stepAtCut.compute({ k: w.kerf, a: w.slope });
      const shift = stepBetweenLeaves.compute({ k: w.kerf, p: w.planing, r: w.rings });
      // Home along the second leaf the line goes down, over the kerf too, and comes back to the first face.
      [small, shift, -small, -shift].forEach((step, i) => {
        expect(steps[i]!).toBeCloseTo(step, 7);
      });
    }),
  );
});

// By hand: 10 mm in 100 is a slope of 5.7106°. A strip without kerf, 100 + 200 + 100 + 200, climbs 60 mm.
test('a line that climbs one in ten along walls of 100 and 200 mm ends 60 mm above where it began', () => {
  const steps = stepsRound(
    lineRound({ length: 200, width: 100, kerf: 0, planing: 0, slope: 5.710593, rings: 90 }, false, 0),
  );
  expect(steps[3]).toBeCloseTo(-60, 4);
  expect(steps[0]).toBeCloseTo(0, 9);
});

test('walk-round order matches three corners from whichever wall it begins; pairs by length match none', () => {
  expect(matchesOfOrder([0, 1, 2, 3])).toBe(3);
  expect(matchesOfOrder([1, 2, 3, 0])).toBe(3);
  expect(matchesOfOrder([0, 2, 1, 3])).toBe(0);
  expect(matchesOfOrder([0, 1, 3, 2])).toBe(1);
  // No order of four on one strip matches four.
  const orders = (left: number[]): number[][] =>
    left.length === 0
      ? [[]]
      : left.flatMap((one) => orders(left.filter((x) => x !== one)).map((rest) => [one, ...rest]));
  expect(Math.max(...orders([0, 1, 2, 3]).map(matchesOfOrder))).toBe(3);
});

/** The five cuts: against a panel that is turned four times, and against numbers worked by hand. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { outsideRange } from '../../../src/calc/core/working.ts';
import { fenceError, fenceMove, fenceUncertainty } from '../../../src/calc/square/five-cuts.ts';

/** Direction of the edge after so many cuts: each lies at a right angle and the error to the edge on the fence. */
function edgeAfter(cuts: number, error: number): readonly [number, number] {
  const turn = ((90 + error) * Math.PI) / 180;
  let [x, y] = [1, 0];
  for (let cut = 0; cut < cuts; cut++)
    [x, y] = [x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)];
  return [x, y];
}

test('the strip of the fifth cut tells the error of the fence back', () => {
  const error = fc.double({ min: -0.2, max: 0.2, noNaN: true });
  const length = fc.double({ min: 200, max: 800, noNaN: true });
  fc.assert(
    fc.property(error, length, (e, L) => {
      const [x, y] = edgeAfter(4, e);
      const A = 15;
      const B = A - (L * y) / x;
      expect(fenceError.compute({ A, B, L })).toBeCloseTo(e, 9);
    }),
  );
});

test('12.43 and 12.15 mm over 406 mm are 0.0099°, a move of 0.086 mm at 500 mm', () => {
  // 0.28 / 406 / 4 = 0.00017241 rad = 0.009879°; 500 × 0.00017241 = 0.0862.
  const widths = { A: 12.43, B: 12.15, L: 406 };
  expect(fenceError.compute(widths)).toBeCloseTo(0.00988, 5);
  expect(fenceMove.compute({ ...widths, P: 500 })).toBeCloseTo(0.0862, 4);
});

test('calipers good to 0.02 mm know the fence to a thousandth of a degree', () => {
  // √2 × 0.02 / (4 × 406) rad = 0.0000174 = 0.000998°.
  expect(fenceUncertainty.compute({ m: 0.02, L: 406 })).toBeCloseTo(0.001, 5);
});

test('the uncertainty is how much the found error scatters when both widths do', () => {
  const [m, L] = [0.02, 406];
  // Corners of the square of errors: half of them cancel, half add to twice; the mean square is 2 m².
  const found = [-m, m].flatMap((a) => [-m, m].map((b) => fenceError.compute({ A: 15 + a, B: 15 + b, L })));
  const scatter = Math.sqrt(found.reduce((sum, e) => sum + e * e, 0) / found.length);
  expect(fenceUncertainty.compute({ m, L })).toBeCloseTo(scatter, 7);
});

test('widths that differ by more than a centimeter are no strip', () => {
  expect(outsideRange(fenceError, { A: 30, B: 5, L: 400 })?.symbol).toBe('B');
});

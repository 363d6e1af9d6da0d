/** How hard the corners of a lid press that is pulled off its middle: forces and moments balanced in numbers. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dragFactor, rattleAngle } from '../../../src/calc/lid/run.ts';
import { cornerRubbing, sideForce } from '../../../src/calc/lid/side-force.ts';

test('a pull of 10 N, 40 mm off the middle of a lid held over 80 mm without play, presses with 5 N at each corner', () => {
  // Moments about one corner: 10 · 40 = N · 80.
  expect(sideForce.compute({ F: 10, e: 40, W: 100, L: 80, c: 0 })).toBeCloseTo(5, 12);
  // Both rub with 0.46 of that: 4.6 N of the 10.
  expect(cornerRubbing.compute({ mu: 0.46, N: 5 })).toBeCloseTo(4.6, 12);
});

test('1 mm of play shortens the lever of a lid 100 mm wide, held over 60 mm, to 58.3 mm', () => {
  // The diagonal is 116.62 mm; across lie 101 of it, along √(13600 − 10201) = 58.30. 10 · 40 / 58.30 = 6.86.
  expect(sideForce.compute({ F: 10, e: 40, W: 100, L: 60, c: 1 })).toBeCloseTo(6.86, 2);
});

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pulled = fc.record({
  mu: number(0.1, 0.8),
  W: number(30, 200),
  L: number(20, 400),
  F: number(1, 100),
  share: number(0.01, 0.9),
  off: number(0.05, 0.5),
});

test('with this force a lid that is turned, pulled, dragged and rubbed stands in balance about either corner', () => {
  fc.assert(
    fc.property(pulled, ({ mu, W, L, F, share, off }) => {
      const c = share * 0.9 * (Math.hypot(W, L) - W);
      const e = off * W;
      const N = sideForce.compute({ F, e, W, L, c });
      // The lid is laid down as a rectangle and turned; the corners that stand furthest out on either side touch.
      const turn = (rattleAngle.compute({ c, W, L }) * Math.PI) / 180;
      const corners = [-1, 1].flatMap((i) =>
        [-1, 1].map((j) => {
          const [x, y] = [(i * W) / 2, (j * L) / 2];
          return {
            x: x * Math.cos(turn) - y * Math.sin(turn),
            y: x * Math.sin(turn) + y * Math.cos(turn),
          };
        }),
      );
      const [left, , , right] = [...corners].sort((one, other) => one.x - other.x) as [
        { x: number; y: number },
        unknown,
        unknown,
        { x: number; y: number },
      ];
      expect(right.x - left.x).toBeCloseTo(W + c, 4);
      // A pull toward −y, left of the middle, turns the lid this way. Rubbing, and drag in the middle, hold it back.
      const rub = mu * N;
      const forces = [
        { x: -e, y: 0, fx: 0, fy: -F },
        { ...left, fx: N, fy: rub },
        { ...right, fx: -N, fy: rub },
        { x: 0, y: 0, fx: 0, fy: F - 2 * rub },
      ];
      for (const about of [left, right]) {
        const moment = forces.reduce(
          (sum, { x, y, fx, fy }) => sum + (x - about.x) * fy - (y - about.y) * fx,
          0,
        );
        expect(Math.abs(moment)).toBeLessThan(1e-6 * F * W);
      }
    }),
  );
});

test('without play the rubbing leaves of a pull what the drag factor says', () => {
  fc.assert(
    fc.property(pulled, ({ mu, W, L, F, off }) => {
      const e = off * W;
      const left = F - cornerRubbing.compute({ mu, N: sideForce.compute({ F, e, W, L, c: 0 }) });
      fc.pre(left > 1e-6 * F);
      expect(left * dragFactor.compute({ mu, e, L })).toBeCloseTo(F, 6);
    }),
  );
});

test('pulled in the middle nothing presses, and twice the pull presses twice as hard', () => {
  fc.assert(
    fc.property(pulled, ({ W, L, F, off }) => {
      const e = off * W;
      expect(sideForce.compute({ F, e: 0, W, L, c: 0 })).toBe(0);
      expect(sideForce.compute({ F: 2 * F, e, W, L, c: 0 })).toBeCloseTo(
        2 * sideForce.compute({ F, e, W, L, c: 0 }),
        6,
      );
    }),
  );
});

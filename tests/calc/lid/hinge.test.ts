/** Hinges: sums by hand, and a lid that is turned step by step until it clears the box. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hingeGap, longestScrew, pilotHole, springOpen } from '../../../src/calc/lid/hinge.ts';

test('leaves let in by 2.4 mm each leave 0.2 mm of a knuckle of 5 mm; by 2.6 mm they are 0.2 mm too deep', () => {
  expect(hingeGap.compute({ k: 5, d_b: 2.4, d_l: 2.4 })).toBeCloseTo(0.2, 12);
  expect(hingeGap.compute({ k: 5, d_b: 2.6, d_l: 2.6 })).toBeCloseTo(-0.2, 12);
  // Only the box side deepened.
  expect(hingeGap.compute({ k: 5, d_b: 5, d_l: 0 })).toBeCloseTo(0, 12);
});

test('0.2 mm too deep with the pin 2.5 mm behind the back opens a front 120 mm away by 9.6 mm', () => {
  // 120 · 0.2 / 2.5, since the angle is small.
  expect(springOpen.compute({ W: 120, o: 0.2, a: 2.5 })).toBeCloseTo(9.6, 1);
});

/** Opening at which the lid's lower back edge, turned about the pin, has come up to the box's upper one: by halving. */
function openingByTurning(W: number, o: number, a: number) {
  // The pin is the origin and the box lies at x ≥ a, its top at o/2; the shut lid's underside would be at −o/2.
  const height = (turn: number) => a * Math.sin(turn) - (o / 2) * Math.cos(turn);
  let [low, high] = [0, Math.PI / 2];
  for (let round = 0; round < 60; round++) {
    const turn = (low + high) / 2;
    if (height(turn) < o / 2) low = turn;
    else high = turn;
  }
  // Way of the front, from where the lid would lie shut: a chord.
  const front = (turn: number) => [W * Math.cos(turn), W * Math.sin(turn)] as const;
  const [x, y] = front(low);
  return Math.hypot(x - W, y);
}

test('the formula is the opening found by turning the lid until its edge clears the box', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 40, max: 400, noNaN: true }),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      fc.double({ min: 1.5, max: 8, noNaN: true }),
      (W, o, a) => {
        expect(springOpen.compute({ W, o, a })).toBeCloseTo(openingByTurning(W, o, a), 6);
      },
    ),
  );
});

test('a screw in 10 mm of wood is at most 9 mm long, and its core of 2 mm wants 1.4 mm in pine and 1.8 in oak', () => {
  expect(longestScrew.compute({ T: 10, m: 1 })).toBe(9);
  expect(pilotHole.compute({ c: 2, s: 0.7 })).toBeCloseTo(1.4, 12);
  expect(pilotHole.compute({ c: 2, s: 0.9 })).toBeCloseTo(1.8, 12);
});

/** When a sliding lid jams: worked numbers for a lid 100 mm wide, and the condition checked by a balance of forces. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { outsideRange } from '../../../src/calc/core/working.ts';
import {
  dragFactor,
  heldHalfOpen,
  jamLength,
  jamLengthAtEdge,
  rattleAngle,
} from '../../../src/calc/lid/run.ts';

// Chestnut on chestnut, at rest: 0.46 (Villar-García and others 2020, seen in the abstract); waxed 0.2 is from memory.
const chestnut = 0.46;
const waxed = 0.2;

describe('a lid 100 mm wide', () => {
  test.each([
    // 0.46 · 100 and 0.2 · 100; 2 · 0.46 · 20 and 2 · 0.2 · 20, by hand.
    ['bare', chestnut, 46, 18.4],
    ['waxed', waxed, 20, 8],
  ])(
    '%s, friction %d, jams at %d mm pulled at its edge, at %d mm pulled 20 mm off the middle',
    (_, mu, edge, off) => {
      expect(jamLengthAtEdge.compute({ mu, W: 100 })).toBeCloseTo(edge, 9);
      expect(jamLength.compute({ mu, e: 20 })).toBeCloseTo(off, 9);
    },
  );

  test('with 80 mm in its grooves, pulled 20 mm off the middle, drags 1.30 times as hard', () => {
    // 1 / (1 − 18.4/80) = 80 / 61.6.
    expect(dragFactor.compute({ mu: chestnut, e: 20, L: 80 })).toBeCloseTo(1.3, 2);
  });
});

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pull = fc.record({ mu: number(0.1, 0.8), e: number(1, 200), L: number(10, 500), F: number(1, 500) });

test('what a pull has left after the rubbing of both corners is the pull over the drag factor', () => {
  fc.assert(
    fc.property(pull, ({ mu, e, L, F }) => {
      // N from the moments about the middle of the lid: two forces N, each L/2 away, against F at e.
      const N = (F * e) / (2 * (L / 2));
      const left = F - mu * N - mu * N;
      const k = dragFactor.compute({ mu, e, L });
      // A hair to either side of the limit is left to rounding.
      fc.pre(Math.abs(left) > 1e-9 * F);
      if (left > 0) expect(Math.abs(F / k - left)).toBeLessThan(1e-9 * F);
      else expect(k).toBeNaN();
    }),
  );
});

test('a lid that jams has no drag factor, and the program says that it is outside the range', () => {
  for (const L of [18.4, 18, 5]) {
    expect(outsideRange(dragFactor, { mu: chestnut, e: 20, L })?.symbol).toBe('L');
    if (L < 18.4) expect(dragFactor.compute({ mu: chestnut, e: 20, L })).toBeNaN();
  }
  expect(outsideRange(dragFactor, { mu: chestnut, e: 20, L: 19 })).toBeUndefined();
});

test('pulled in the middle no lid jams, and none drags harder', () => {
  fc.assert(
    fc.property(number(0.1, 0.8), number(10, 500), (mu, L) => {
      expect(jamLength.compute({ mu, e: 0 })).toBe(0);
      expect(dragFactor.compute({ mu, e: 0, L })).toBe(1);
    }),
  );
});

test('a pull at the edge is a pull half the width off the middle', () => {
  fc.assert(
    fc.property(number(0.1, 0.8), number(20, 400), (mu, W) => {
      expect(jamLengthAtEdge.compute({ mu, W })).toBeCloseTo(jamLength.compute({ mu, e: W / 2 }), 9);
    }),
  );
});

test('the nearer to the middle, the slicker and the longer, the less it drags', () => {
  const inputs = fc.record({ mu: number(0.1, 0.4), e: number(2, 40), L: number(100, 400) });
  fc.assert(
    fc.property(inputs, ({ mu, e, L }) => {
      const k = dragFactor.compute({ mu, e, L });
      expect(dragFactor.compute({ mu: mu / 2, e, L })).toBeLessThan(k);
      expect(dragFactor.compute({ mu, e: e / 2, L })).toBeLessThan(k);
      expect(dragFactor.compute({ mu, e, L: 2 * L })).toBeLessThan(k);
    }),
  );
});

test('half open, half of the lid is held: 60 of the 120 mm of a lid over 106 mm inside, 10 mm wall and 4 mm groove', () => {
  expect(heldHalfOpen.compute({ l: 106, t: 10, g: 4 })).toBe(60);
});

/** The turn at which a lid W wide, held over L, fills its grooves: W cos a + L sin a = W + c, halved down to it; deg. */
function turnOf(W: number, L: number, c: number) {
  let [low, high] = [0, Math.atan(L / W)];
  for (let round = 0; round < 60; round++) {
    const a = (low + high) / 2;
    if (W * Math.cos(a) + L * Math.sin(a) < W + c) low = a;
    else high = a;
  }
  return (low * 180) / Math.PI;
}

test('1 mm of play turns a lid 100 mm wide, held over 60 mm, by 0.97°', () => {
  expect(turnOf(100, 60, 1)).toBeCloseTo(0.97, 2);
  expect(rattleAngle.compute({ c: 1, W: 100, L: 60 })).toBeCloseTo(0.97, 2);
});

test('the formula is the turn at which the lid touches, found by trying angles', () => {
  const inputs = fc.record({ W: number(20, 200), L: number(40, 400), share: number(0.001, 0.9) });
  fc.assert(
    fc.property(inputs, ({ W, L, share }) => {
      const c = share * (Math.hypot(W, L) - W);
      expect(rattleAngle.compute({ c, W, L })).toBeCloseTo(turnOf(W, L, c), 4);
    }),
  );
});

/** Keys, splines, tails and steps of one board, against arithmetic by hand and geometry done another way. */
import { describe, expect, test } from 'vitest';
import * as tails from '../../../src/calc/joints/dovetail.ts';
import * as area from '../../../src/calc/joints/glue-area.ts';
import { addedStepError } from '../../../src/calc/joints/joint-fit.ts';
import * as keys from '../../../src/calc/joints/keys.ts';
import { miterSeasonGap } from '../../../src/calc/joints/miter-season.ts';
import { randomStepErrorOfOne } from '../../../src/calc/joints/one-board.ts';
import { toothRidge } from '../../../src/calc/joints/teeth.ts';
import { areaOf } from '../../../src/geometry/volume.ts';

describe('keys', () => {
  // By hand: 10 · 1.41421 = 14.1421, less 10.
  test('a slot as deep as a 10 mm wall is thick leaves 4.14 mm', () => {
    expect(keys.keyDepth.compute({ t: 10 })).toBe(10);
    expect(keys.keyLeft.compute({ t: 10, d: 10 })).toBeCloseTo(4.142, 3);
    // 0.41 of the wall, as the trade has it (common practice, no source).
    for (const t of [6, 8, 12]) expect(keys.keyLeft.compute({ t, d: t }) / t).toBeCloseTo(0.41, 2);
  });

  test('a slot as deep as the diagonal leaves nothing, and a deeper one less', () => {
    expect(keys.keyLeft.compute({ t: 10, d: Math.hypot(10, 10) })).toBeCloseTo(0, 9);
    expect(keys.keyLeft.compute({ t: 10, d: 15 })).toBeLessThan(0);
  });

  // Another way: corners of the part of the slot that lies in one wall, seen from above, and the area they enclose.
  test('the faces of a key on one wall are two triangles between the edge, the miter and the floor', () => {
    for (const d of [6, 9.525, 10]) {
      const along = d * Math.SQRT2;
      const inOneWall = areaOf([
        [0, 0],
        [along, 0],
        [along / 2, along / 2],
      ]);
      expect(keys.keyGlueArea.compute({ N: 3, d })).toBeCloseTo(3 * 2 * inOneWall, 9);
    }
  });

  // By hand: 10 · 10 on each of two cheeks or keys.
  test('a key as deep as the wall holds each wall by as much as one cheek of a finger', () => {
    expect(keys.keyGlueArea.compute({ N: 2, d: 10 })).toBeCloseTo(200, 9);
    expect(area.fingerGlueArea.compute({ n: 3, t: 10 })).toBeCloseTo(200, 9);
  });

  // By hand: 90 / 3, and 2 · 3 · 90.
  test('three keys in 90 mm have 30 mm each, and a spline 3 mm deep has 540 mm² on each wall', () => {
    expect(keys.keySpacing.compute({ H: 90, N: 3 })).toBe(30);
    expect(keys.splineGlueArea.compute({ H: 90, g: 3 })).toBe(540);
  });
});

describe('a miter through the year', () => {
  // Black walnut, Wood Handbook Table 13-5: 0.00274; 10 mm lose 0.1096 mm over 4 points, times √2.
  test('walnut walls of 10 mm that dry by 4 points would open it by 0.155 mm', () => {
    expect(miterSeasonGap.compute({ t: 10, C: 0.00274, dM: 4 })).toBeCloseTo(0.155, 3);
  });

  // Another way: the inner corners of both walls, cut at 45° and then thinner, measured apart.
  test('the wedge is as wide as the inner corners of the two walls are apart', () => {
    const [t, thinner] = [9, 9 * (1 - 0.003 * 5)];
    const apart = Math.hypot(t - thinner, thinner - t);
    expect(miterSeasonGap.compute({ t, C: 0.003, dM: 5 })).toBeCloseTo(apart, 9);
  });
});

describe('the rabbet', () => {
  // By hand: an end of 10 mm and a shoulder of 5 mm, 90 mm high, against 1.414 times 900.
  test('rabbeted to half, a wall has half as much again as a butt joint, and more than a miter', () => {
    expect(area.rabbetGlueArea.compute({ H: 90, t: 10, r: 5 })).toBe(1350);
    expect(area.miterGlueArea.compute({ H: 90, t: 10 })).toBeCloseTo(1272.8, 1);
  });
});

describe('tails', () => {
  // Worked apart from this code: 1.38 % at 1 in 6, 9.46°; 0.78 % at 1 in 8, 7.13°. Trade: 11.3° at 1 in 5.
  test.each([
    [5, 11.31, 1.98],
    [6, 9.46, 1.38],
    [8, 7.13, 0.78],
  ])('a slope of 1 in %s is %s° and adds %s %% of area', (s, angle, gain) => {
    expect(tails.slopeAngle.compute({ s })).toBeCloseTo(angle, 2);
    expect(tails.slopeGain.compute({ s })).toBeCloseTo(gain, 2);
  });

  // By hand: 10/6 − 10/8 = 1.667 − 1.25. Trade: 0.4 mm on walls of 10 mm (common practice, no source).
  test('in a 10 mm wall 1 in 6 and 1 in 8 differ by 0.4 mm on a side', () => {
    const spread = (s: number) => tails.tailSpread.compute({ t: 10, s });
    expect(spread(6) - spread(8)).toBeCloseTo(0.417, 3);
  });

  // By hand: 60 / 3 = 20; 20 − 5 = 15, three pins.
  test('three tails in 60 mm with pins of 5 mm are three pins wide', () => {
    expect(tails.tailPerPin.compute({ H: 60, n: 3, p: 5 })).toBe(3);
  });
});

describe('teeth', () => {
  // A table of tangents: tan 15° = 0.26795; half of 3 mm. A bevel of 45° rises as much as it goes aside.
  test('beveled teeth leave a ridge, flat ones none', () => {
    expect(toothRidge.compute({ k: 3, beta: 15 })).toBeCloseTo(0.4019, 4);
    expect(toothRidge.compute({ k: 3, beta: 0 })).toBe(0);
  });
});

describe('steps of one board', () => {
  // Worked apart from this code: 0.03 mm over 12 steps is 0.10 mm by chance, 0.36 mm where every step shares it.
  test('chance errors grow with the square root of the steps, a common error with the steps', () => {
    expect(randomStepErrorOfOne.compute({ n: 12, sigma: 0.03 })).toBeCloseTo(0.104, 3);
    expect(addedStepError.compute({ i: 12, delta: 0.03 })).toBeCloseTo(0.36, 9);
    expect(randomStepErrorOfOne.compute({ n: 36, sigma: 0.03 })).toBeCloseTo(
      3 * randomStepErrorOfOne.compute({ n: 4, sigma: 0.03 }),
      9,
    );
  });

  // Tried: many boards, each step off by a throw either way of the same size, so that σ is that size.
  test('agrees with a thousand boards whose steps are off by a throw of a coin', () => {
    let seed = 7;
    const coin = () => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return seed > 1073741824 ? 0.02 : -0.02;
    };
    const boards = Array.from({ length: 4000 }, () =>
      Array.from({ length: 9 }, coin).reduce((sum, one) => sum + one, 0),
    );
    const spread = Math.sqrt(boards.reduce((sum, one) => sum + one ** 2, 0) / boards.length);
    expect(spread / randomStepErrorOfOne.compute({ n: 9, sigma: 0.02 })).toBeCloseTo(1, 1);
  });
});

/**
 * Proportion against geometry done another way, ISO sizes, and independent arithmetic.
 * "A1" to "A5" are sections of the project's physics notes, whose numbers were computed in Python.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { outsideRange } from '../../../src/calc/core/working.ts';
import * as inside from '../../../src/calc/proportion/inside-ratio.ts';
import { goldenRatio, namedRatios, nearestNamedRatio } from '../../../src/calc/proportion/named-ratios.ts';
import * as proportion from '../../../src/calc/proportion/proportion.ts';

const inch = 25.4;
const sideLength = fc.double({ min: 30, max: 600, noNaN: true });

describe('the golden ratio', () => {
  test('is the shape that stays when a square is cut off: the definition', () => {
    const [length, width] = [goldenRatio, 1];
    expect(width / (length - width)).toBeCloseTo(goldenRatio, 12);
  });

  test('is 1 + 1/(1 + 1/(1 + …)), the continued fraction of ones', () => {
    let nested = 1;
    for (let depth = 0; depth < 60; depth++) nested = 1 + 1 / nested;
    expect(goldenRatio).toBeCloseTo(nested, 12);
  });

  test('is where neighbors in 1, 1, 2, 3, 5, 8 … tend to, with the error 1 / (√5 F²)', () => {
    let [smaller, larger] = [1, 1];
    for (let n = 0; n < 20; n++) {
      [smaller, larger] = [larger, smaller + larger];
      const error = Math.abs(larger / smaller - goldenRatio);
      expect(error * Math.sqrt(5) * smaller ** 2).toBeCloseTo(1, smaller > 50 ? 3 : 0);
    }
  });

  test.each([
    // Ratio, error in percent: A1.
    [3 / 2, -7.29],
    [5 / 3, 3.01],
    [8 / 5, -1.11],
    [13 / 8, 0.431],
    [21 / 13, -0.164],
    [34 / 21, 0.0626],
  ])('%f differs from it by %f %%', (ratio, percent) => {
    const { compute } = proportion.ratioDifference;
    expect(compute({ r: ratio, p: goldenRatio })).toBeCloseTo(percent, 2);
  });

  test('is met by a 5 by 8 in box within 1.2 %, both ways (common practice, no source)', () => {
    const [length, width] = [8 * inch, 5 * inch];
    const wantedLength = proportion.lengthFromRatio.compute({ r: goldenRatio, W: width });
    const wantedWidth = proportion.widthFromRatio.compute({ L: length, r: goldenRatio });
    for (const share of [length / wantedLength, width / wantedWidth]) {
      expect(Math.abs(share - 1)).toBeLessThan(0.012);
      expect(Math.abs(share - 1)).toBeGreaterThan(0.01);
    }
  });
});

describe('named ratios', () => {
  test('stand in order, from the square to two to one', () => {
    const values = namedRatios.map(({ value }) => value);
    expect(values).toEqual([...values].sort((a, b) => a - b));
    expect(values.every((value) => value >= 1 && value <= 2)).toBe(true);
  });

  // ISO 216 trimmed sizes in mm: A0 to A6 from memory, A7 and B7 read second-hand.
  const sheets: [string, number, number][] = [
    ['A0', 1189, 841],
    ['A1', 841, 594],
    ['A2', 594, 420],
    ['A3', 420, 297],
    ['A4', 297, 210],
    ['A5', 210, 148],
    ['A6', 148, 105],
    ['A7', 105, 74],
    ['B7', 125, 88],
  ];
  test.each(sheets)(
    'root two gives the width of an %s sheet, %i mm long: %i mm, to a millimeter',
    (_, L, W) => {
      expect(Math.abs(proportion.widthFromRatio.compute({ L, r: Math.SQRT2 }) - W)).toBeLessThan(1);
      expect(nearestNamedRatio(L / W)?.name).toBe('√2:1');
    },
  );

  test('half a root-two sheet has the shape of the whole', () => {
    expect(proportion.ratio.compute({ L: 1, W: Math.SQRT2 / 2 })).toBeCloseTo(Math.SQRT2, 12);
  });

  test.each([
    // Rounding to whole millimeters moves the ratio: A3.
    [297, 210, 1.41429],
    [210, 148, 1.41892],
    [148, 105, 1.40952],
  ])('a sheet of %i by %i mm has the ratio %f', (L, W, expected) => {
    expect(proportion.ratio.compute({ L, W })).toBeCloseTo(expected, 5);
  });

  test('the bank card of ISO/IEC 7810 (ID-1, 85.60 by 53.98 mm) is nearer 8:5 than golden', () => {
    const card = proportion.ratio.compute({ L: 85.6, W: 53.98 });
    expect(card).toBeCloseTo(1.585773, 6);
    expect(nearestNamedRatio(card)?.name).toBe('8:5');
    expect(proportion.ratioDifference.compute({ r: card, p: goldenRatio })).toBeCloseTo(-2.0, 1);
  });

  test('the passport of ISO/IEC 7810 (ID-3, 125 by 88 mm) is nearest root two', () => {
    expect(nearestNamedRatio(125 / 88)?.name).toBe('√2:1');
  });
});

describe('inside and outside', () => {
  test.each([
    // Outside, wall, inside ratio: A4.
    [200, 120, 10, 1.8],
    [8 * inch, 5 * inch, (3 / 8) * inch, 1.7059],
    [180, 120, 11.46, goldenRatio],
  ])('a box %f by %f mm with walls of %f mm is %f times as long as wide inside', (L, W, t, expected) => {
    expect(inside.insideRatio.compute({ L, W, t })).toBeCloseTo(expected, 3);
  });

  test('a golden inside 100 mm wide in 10 mm walls needs an outside of 1.515 (A4)', () => {
    const given = { l: 161.803, w: 100, t: 10 };
    expect(inside.outsideRatio.compute(given)).toBeCloseTo(1.515, 4);
  });

  test('3:2 outside, 180 by 120 mm, is golden inside with walls of 11.46 mm (A4)', () => {
    const wall = inside.wallForInsideRatio.compute({ r_in: goldenRatio, W: 120, L: 180 });
    expect(wall).toBeCloseTo(11.46, 2);
  });

  test('the inside of an oblong box is always the longer one for its width', () => {
    fc.assert(
      fc.property(
        sideLength,
        fc.double({ min: 1.01, max: 4, noNaN: true }),
        fc.double({ min: 0.01, max: 0.45, noNaN: true }),
        (W, r, share) => {
          const found = inside.insideRatio.compute({ L: r * W, W, t: share * W });
          expect(found).toBeGreaterThan(r);
        },
      ),
    );
  });

  test('a square box is square inside too, whatever its walls', () => {
    expect(inside.insideRatio.compute({ L: 120, W: 120, t: 9 })).toBe(1);
  });

  test('going in and out again comes back to the same ratio', () => {
    fc.assert(
      fc.property(sideLength, sideLength, fc.double({ min: 0, max: 25, noNaN: true }), (l, w, t) => {
        const [L, W] = [l + 2 * t, w + 2 * t];
        expect(inside.outsideRatio.compute({ l, w, t })).toBeCloseTo(L / W, 9);
        expect(inside.insideRatio.compute({ L, W, t })).toBeCloseTo(l / w, 9);
      }),
    );
  });

  test('the wall, and the outside length, found for a wanted inside ratio do give it', () => {
    fc.assert(
      fc.property(
        sideLength,
        fc.double({ min: 1.1, max: 3, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (W, wanted, where) => {
          const L = W * (1 + where * (wanted - 1));
          const t = inside.wallForInsideRatio.compute({ r_in: wanted, W, L });
          expect(inside.insideRatio.compute({ L, W, t })).toBeCloseTo(wanted, 6);
          expect(inside.lengthForInsideRatio.compute({ r_in: wanted, W, t })).toBeCloseTo(L, 6);
        },
      ),
    );
  });
});

describe('where a ratio has no number', () => {
  test('walls that meet leave no inside ratio, and the range says how thick they may be', () => {
    const met = { L: 80, W: 50, t: 25 };
    expect(inside.insideRatio.compute(met)).toBeNaN();
    expect(outsideRange(inside.insideRatio, met)).toMatchObject({
      symbol: 't',
      spec: { range: [0, 24.5] },
    });
    expect(outsideRange(inside.insideRatio, { ...met, t: 24 })).toBeUndefined();
  });

  test('an inside ratio below the outside ratio has no wall', () => {
    const short = { r_in: 1.5, W: 100, L: 160 };
    expect(outsideRange(inside.wallForInsideRatio, short)?.symbol).toBe('L');
  });

  test('a side of nothing has no ratio', () => {
    expect(outsideRange(proportion.ratio, { L: 100, W: 0 })?.symbol).toBe('W');
    expect(outsideRange(proportion.ratio, { L: Number.NaN, W: 50 })?.symbol).toBe('L');
  });
});

test('a height of a third of 120 mm is 40 mm, and 40 mm is a third', () => {
  expect(proportion.heightFromWidth.compute({ s: 1 / 3, W: 120 })).toBeCloseTo(40, 9);
  expect(proportion.heightShare.compute({ H: 40, W: 120 })).toBeCloseTo(1 / 3, 9);
});

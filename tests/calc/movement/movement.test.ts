/** Movement of wood against the handbook's tables and worked examples, and against geometry done another way. (Over 150 lines: it is the manual of both methods.) */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Row, readTable } from '../../../src/build/tables.ts';
import { lengthwiseMovement, plywoodMovement } from '../../../src/calc/movement/lengthwise.ts';
import {
  changeByCoefficient,
  changeByShrinkage,
  coefficientFromShrinkage,
  type DirectionFigures,
  type Movement,
  movement,
  movementOfThickness,
  movementOfWidth,
  outOfSquare,
  shrinkageFromCoefficient,
} from '../../../src/calc/movement/movement.ts';

const walnut = { coefficient: 0.00274, shrinkage: 7.8 };
const change = (dimension: number, from: number, to: number, figures: DirectionFigures) =>
  (movement(dimension, from, to, figures) as Movement).change;
const inch = 25.4;

describe('published worked examples', () => {
  test('Wood Handbook (2010) p. 13-15 to 13-17: white fir, 232 mm flat-grained, from 8 to 11 %, grows 1.7 mm to 233.7', () => {
    const grown = change(232, 8, 11, { coefficient: 0.00245 });
    expect(grown).toBeCloseTo(1.705, 3);
    expect(232 + grown).toBeCloseTo(233.7, 1);
    // The same in inches, as printed: 9.15 in grows 0.067 to 9.217 in.
    expect(change(9.15, 8, 11, { coefficient: 0.00245 })).toBeCloseTo(0.067, 3);
  });

  test('the thickness of that board uses the radial coefficient: 19 mm grows 0.064 mm (recomputed, no number is printed)', () => {
    expect(change(19, 8, 11, { coefficient: 0.00112 })).toBeCloseTo(0.064, 3);
  });

  test('flooring trade, from the 1987 handbook: mesquite, coefficient 0.00129, 5 in wide, from 6 to 9 %, grows 0.019 in', () => {
    expect(change(5 * inch, 6, 9, { coefficient: 0.00129 }) / inch).toBeCloseTo(0.019, 3);
  });

  test('Wengert: flat-sawn wood of coefficient 0.0025 moves 0.0025 in per inch and percent, 1 % in 4 % moisture', () => {
    expect(change(1, 8, 9, { coefficient: 0.0025 })).toBeCloseTo(0.0025, 10);
    expect(change(100, 6, 10, { coefficient: 0.0025 })).toBeCloseTo(1, 10);
  });

  test('Green (FPL-RP-489): its own line for softwood lumber, 6.031 − 0.215 M % of the green width, is met by the shrinkage method', () => {
    // Its line reaches zero at 28.05 %, ours at 30 %; over 8 to 19 % both are the same slope of the same green size.
    const shrinkage = 0.215 * 30;
    const greenWidth = 100;
    const at = (moisture: number) => greenWidth + change(greenWidth, 30, moisture, { shrinkage });
    expect(at(19) - at(8)).toBeCloseTo((0.215 * 11 * greenWidth) / 100, 6);
    // Its standard shrinks 2.80 % to 15 %; from 28.05 %, where its line starts, ours gives the same.
    expect(change(greenWidth, 30, 30 - (6.031 / 0.215 - 15), { shrinkage })).toBeCloseTo(-2.8, 1);
  });

  test('walnut by shrinkage, 100 mm from 6 to 14 %: 2.218 mm, which is 1.2 % more than by coefficient (derived from eq. 4-9)', () => {
    const byShrinkage = changeByShrinkage.compute({ D: 100, S: 7.8, M_i: 6, M_f: 14 });
    // By another way: sizes at both ends from the green size 100 / (1 − S·24/3000).
    const green = 100 / (1 - (0.078 * (30 - 6)) / 30);
    expect(byShrinkage).toBeCloseTo(green * (1 - (0.078 * (30 - 14)) / 30) - 100, 10);
    expect(byShrinkage).toBeCloseTo(2.218, 3);
    expect(changeByCoefficient.compute({ D: 100, C: 0.00274, M_i: 6, M_f: 14 })).toBeCloseTo(2.192, 3);
  });
});

describe('the link between the two tables (Wood Handbook Tables 13-5 and 4-3)', () => {
  const shrinkage = new Map(readTable('shrinkage-green-to-ovendry').map((row) => [row.species!, row]));
  const headings: Readonly<Record<string, string>> = {
    'Red oak, commercial': 'Oak, northern red',
    'White oak, commercial': 'Oak, white',
    'White oak, live': 'Oak, live (white oak group)',
    'White oak, overcup': 'Oak, overcup (white oak group)',
  };
  const page = readTable('dimensional-change-coefficients').filter(
    (row) => row.source === 'WH190-13-16' && row.ct_fraction_per_pct_mc,
  );
  const pairs = page.flatMap((row) => {
    const other: Row | undefined = shrinkage.get(headings[row.species!] ?? row.species!);
    if (!other) return [];
    return (
      [
        [row.cr_fraction_per_pct_mc, other.radial_pct],
        [row.ct_fraction_per_pct_mc, other.tangential_pct],
      ] as const
    )
      .filter(([printed, from]) => printed && from)
      .map(([printed, from]) => ({
        species: row.species!,
        printed: Number(printed),
        computed: Number(coefficientFromShrinkage.compute({ S: Number(from) }).toFixed(5)),
      }));
  });

  test('gives 67 of the 78 printed coefficients digit by digit and one within 0.00001; the others are grouped rows', () => {
    const within = (tolerance: number) =>
      pairs.filter(({ printed, computed }) => Math.abs(printed - computed) < tolerance);
    expect([pairs.length, within(1e-9).length, within(1.5e-5).length]).toEqual([78, 67, 68]);
    const off = pairs.filter((pair) => !within(1.5e-5).includes(pair)).map(({ species }) => species);
    expect(new Set(off)).toEqual(
      new Set(['Ash, green', 'Birch, sweet', 'Elm, cedar', 'Red oak, commercial', 'White oak, commercial']),
    );
  });

  test('runs backwards too', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 15, noNaN: true }), (S) => {
        expect(shrinkageFromCoefficient.compute({ C: coefficientFromShrinkage.compute({ S }) })).toBeCloseTo(
          S,
          9,
        );
      }),
    );
  });
});

describe('boards neither flat- nor quarter-sawn', () => {
  test.each([
    // Walnut per 1 % moisture, by turning the two movements (physics of any strain).
    [0, 0.00274],
    [30, 0.00253],
    [45, 0.00232],
    [60, 0.00211],
    [90, 0.0019],
  ])('rings at %d° to the face give walnut a width movement of %d', (theta, expected) => {
    expect(movementOfWidth.compute({ e_T: 0.00274, e_R: 0.0019, theta })).toBeCloseTo(expected, 5);
  });

  test('at 0° the width moves with the rings and the thickness across them, at 90° the other way; their sum never changes', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 90, noNaN: true }), (theta) => {
        const both = { e_T: 0.00274, e_R: 0.0019 };
        expect(movementOfWidth.compute({ ...both, theta: 0 })).toBe(0.00274);
        expect(movementOfWidth.compute({ ...both, theta: 90 })).toBeCloseTo(0.0019, 15);
        expect(movementOfThickness.compute({ ...both, theta })).toBeCloseTo(
          movementOfWidth.compute({ ...both, theta: 90 - theta }),
          15,
        );
        expect(
          movementOfWidth.compute({ ...both, theta }) + movementOfThickness.compute({ ...both, theta }),
        ).toBeCloseTo(0.00464, 15);
      }),
    );
  });

  test('a square corner leaves square as two directions of the wood, moved separately, say it does', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 90, noNaN: true }), (theta) => {
        const [e_T, e_R, angle] = [0.011, 0.0076, (theta * Math.PI) / 180];
        // Stretch the two edge directions along and across the rings, then measure the angle between them.
        const moved = (x: number, y: number) => {
          const along = (x * Math.cos(angle) + y * Math.sin(angle)) * (1 + e_T);
          const across = (-x * Math.sin(angle) + y * Math.cos(angle)) * (1 + e_R);
          return [along, across] as const;
        };
        const [a, b] = [moved(1, 0), moved(0, 1)];
        const cosine = (a[0] * b[0] + a[1] * b[1]) / Math.hypot(...a) / Math.hypot(...b);
        expect(Math.abs(Math.asin(cosine) - outOfSquare.compute({ e_T, e_R, theta }))).toBeLessThan(1e-4);
      }),
    );
    // A 20 mm walnut strip at 45° that dries by 4 points is 0.067 mm out over its face.
    expect(20 * outOfSquare.compute({ e_T: 4 * 0.00274, e_R: 4 * 0.0019, theta: 45 })).toBeCloseTo(0.067, 3);
  });
});

const moistures = fc.double({ min: 6, max: 14, noNaN: true });
const dimensions = fc.double({ min: 1, max: 1000, noNaN: true });

describe('the choice of method', () => {
  test('takes the coefficient from 6 to 14 %, both ends included, and says why', () => {
    expect(movement(100, 6, 14, walnut)).toEqual({
      change: expect.closeTo(2.192, 3),
      method: 'coefficient',
      because: expect.stringContaining('between 6 and 14 %'),
    });
  });

  test('takes the shrinkage as soon as one end leaves that range, and says why', () => {
    for (const [from, to] of [
      [5.9, 10],
      [10, 14.1],
      [0, 30],
    ] as const)
      expect(movement(100, from, to, walnut)).toMatchObject({
        method: 'shrinkage',
        because: expect.stringContaining('outside 6 to 14 %'),
      });
    expect(change(100, 30, 0, walnut)).toBeCloseTo(-7.8, 10);
  });

  test('takes the shrinkage inside the range where no coefficient is known', () => {
    expect(movement(100, 8, 10, { shrinkage: 7.8 })).toMatchObject({
      method: 'shrinkage',
      because: expect.stringContaining('No coefficient'),
    });
  });

  test.each<[string, number, number, number, DirectionFigures, string]>([
    ['above fiber saturation', 100, 8, 31, walnut, 'Above about 30 %'],
    ['below zero', 100, -1, 8, walnut, 'below 0 %'],
    ['no number', 100, Number.NaN, 8, walnut, 'must be numbers'],
    ['infinite moisture', 100, 8, Infinity, walnut, 'Above about 30 %'],
    ['no size', 0, 8, 10, walnut, 'more than 0'],
    ['a size that is no number', Number.NaN, 8, 10, walnut, 'more than 0'],
    ['no figure at all', 100, 8, 10, {}, 'No movement figure'],
    ['no shrinkage known outside 6 to 14 %', 100, 5, 10, { coefficient: 0.0025 }, 'no shrinkage figure'],
    [
      'redwood outside 6 to 14 %, because 30 % does not hold for it',
      100,
      5,
      10,
      { coefficient: 0.00205, shrinkage: 4.4, lowFiberSaturation: true },
      'well below 30 %',
    ],
    [
      'redwood without a coefficient',
      100,
      8,
      10,
      { shrinkage: 4.4, lowFiberSaturation: true },
      'no coefficient',
    ],
  ])('refuses %s', (_, dimension, from, to, figures, sentence) => {
    expect(movement(dimension, from, to, figures)).toEqual({ refused: expect.stringContaining(sentence) });
  });

  test('low fiber saturation does not stop the coefficient where it holds', () => {
    expect(
      movement(100, 8, 10, { coefficient: 0.00205, shrinkage: 4.4, lowFiberSaturation: true }),
    ).toMatchObject({ change: expect.closeTo(0.41, 10), method: 'coefficient' });
  });

  test('by coefficient: no change of moisture, no movement; there and back cancel; twice the width, twice the movement', () => {
    fc.assert(
      fc.property(dimensions, moistures, moistures, (dimension, from, to) => {
        expect(change(dimension, from, from, walnut)).toBe(0);
        expect(change(dimension, from, to, walnut)).toBe(-change(dimension, to, from, walnut) + 0);
        expect(change(2 * dimension, from, to, walnut)).toBeCloseTo(
          2 * change(dimension, from, to, walnut),
          9,
        );
      }),
    );
  });

  test('by shrinkage: going there and back from the changed size returns the first size exactly', () => {
    const wide = fc.double({ min: 0, max: 30, noNaN: true });
    fc.assert(
      fc.property(dimensions, wide, wide, (dimension, from, to) => {
        const there = dimension + change(dimension, from, to, { shrinkage: 7.8 });
        expect(there + change(there, to, from, { shrinkage: 7.8 })).toBeCloseTo(dimension, 8);
      }),
    );
  });

  test('the two methods differ by less than 4 % of the movement wherever both hold', () => {
    fc.assert(
      fc.property(moistures, moistures, (from, to) => {
        const [one, other] = [change(100, from, to, walnut), change(100, from, to, { shrinkage: 7.8 })];
        expect(Math.abs(one - other)).toBeLessThanOrEqual(0.04 * Math.abs(one) + 1e-12);
      }),
    );
  });
});

describe('where wood hardly moves', () => {
  test('a 200 mm side over 6 points changes 0.04 to 0.08 mm along the grain (Wood Handbook: 0.1 to 0.2 % green to oven-dry)', () => {
    expect(lengthwiseMovement(200, 6, 12)).toEqual({
      low: expect.closeTo(0.04, 10),
      high: expect.closeTo(0.08, 10),
    });
    expect(lengthwiseMovement(200, 6, 31)).toEqual({ refused: expect.any(String) });
    expect(lengthwiseMovement(0, 6, 12)).toEqual({ refused: expect.any(String) });
  });

  test('plywood from 7 to 20 % grows 0.18 % along and 0.27 % across its face grain (Joyce)', () => {
    // The coefficients are rounded to five decimals, which leaves 0.003 % of the size.
    expect((plywoodMovement(100, 'along', 7, 20) as Movement).change).toBeCloseTo(0.18, 2);
    expect((plywoodMovement(100, 'across', 7, 20) as Movement).change).toBeCloseTo(0.27, 2);
    expect(plywoodMovement(100, 'across', 5, 9)).toEqual({ refused: expect.stringContaining('7 to 20 %') });
  });
});

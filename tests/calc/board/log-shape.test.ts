/**
 * The shape of dried wood: the map against its own promise, the cup against worked values and plain geometry.
 * Over 150 lines: one shape, every other way to it.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cupAnyWidth,
  cupExact,
  cupFromFaces,
  cupNarrow,
  missingWedge,
  NARROW,
} from '../../../src/calc/board/cup.ts';
import {
  type LogPiece,
  relaxed,
  type Shrinkages,
  shrinkagesOf,
  toLog,
} from '../../../src/calc/board/log-map.ts';
import { type LogShape, shapeAfter } from '../../../src/calc/board/log-shape.ts';
import { isRefused } from '../../../src/calc/core/refusal.ts';
import type { Wood } from '../../../src/calc/core/wood.ts';
import { outOfSquare } from '../../../src/calc/movement/movement.ts';

const shape = (...given: Parameters<typeof shapeAfter>): LogShape => {
  const found = shapeAfter(...given);
  if (isRefused(found)) throw new Error(found.refused);
  return found;
};
// Green to oven-dry, Wood Handbook Table 4-3: black walnut 5.5 and 7.8 %, black cherry 3.7 and 7.1 %.
// Physics note C4 takes 8/30 of them.
const eight = (radial: number, tangential: number) => ({
  radial: (radial * 8) / 3000,
  tangential: (tangential * 8) / 3000,
});
const walnut = eight(5.5, 7.8);
const cherry = eight(3.7, 7.1);
/** A flat-sawn board above the pith whose lower face is `R` from it. */
const flat = (R: number, width: number, thickness: number): LogPiece => ({
  center: [0, R + thickness / 2],
  width,
  thickness,
  turn: 0,
});
const anyShrinkages = fc.record({
  radial: fc.double({ min: -0.03, max: 0.06, noNaN: true }),
  tangential: fc.double({ min: -0.06, max: 0.12, noNaN: true }),
});

test('the map shortens every small length by exactly what its direction wants', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 300, noNaN: true }),
      fc.double({ min: -2.5, max: 2.5, noNaN: true }),
      fc.double({ min: 0, max: 6.283, noNaN: true }),
      anyShrinkages,
      (r, angle, direction, shrinkages) => {
        const step = 1e-4 * r;
        const at = [r * Math.cos(angle), r * Math.sin(angle)] as const;
        const by = [step * Math.cos(direction), step * Math.sin(direction)] as const;
        const from = relaxed([at[0] - by[0], at[1] - by[1]], shrinkages, 0);
        const to = relaxed([at[0] + by[0], at[1] + by[1]], shrinkages, 0);
        const found = Math.hypot(to[0] - from[0], to[1] - from[1]) / (2 * step);
        const across = Math.cos(direction - angle) * (1 - shrinkages.radial);
        const alongRing = Math.sin(direction - angle) * (1 - shrinkages.tangential);
        expect(found).toBeCloseTo(Math.hypot(across, alongRing), 6);
      },
    ),
    { numRuns: 2000 },
  );
});

describe('cup of a 125 mm flat-sawn board, 60 mm from the pith, drying 8 points', () => {
  // Physics note C4, worked table.
  test.each([
    ['walnut', walnut, 0.308, 0.309, 0.399],
    ['cherry', cherry, 0.455, 0.457, 0.59],
  ])('%s: exact, any width, narrow', (_, { radial: S_R, tangential: S_T }, exact, any, narrow) => {
    const inputs = { w: 125, R: 60, S_R, S_T };
    expect(cupExact.compute(inputs)).toBeCloseTo(exact, 3);
    expect(cupAnyWidth.compute(inputs)).toBeCloseTo(any, 3);
    expect(cupNarrow.compute(inputs)).toBeCloseTo(narrow, 3);
    const { lower, upper, bark } = shape(flat(60, 125, 20), { radial: S_R, tangential: S_T });
    expect(bark).toBe('upper');
    // R is measured to the pith side, which crowns; the bark side, further out, hollows a little less.
    expect(lower.cup).toBeCloseTo(-exact, 3);
    expect(upper.cup).toBeGreaterThan(0.7 * exact);
    expect(upper.cup).toBeLessThan(exact);
  });

  test('far out, 300 mm from the pith, walnut: 0.0785 exact, 0.0799 narrow', () => {
    const inputs = { w: 125, R: 300, S_R: walnut.radial, S_T: walnut.tangential };
    expect(cupExact.compute(inputs)).toBeCloseTo(0.0785, 4);
    expect(cupNarrow.compute(inputs)).toBeCloseTo(0.0799, 4);
  });

  test('the walnut board is 122.57 mm wide afterwards, not the 122.40 mm of plain tangential shrinkage', () => {
    expect(shape(flat(60, 125, 20), walnut).lower.width).toBeCloseTo(122.57, 2);
    expect(125 * (1 - walnut.tangential)).toBeCloseTo(122.4, 2);
  });
});

test('a whole walnut disk, green to oven-dry, is 8.76 degrees short of a full turn', () => {
  expect(360 * missingWedge.compute({ S_R: 0.055, S_T: 0.078 })).toBeCloseTo(8.76, 2);
});

test('the narrow formula is within 5 % of the exact one while the board is narrow', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: NARROW, noNaN: true }),
      fc.double({ min: 0.005, max: 0.03, noNaN: true }),
      (share, S_T) => {
        const inputs = { w: share * 100, R: 100, S_R: S_T / 2, S_T };
        expect(Math.abs(cupNarrow.compute(inputs) / cupExact.compute(inputs) - 1)).toBeLessThan(0.06);
      },
    ),
  );
});

test('a small strip far from the pith behaves as a straight-ringed one: its size and its corners', () => {
  // Turned rings (MacLean 1945 treats the same): strains at 45° are the mean, the corner opens (S_T − S_R) sin 90°.
  const strip: LogPiece = { center: [0, 1900], width: 20, thickness: 20, turn: 45 };
  const { width, thickness, diamonding } = shape(strip, walnut);
  const mean = (walnut.radial + walnut.tangential) / 2;
  expect(width).toBeCloseTo(20 * (1 - mean), 2);
  expect(thickness.middle).toBeCloseTo(20 * (1 - mean), 2);
  const skew = outOfSquare.compute({ e_T: walnut.tangential, e_R: walnut.radial, theta: 45 });
  // 2 %: the straight-ringed formula is first order in the shrinkage.
  expect(Math.abs(Math.abs(diamonding) / ((skew * 180) / Math.PI) - 1)).toBeLessThan(0.02);
});

test('a 20 mm walnut strip at 45 degrees, drying 4 points, goes 0.193 degrees out of square', () => {
  // Physics note C3: 0.193 degrees from the coefficients 0.00274 and 0.00190.
  const strip: LogPiece = { center: [0, 1900], width: 20, thickness: 20, turn: 45 };
  const dried = shape(strip, { radial: 4 * 0.0019, tangential: 4 * 0.00274 });
  expect(Math.abs(dried.diamonding)).toBeCloseTo(0.193, 2);
});

const anyPiece = fc
  .record({
    x: fc.double({ min: -200, max: 200, noNaN: true }),
    y: fc.double({ min: -200, max: 200, noNaN: true }),
    width: fc.double({ min: 10, max: 150, noNaN: true }),
    thickness: fc.double({ min: 4, max: 50, noNaN: true }),
    turn: fc.double({ min: -180, max: 180, noNaN: true }),
  })
  .map(({ x, y, ...rest }): LogPiece => ({ center: [x, y], ...rest }))
  .filter((piece) => !isRefused(shapeAfter(piece, walnut)));

describe('any rectangle without the pith', () => {
  const area = (points: LogShape['before']) =>
    points.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = points[(i + 1) % points.length]!;
      return sum + (x * nextY - y * nextX) / 2;
    }, 0);

  test('keeps its shape when nothing changes', () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const { before, after, diamonding, lower } = shape(piece, { radial: 0, tangential: 0 });
        for (const [i, [x, y]] of before.entries()) {
          expect(Math.hypot(after[i]![0] - x, after[i]![1] - y)).toBeLessThan(1e-6);
        }
        expect(Math.abs(diamonding) + Math.abs(lower.cup)).toBeLessThan(1e-6);
      }),
    );
  });

  test('loses area as the product of both shrinkages says', () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const { before, after } = shape(piece, walnut, 200);
        const expected = (1 - walnut.radial) * (1 - walnut.tangential);
        expect(area(before)).toBeCloseTo(piece.width * piece.thickness, 6);
        expect(area(after) / area(before)).toBeCloseTo(expected, 4);
      }),
    );
  });

  test('takes the same shape wherever it sits around the log', () => {
    fc.assert(
      fc.property(anyPiece, fc.double({ min: -90, max: 90, noNaN: true }), (piece, around) => {
        const center = toLog({ center: [0, 0], width: 1, thickness: 1, turn: around }, piece.center);
        const turn = (piece.turn + around) % 360;
        const [here, there] = [shape(piece, cherry), shape({ ...piece, center, turn }, cherry)];
        expect(there.lower.cup).toBeCloseTo(here.lower.cup, 6);
        expect(there.width).toBeCloseTo(here.width, 6);
        expect(there.diamonding).toBeCloseTo(here.diamonding, 5);
      }),
    );
  });

  test('flips over with its image: mirrored across the y axis, diamonding changes sign and cup does not', () => {
    fc.assert(
      fc.property(anyPiece, (piece) => {
        const mirror = { ...piece, center: [-piece.center[0], piece.center[1]] as const, turn: -piece.turn };
        const [here, there] = [shape(piece, cherry), shape(mirror, cherry)];
        expect(there.upper.cup).toBeCloseTo(here.upper.cup, 6);
        expect(there.diamonding).toBeCloseTo(-here.diamonding, 6);
        expect(there.thickness.left).toBeCloseTo(here.thickness.right, 6);
      }),
    );
  });
});

test('drying hollows the bark side, wetting crowns it, and turning the board over swaps the faces', () => {
  const board = flat(80, 120, 15);
  expect(shape(board, walnut).upper.cup).toBeGreaterThan(0.1);
  expect(shape(board, { radial: -0.01, tangential: -0.02 }).upper.cup).toBeLessThan(-0.1);
  const over = shape({ ...board, turn: 180 }, walnut);
  expect(over.bark).toBe('lower');
  expect(over.lower.cup).toBeCloseTo(shape(board, walnut).upper.cup, 9);
});

test('a quarter-sawn board on the line from the pith stays symmetric and shrinks across the rings only', () => {
  const { lower, upper, diamonding, width } = shape(
    { center: [100, 0], width: 120, thickness: 10, turn: 0 },
    walnut,
  );
  expect(Math.abs(lower.cup)).toBeLessThan(0.05);
  expect(upper.cup).toBeCloseTo(lower.cup, 9);
  expect(diamonding).toBeCloseTo(0, 9);
  expect(width).toBeCloseTo(120 * (1 - walnut.radial), 9);
});

test('the shrinkages of a wood come from the same figures as its movement, and refuse alike', () => {
  const figure = (value: number) => ({ value, status: 'read', source: 'Wood Handbook Table 13-5' }) as const;
  const wood = {
    radialCoefficient: figure(0.0019),
    tangentialCoefficient: figure(0.00274),
    lowFiberSaturation: false,
  } as Wood;
  const { radial, tangential } = shrinkagesOf(wood, 12, 8) as Shrinkages;
  expect([radial, tangential]).toEqual([expect.closeTo(0.0076, 9), expect.closeTo(0.01096, 9)]);
  expect(isRefused(shrinkagesOf(wood, 40, 8))).toBe(true);
  // Below 6 % the coefficients do not hold, and this wood is given without shrinkages.
  expect(isRefused(shrinkagesOf(wood, 12, 4))).toBe(true);
});

test('cup from faces one point apart, flat-sawn cherry 150 mm wide: 1.2 mm at 6 mm, 0.6 mm at 12 mm', () => {
  // Trade brief R51, from the coefficient 0.00248 of Wood Handbook Table 13-5.
  expect(cupFromFaces.compute({ C: 0.00248, dM: 1, w: 150, T: 6 })).toBeCloseTo(1.16, 2);
  expect(cupFromFaces.compute({ C: 0.00248, dM: 1, w: 150, T: 12 })).toBeCloseTo(0.58, 2);
});

test.each<[string, Partial<LogPiece>, RegExp]>([
  ['contains the pith', { center: [0, 5] }, /contains the pith/],
  ['touches the pith', { center: [0, 10] }, /contains the pith/],
  ['has no width', { width: 0 }, /width is 0 mm/],
  ['has no thickness', { thickness: 0 }, /thickness is 0 mm/],
  ['has a turn that is no number', { turn: Number.NaN }, /turn is not a number/],
])('a piece that %s is refused', (_, part, sentence) => {
  const piece = { center: [0, 70] as const, width: 100, thickness: 20, turn: 0, ...part };
  expect(shapeAfter(piece, walnut)).toEqual({ refused: expect.stringMatching(sentence) });
});

/** Length of board for the walls of a box: worked by hand, and as cuts drawn through a board. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  boardLengthForParts,
  matchedCorners,
  spareOnBoard,
  wallsInARow,
} from '../../../src/calc/board/strip-length.ts';

describe('board length', () => {
  // By hand: 2 · (250 + 150) + 3 · 3 + 12 = 821; at 45° each place takes 3 · 1.4142 = 4.24, so 800 + 12.73 + 12.
  test('for walls of 250 and 150 mm, 3 mm of kerf and 12 to trim is 821 mm square and 824.7 mitered', () => {
    const P = wallsInARow.compute({ q: 2, L: 250, W: 150, i: 0 });
    expect(boardLengthForParts.compute({ P, n: 3, c: 0, k: 3, m: 12 })).toBe(821);
    expect(boardLengthForParts.compute({ P, n: 0, c: 3, k: 3, m: 12 })).toBeCloseTo(824.73, 2);
  });

  // 2 × 320 + 3 × 3 and 320 + 3, without spare.
  test('for walls of 200 and 120 mm with 3 mm of kerf is 649 mm in one strip, and 323 mm for each leaf of a pair', () => {
    const of = (q: number, n: number) =>
      boardLengthForParts.compute({
        P: wallsInARow.compute({ q, L: 200, W: 120, i: 0 }),
        n,
        c: 0,
        k: 3,
        m: 0,
      });
    expect(of(2, 3)).toBe(649);
    expect(of(1, 1)).toBe(323);
  });

  // In sixteenths: 2 · (112 + 72) + 3 · 2 + 8 = 382, which is 23 7/8 in.
  test('for walls of 7 and 4 1/2 in, 1/8 in of kerf and 1/2 in to trim is 23 7/8 in', () => {
    const inches = (n: number) => n * 25.4;
    const P = wallsInARow.compute({ q: 2, L: inches(7), W: inches(4.5), i: 0 });
    const S = boardLengthForParts.compute({ P, n: 3, c: 0, k: inches(1 / 8), m: inches(1 / 2) });
    expect(S / 25.4).toBeCloseTo(23.875, 9);
  });

  test('less the same parts and cuts is what is left to trim', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 2000, noNaN: true }),
        fc.integer({ min: 0, max: 8 }),
        fc.integer({ min: 0, max: 8 }),
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (P, n, c, k, m) => {
          const B = boardLengthForParts.compute({ P, n, c, k, m });
          expect(spareOnBoard.compute({ B, P, n, c, k })).toBeCloseTo(m, 8);
        },
      ),
    );
  });
});

test('two cuts at 45°, face to face, need no more of the outer face than one slanted kerf', () => {
  // Another way: the saw's slab of thickness k leans at 45°. On the outer face (z = 0) it covers the points whose distance
  // to the finished miter, measured square to the blade, is 0 to k.
  const k = 3;
  const fine = 0.001;
  const distance = (x: number, z: number, toward: 1 | -1) => (toward * x + z) / Math.SQRT2;
  // The first wall ends at x = 0 and leans back below; how far to the right does its slab reach on the face?
  let reach = 0;
  while (distance(reach + fine, 0, 1) <= k) reach += fine;
  expect(reach).toBeCloseTo(k * Math.SQRT2, 2);
  // The slab of the second wall, from there toward the first, ends where the first wall ends: it takes nothing more.
  expect(distance(0 - reach, 0, -1)).toBeCloseTo(k, 2);
  const S = boardLengthForParts.compute({ P: 100, n: 0, c: 1, k, m: 0 });
  expect(S - 100).toBeCloseTo(reach, 2);
});

test('end walls behind the sides of a butted box are two thicknesses shorter each', () => {
  // 2 · 200 + 2 · (120 − 2 · 10).
  expect(wallsInARow.compute({ q: 2, L: 200, W: 120, i: 10 })).toBe(600);
});

test('one strip matches three corners, two halves two', () => {
  expect(matchedCorners.compute({ u: 1 })).toBe(3);
  expect(matchedCorners.compute({ u: 2 })).toBe(2);
});

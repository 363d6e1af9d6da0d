/** From a rough board to slices, strips and parts: worked by hand, and as plain geometry. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Board, layOut, type Piece } from '../../../src/calc/board/board-layout.ts';
import { partsKeptJoined, slicesByResawing, thicknessForPair } from '../../../src/calc/board/stock.ts';

describe('resawing', () => {
  // By hand, kerf 1.2, 0.8 planed off each face: (25.4 + 1.2) / (6.35 + 1.6 + 1.2) = 2.9; (50.8 + 1.2) / 9.15 = 5.7;
  // (38.1 + 1.2) / (9.525 + 1.6 + 1.2) = 3.2.
  test.each([
    [25.4, 6.35, 2],
    [50.8, 6.35, 5],
    [38.1, 9.525, 3],
  ])('%f mm gives slices of %f mm: %i', (T, t, n) => {
    expect(slicesByResawing.compute({ T, t, p: 0.8, k: 1.2 })).toBe(n);
  });

  test('gives two slices from exactly the thickness a pair needs, and one from a hair less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        (t, p, k) => {
          const T = thicknessForPair.compute({ t, p, k });
          expect(slicesByResawing.compute({ T: T + 1e-9, t, p, k })).toBe(2);
          expect(slicesByResawing.compute({ T: T - 1e-6, t, p, k })).toBe(1);
        },
      ),
    );
  });
});

test('the parts kept in one strip reach the safe length, and one part fewer does not', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 100, max: 1000 }),
      fc.integer({ min: 20, max: 600 }),
      fc.integer({ min: 0, max: 6 }),
      (s, p, k) => {
        const n = partsKeptJoined.compute({ s, p, k });
        expect(n * p + (n - 1) * k).toBeGreaterThanOrEqual(s);
        if (n > 1) expect((n - 1) * p + (n - 2) * k).toBeLessThan(s);
      },
    ),
  );
});

describe('parts on a board', () => {
  const board: Board = { length: 700, width: 150, slices: 2, kerf: 3 };
  const walls: Piece[] = [
    { name: 'front', length: 120, width: 50, run: 'walls' },
    { name: 'right', length: 200, width: 50, run: 'walls' },
    { name: 'back', length: 120, width: 50, run: 'walls' },
    { name: 'left', length: 200, width: 50, run: 'walls' },
  ];

  test('keep the order of a run, one kerf apart', () => {
    const { placed } = layOut(walls, board);
    expect(placed.map(({ piece }) => piece.name)).toEqual(['front', 'right', 'back', 'left']);
    expect(placed.map(({ x }) => x)).toEqual([0, 123, 326, 449]);
  });

  test('of a run too long for the board go on in a second row', () => {
    const { placed } = layOut(walls, { ...board, length: 600 });
    expect(new Set(placed.map(({ y }) => y)).size).toBe(2);
  });

  test('wider than the board are named with what is missing', () => {
    const wide: Piece = { name: 'bottom', length: 190, width: 170 };
    const { short, placed } = layOut([wide, ...walls], board);
    expect(short).toEqual([{ piece: wide, length: 0, width: 20 }]);
    expect(placed).toHaveLength(4);
  });

  test('go on to further slices and boards when one is full', () => {
    const panels: Piece[] = Array.from({ length: 5 }, () => ({ name: 'panel', length: 650, width: 100 }));
    expect(layOut(panels, board).boards).toBe(3);
  });

  test('lie on the board, never on each other, always a kerf apart', () => {
    const piece = fc.record({
      name: fc.constant('part'),
      length: fc.integer({ min: 20, max: 500 }),
      width: fc.integer({ min: 20, max: 140 }),
      run: fc.option(fc.constantFrom('walls', 'liner'), { nil: undefined }),
    });
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 14 }), (pieces) => {
        const { placed } = layOut(pieces, board);
        expect(placed).toHaveLength(pieces.length);
        for (const one of placed) {
          expect(one.x + one.piece.length).toBeLessThanOrEqual(board.length);
          expect(one.y + one.piece.width).toBeLessThanOrEqual(board.width);
          for (const other of placed) {
            if (other === one || other.board !== one.board || other.slice !== one.slice) continue;
            const apart = Math.max(
              other.x - one.x - one.piece.length,
              one.x - other.x - other.piece.length,
              other.y - one.y - one.piece.width,
              one.y - other.y - other.piece.width,
            );
            expect(apart).toBeGreaterThanOrEqual(board.kerf - 1e-9);
          }
        }
      }),
    );
  });
});

/** Boards, slices and runs against arithmetic by hand. Sizes in mm. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import { type Stock, stockOf } from '../../../src/box/stock/stock.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { exampleBox } from '../reckoned-box.ts';

const of = (changes: Partial<Box> = {}) => stockOf(designBox({ ...exampleBox, ...changes }));
const flowing = ({ corners }: Stock) =>
  corners.filter(({ flows }) => flows).map(({ between }) => between.join('-'));

describe('the example box, 200 by 125 outside, kerf 3', () => {
  // 175 + 6 + 19 by 100 + 6 + 19. One strip: 2 × (200 + 125) + 3 × 3 + 12 to trim = 671.
  const stock = of();

  test('has its walls on one strip of 671 mm, in the order in which one walks round the box', () => {
    const walls = stock.slices[0]!.placed;
    expect(walls.map(({ piece }) => piece.name)).toEqual(['front', 'right', 'back', 'left']);
    // 6 to trim + 125, then a kerf: 134; + 200 + 3 = 337; + 125 + 3 = 465; the end 465 + 200 + 6 = 671.
    expect(walls.map(({ x }) => x)).toEqual([0, 134, 337, 465]);
    expect(walls[3]!.x + walls[3]!.piece.length).toBe(671);
    expect(stock.joined[0]).toMatchObject({ length: 671, safe: true });
  });

  test('comes from one board 26 mm thick: two slices with a saw cut between them', () => {
    // Walls 9.5 + 2 × 1, bottom 6.5 + 2 × 1, kerf 3: 11.5 + 3 + 8.5 = 23. The lid, 5.2, shares the bottom's slice:
    // a third slice would make 23 + 3 + 7.2 = 33.2.
    expect(stock.boards).toBe(1);
    expect(stock.slices.map(({ sawn }) => sawn)).toEqual([11.5, 8.5]);
    expect(stock.slices[1]!.placed.map(({ piece }) => piece.name).sort()).toEqual(['bottom', 'lid']);
  });

  test('gives the lid a slice of its own where the board is thick enough for it, so that less is planed away', () => {
    expect(of({ boardThickness: 33.3 }).slices.map(({ finished }) => finished)).toEqual([9.5, 6.5, 5.2]);
    expect(of({ boardThickness: 33.3 }).boards).toBe(1);
  });

  test('uses the share of its slices that the rough parts cover', () => {
    // All walls are ripped to 45 + 6, the front too, which is lowered later. Panels are 12 longer and 6 wider.
    const walls = (131 + 200 + 125 + 206) * 51;
    const panels = stock.slices[1]!.placed.map(({ piece }) => piece.length * piece.width);
    const area = walls + panels.reduce((sum, one) => sum + one, 0);
    expect(stock.used).toBeCloseTo(area / (2 * 900 * 150), 9);
  });
});

describe('where the figure goes on round the box', () => {
  test('is three corners of four with one strip, because its two ends never met', () => {
    expect(flowing(of())).toEqual(['front-right', 'right-back', 'back-left']);
  });

  test('is all four with a pair opened like a book', () => {
    // Pair of walls: 2 × 11.5 + 3 = 26, exactly the board's thickness.
    const stock = of({ wallsFrom: 'bookmatched' });
    expect(flowing(stock)).toHaveLength(4);
    const pair = stock.slices.filter(({ placed }) =>
      placed.some(({ piece }) => piece.run?.startsWith('walls')),
    );
    expect(pair.map(({ board, place, mirrored }) => [board, place, mirrored])).toEqual([
      [0, 0, false],
      [0, 1, true],
    ]);
    // Each half: 200 + 125 + 3 + 12 to trim = 340, and the neighbors at either end of the pair meet at the same place.
    expect(stock.joined.slice(0, 2).map(({ length }) => length)).toEqual([340, 340]);
    expect(pair.map(({ placed }) => placed.map(({ piece }) => piece.name))).toEqual([
      ['front', 'right'],
      ['left', 'back'],
    ]);
  });

  test('is told when the board is too thin for a pair, with what is missing', () => {
    const stock = of({ wallsFrom: 'bookmatched', boardThickness: 25 });
    expect(stock.shortages).toMatchObject([{ of: 'thickness', by: 1, to: 26 }]);
    expect(flowing(stock)).toEqual(['front-right', 'back-left']);
  });

  test('is two corners when the strip must be cut in two, and the missing length is told', () => {
    const stock = of({ boardLength: 600 });
    // 671 − 600.
    expect(stock.shortages).toMatchObject([{ of: 'length', by: 71, to: 671 }]);
    expect(flowing(stock)).toEqual(['front-right', 'back-left']);
  });
});

test('a panel wider than the board is named with what is missing', () => {
  const bottom = designBox(exampleBox).parts.find(({ name }) => name === 'bottom')!;
  const { shortages } = of({ boardWidth: 110 });
  const found = shortages.find(({ what }) => what.includes('bottom'))!;
  expect(found.of).toBe('width');
  expect(found.by).toBeCloseTo(bottom.finished.width + 6 - 110, 9);
});

test('plywood and keys need no board', () => {
  const stock = of({ bottom: 'plywood', lid: 'plywood', joint: 'keyed-mitre' });
  expect(stock.plywood.map(({ name }) => name)).toEqual(['bottom', 'lid']);
  expect(stock.offcuts.map(({ name }) => name)).toEqual(['keys']);
  expect(stock.slices.flatMap(({ placed }) => placed.map(({ piece }) => piece.name))).toHaveLength(4);
});

test('a lift-off lid has its walls on a second strip of the same slice, in the same order', () => {
  const [first] = of({ kind: 'lift-off' }).slices;
  expect(first!.placed.map(({ piece }) => piece.name).slice(4, 8)).toEqual([
    'lid-front',
    'lid-right',
    'lid-back',
    'lid-left',
  ]);
});

test('whatever the board, each solid part lies on it once or is named as short, and the slices fit into its thickness', () => {
  fc.assert(
    fc.property(
      fc.record({
        boardLength: fc.integer({ min: 100, max: 4000 }),
        boardWidth: fc.integer({ min: 20, max: 600 }),
        boardThickness: fc.integer({ min: 3, max: 100 }),
        kerf: fc.double({ min: 0.3, max: 6, noNaN: true }),
        planing: fc.double({ min: 0, max: 5, noNaN: true }),
        wallsFrom: fc.constantFrom('strip', 'bookmatched'),
        kind: fc.constantFrom('sliding', 'lift-off', 'sawn'),
      }) as fc.Arbitrary<Partial<Box>>,
      (changes) => {
        const box = { ...exampleBox, ...changes };
        const design = designBox(box);
        const stock = stockOf(design);
        const placed = stock.slices.flatMap(({ placed }) => placed.map(({ piece }) => piece.name));
        expect(new Set(placed).size).toBe(placed.length);
        for (const { name, label } of design.parts)
          expect(
            placed.includes(name) || stock.shortages.some(({ what }) => what.includes(label)),
            name,
          ).toBe(true);
        const isThick = stock.shortages.every((short) => short.of !== 'thickness');
        for (let board = 0; isThick && board < stock.boards; board++) {
          const own = stock.slices.filter((slice) => slice.board === board);
          const used = own.reduce((sum, { sawn }) => sum + sawn, 0) + box.kerf * (own.length - 1);
          expect(used).toBeLessThanOrEqual(box.boardThickness + 1e-6);
        }
      },
    ),
    { numRuns: 60 },
  );
});

/** How things lie together: against counting by hand, against brute force, and against plain geometry. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Arrangement, arrangements, type Thing } from '../../../src/calc/size/packing.ts';

const dominoes: Thing = { name: 'domino', length: 50, width: 25, height: 9, count: 28 };

const anyThing = fc.record({
  name: fc.constant('thing'),
  length: fc.integer({ min: 5, max: 120 }),
  width: fc.integer({ min: 5, max: 120 }),
  height: fc.integer({ min: 5, max: 120 }),
  count: fc.integer({ min: 1, max: 12 }),
});

/** Every single thing as a block in place, from the groups. */
const pieces = ({ groups }: Arrangement) =>
  groups.flatMap(({ at, place, places, count, thing }) =>
    Array.from({ length: count }, (_, index) => {
      const [nx, ny] = places;
      const step = [index % nx, Math.floor(index / nx) % ny, Math.floor(index / (nx * ny))];
      const low = at.map((start, axis) => start + step[axis]! * place[axis]!);
      return { thing, low, high: low.map((start, axis) => start + place[axis]!) };
    }),
  );

describe('arranging things', () => {
  test('finds the block of seven by two in two layers for 28 dominoes, with nothing wasted', () => {
    // By hand: 7 × 25 = 175, 2 × 50 = 100, 2 × 9 = 18; 28 × 50 × 25 × 9 = 315 000 = 175 × 100 × 18.
    const found = arrangements([dominoes], { ratio: 1.6, best: 400 });
    const flat = found.find(({ length, width, height }) => length === 175 && width === 100 && height === 18);
    expect(flat?.waste).toBeCloseTo(0, 12);
  });

  test('keeps every thing inside the block, apart from the others, and of its own size', () => {
    fc.assert(
      fc.property(fc.array(anyThing, { minLength: 1, maxLength: 3 }), (things) => {
        for (const block of arrangements(things)) {
          const all = pieces(block);
          expect(all.length).toBe(things.reduce((sum, { count }) => sum + count, 0));
          const outer = [block.length, block.width, block.height];
          for (const { low, high, thing } of all) {
            const { length, width, height } = things[thing]!;
            expect(high.map((end, axis) => Math.round(end - low[axis]!)).sort()).toEqual(
              [length, width, height].sort(),
            );
            high.forEach((end, axis) => {
              expect(end).toBeLessThanOrEqual(outer[axis]! + 1e-6);
            });
          }
          for (const [index, one] of all.entries())
            for (const other of all.slice(index + 1))
              expect(
                [0, 1, 2].some(
                  (axis) =>
                    one.high[axis]! <= other.low[axis]! + 1e-6 || other.high[axis]! <= one.low[axis]! + 1e-6,
                ),
              ).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('finds the smallest block of one kind, as brute force over all counts and turns does', () => {
    fc.assert(
      fc.property(anyThing, (thing) => {
        let smallest = Infinity;
        for (let nx = 1; nx <= thing.count; nx++)
          for (let ny = 1; ny <= thing.count; ny++)
            for (let nz = 1; nz <= thing.count; nz++)
              if (nx * ny * nz >= thing.count)
                smallest = Math.min(smallest, nx * ny * nz * thing.length * thing.width * thing.height);
        const found = arrangements([thing], { best: 1000 });
        const least = Math.min(...found.map(({ length, width, height }) => length * width * height));
        expect(least).toBeCloseTo(smallest, 6);
      }),
    );
  });

  test('uses nothing that is larger than the space there is', () => {
    fc.assert(
      fc.property(anyThing, fc.integer({ min: 20, max: 300 }), (thing, side) => {
        for (const { length, width, height } of arrangements([thing], { most: [side, side, side / 2] })) {
          expect(Math.max(length, width)).toBeLessThanOrEqual(side);
          expect(height).toBeLessThanOrEqual(side / 2);
        }
      }),
    );
  });

  test('finds none where one thing alone is larger than the space', () => {
    expect(arrangements([dominoes], { most: [40, 40, 40] })).toEqual([]);
  });

  test('finds none where there is nothing to arrange', () => {
    expect(arrangements([])).toEqual([]);
  });

  test('ranks a ratio near the wanted one before one far from it, at equal waste', () => {
    const [first] = arrangements([dominoes], { ratio: 1.75 });
    expect(first!.length / first!.width).toBeGreaterThan(1.4);
    expect(first!.length / first!.width).toBeLessThan(2.2);
  });
});

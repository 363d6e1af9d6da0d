/** Full-size templates: tiles that cover a part, and the lines drawn on it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { stretches, tile, tilesOf } from '../../../src/figures/template/tiles.ts';
import { wallTemplates } from '../../../src/figures/template/wall-template.ts';
import { exampleBox } from '../../box/reckoned-box.ts';

const templateOf = (name: string, changes: Partial<Box> = {}) => {
  const found = wallTemplates(designBox({ ...exampleBox, ...changes })).find((one) => one.name === name);
  if (!found) throw new Error(`no template of ${name}`);
  return found;
};
/** Left, right, low and high end of a shape's points. */
const extent = (points: readonly (readonly [number, number])[]) => [
  Math.min(...points.map(([x]) => x)),
  Math.max(...points.map(([x]) => x)),
  Math.min(...points.map(([, y]) => y)),
  Math.max(...points.map(([, y]) => y)),
];
const wasteOf = (name: string, changes?: Partial<Box>) =>
  templateOf(name, changes)
    .shapes.filter(({ as }) => as === 'waste')
    .map(({ points }) => extent(points));

describe('tiles', () => {
  test('fit within the margins of both papers: 12 mm at the sides, 26 mm above and below, 3 mm of their own', () => {
    expect(tile.width + 2 * 3).toBeLessThanOrEqual(210 - 24);
    expect(tile.height + 2 * 3).toBeLessThanOrEqual(279.4 - 26);
  });

  test('a part that fits is one tile; 200 mm are two of 106 mm that share 12', () => {
    expect(stretches(180, 180, 12)).toEqual([[0, 180]]);
    expect(stretches(200, 180, 12)).toEqual([
      [0, 106],
      [94, 200],
    ]);
  });

  test('cover every part from end to end, none larger than allowed, neighbors sharing the overlap', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 3000, noNaN: true }), (length) => {
        const found = stretches(length, tile.width, tile.overlap);
        expect(found[0]![0]).toBeCloseTo(0, 12);
        expect(found.at(-1)![1]).toBeCloseTo(length, 6);
        found.forEach(([from, to], index) => {
          expect(to - from).toBeLessThanOrEqual(tile.width + 1e-9);
          const next = found[index + 1];
          if (next) expect(to - next[0]).toBeCloseTo(tile.overlap, 6);
        });
      }),
    );
  });

  test('a part both long and high is tiled both ways', () => {
    expect(tilesOf(300, 250)).toHaveLength(4);
  });
});

describe('what is drawn on a wall', () => {
  // The example: 200 × 125 × 45 mm outside, walls 9.5 mm, five fingers of 9 mm, grooves 4 mm deep.
  test('a side loses the second and fourth of five fingers at both ends', () => {
    expect(wasteOf('left')).toEqual(
      expect.arrayContaining([
        [0, 9.5, 9, 18],
        [0, 9.5, 27, 36],
        [190.5, 200, 9, 18],
        [190.5, 200, 27, 36],
      ]),
    );
    expect(wasteOf('left')).toHaveLength(4);
  });

  test('the back loses the first, third and fifth', () => {
    expect(wasteOf('back').filter(([x]) => x === 0)).toEqual([
      [0, 9.5, 0, 9],
      [0, 9.5, 18, 27],
      [0, 9.5, 36, 45],
    ]);
  });

  test('the lid’s groove lies 3.5 mm below the upper edge and runs out at the front', () => {
    // The left side’s front end is at the right, as seen from inside.
    const [groove] = templateOf('left').shapes.filter(({ label }) => label === 'groove for the lid');
    const [from, to, low, high] = extent(groove!.points);
    expect([from, to]).toEqual([5.5, 200]);
    expect(low).toBeCloseTo(45 - 3.5 - 5.5, 9);
    expect(high).toBeCloseTo(45 - 3.5, 9);
  });

  test('left and right side are mirror images of each other', () => {
    const shapes = (name: string, turn: (x: number) => number) =>
      templateOf(name)
        .shapes.map(({ as, points }) => [as, ...extent(points.map(([x, y]) => [turn(x), y] as const))].join())
        .sort();
    expect(shapes('left', (x) => x)).toEqual(shapes('right', (x) => 200 - x));
  });

  test('a dovetail’s socket in the side opens inward by one wall over the slope on each side', () => {
    // Tails 2 on 36 mm at the front: pitch 18, pin 5; the middle pin is 5 mm wide outside, 5 + 2 × 9.5 / 7 inside.
    const sockets = templateOf('left', { joint: 'dovetail' }).shapes.filter(
      ({ as, points }) => as === 'waste' && points.some(([x]) => x === 200),
    );
    const middle = sockets
      .map(({ points }) => points)
      .find((points) => Math.min(...points.map(([, y]) => y)) > 5)!;
    const atRoot = middle.filter(([x]) => Math.abs(x - 190.5) < 1e-9).map(([, y]) => y);
    expect(Math.max(...atRoot) - Math.min(...atRoot)).toBeCloseTo(5 + (2 * 9.5) / 7, 6);
  });

  test('a mitered wall shows its heel one wall from each end', () => {
    const heels = templateOf('left', { joint: 'mitre' }).shapes.filter(({ label }) => label === 'heel');
    expect(heels.map(({ points }) => points[0]![0]).sort((a, b) => a - b)).toEqual([9.5, 190.5]);
  });

  test('a sawn box shows both edges of the saw cut on every wall', () => {
    // Lid 20 mm of 45 mm: cut from 25 mm up, one kerf of 3 mm.
    const lines = templateOf('front', { kind: 'sawn' }).shapes.filter(({ as }) => as === 'line');
    expect(lines.map(({ points }) => points[0]![1])).toEqual([25, 28]);
  });
});

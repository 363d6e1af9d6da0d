/** Where neighbors at a corner lay in the board: the arithmetic of grain that goes round a box. */
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import type { WallName } from '../../../src/box/design/part.ts';
import { toLog } from '../../../src/box/stock/grain-places.ts';
import { stockOf } from '../../../src/box/stock/stock.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { exampleBox } from '../reckoned-box.ts';

/** How far apart, mm along the board, across it and through it, two walls lay that now meet at an outer corner. */
function apart(changes: Partial<Box>, one: WallName, other: WallName) {
  const design = designBox({ ...exampleBox, joint: 'mitre', ...changes });
  const { outsideLength: L, outsideWidth: W } = design.values;
  const stock = stockOf(design);
  const point = {
    x: [one, other].includes('front') ? 0 : L,
    y: [one, other].includes('left') ? 0 : W,
    z: 20,
  };
  const places = [one, other].map((name) => {
    const part = design.parts.find((found) => found.name === name)!;
    return toLog(design, stock, part, part.pieces[0]!)!(point);
  });
  return [0, 1, 2].map((axis) => Math.abs(places[0]![axis]! - places[1]![axis]!));
}

const near = (found: number[], expected: readonly number[]) =>
  found.forEach((one, axis) => {
    expect(one).toBeCloseTo(expected[axis]!, 9);
  });

describe('walls from one strip', () => {
  test('lay one saw cut apart at three corners, in the same face of the board', () => {
    near(apart({}, 'front', 'right'), [3, 0, 0]);
    near(apart({}, 'right', 'back'), [3, 0, 0]);
    near(apart({}, 'back', 'left'), [3, 0, 0]);
  });

  test('lay at the two ends of the strip at the fourth', () => {
    // 2 × (200 + 125) + 3 × 3.
    near(apart({}, 'left', 'front'), [659, 0, 0]);
  });
});

describe('walls from a pair opened like a book', () => {
  const pair = { wallsFrom: 'bookmatched' } as const;

  test('lay one saw cut apart in each half', () => {
    near(apart(pair, 'front', 'right'), [3, 0, 0]);
    near(apart(pair, 'back', 'left'), [3, 0, 0]);
  });

  test('lay at the same place, on the two sides of the cut that opened the book, at the mirrored corners', () => {
    // Saw cut 3 and 1 planed off either face.
    near(apart(pair, 'right', 'back'), [0, 0, 5]);
    near(apart(pair, 'left', 'front'), [0, 0, 5]);
  });
});

test('the bottom shows rings at the angle that the box asks for', () => {
  for (const ringAngle of [0, 45, 90]) {
    const design = designBox({ ...exampleBox, ringAngle, boardWidth: 130 });
    const bottom = design.parts.find(({ name }) => name === 'bottom')!;
    const { block } = bottom.pieces[0]!;
    const at = toLog(design, stockOf(design), bottom, bottom.pieces[0]!)!({
      x: 100,
      y: (block.y[0] + block.y[1]) / 2,
      z: (block.z[0] + block.z[1]) / 2,
    });
    // Rings are circles round the pith: their angle to the face is that of the radius to the board's thickness.
    const angle = (Math.atan2(Math.abs(at[1]), at[2]) * 180) / Math.PI;
    // The bottom lies within half a board of the board's middle, 100 mm from the pith.
    expect(Math.abs(angle - ringAngle)).toBeLessThan(7);
  }
});

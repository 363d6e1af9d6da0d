/** What is said of the reader's board, against the layout that the build sheet prints. */
import { expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import { stockOf } from '../../../src/box/stock/stock.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { evaluate, verdicts } from '../../../src/box/whole/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const { joint: _, ...rest } = exampleBox;
/** Boards and joints in every mix; a wide board, so that no wall is too high for it. Kerfs are square here. */
const mixes = (['finger', 'butt', 'rabbet', 'dovetail'] as const).flatMap((joint) =>
  (['strip', 'bookmatched'] as const).flatMap((wallsFrom) =>
    [16, 26, 40].flatMap((boardThickness) =>
      [250, 330, 345, 520, 650, 690, 900].map(
        (boardLength): Box => ({ ...rest, joint, wallsFrom, boardThickness, boardLength, boardWidth: 200 }),
      ),
    ),
  ),
);

test('as many corners match as run on in the layout', () => {
  for (const box of mixes) {
    const design = designBox(box);
    const { corners } = stockOf(design);
    expect(
      design.values.cornersMatched,
      `${box.joint}, ${box.wallsFrom}, ${box.boardThickness} by ${box.boardLength}`,
    ).toBe(corners.filter(({ flows }) => flows).length);
  }
});

test('the walls in one row are as long as the parts of the design', () => {
  for (const box of mixes) {
    const { values, parts } = designBox(box);
    const walls = parts.filter(({ name }) => ['front', 'back', 'left', 'right'].includes(name));
    const together = walls.reduce((sum, { finished }) => sum + finished.length, 0);
    expect(values.wallsTogether).toBeCloseTo(box.wallsFrom === 'bookmatched' ? together / 2 : together, 9);
  }
});

const stateOf = (rule: string, changes: Partial<Box>) =>
  verdicts(evaluate({ ...exampleBox, ...changes })).find(({ check }) => check.id === rule)!.state;
const given = { sizeFrom: 'outside', wantedLength: 200, wantedWidth: 125, kerf: 3, joint: 'finger' } as const;

// 2 · (200 + 125) + 3 · 3 = 659, and 12 to trim is 671.
test('a board of 671 mm is long enough for walls of 200 and 125 mm, one of 670 is short of spare', () => {
  expect(stateOf('board-length', { ...given, boardLength: 671 })).toBe('usual');
  expect(stateOf('board-length', { ...given, boardLength: 670 })).toBe('unusual');
  expect(stateOf('walk-round-order', { ...given, boardLength: 671 })).toBe('usual');
  expect(stateOf('walk-round-order', { ...given, boardLength: 600 })).toBe('unusual');
});

// Two walls of 8 mm, 1 mm off four faces and a kerf of 3 mm: 23 mm.
test('a pair of 8 mm walls comes out of 23 mm and not of 22.5', () => {
  const pair = { wall: 8, planing: 1, kerf: 3, wallsFrom: 'bookmatched' } as const;
  expect(stateOf('resaw-stock', { ...pair, boardThickness: 23 })).toBe('usual');
  expect(stateOf('resaw-stock', { ...pair, boardThickness: 22.5 })).toBe('breaks');
  expect(stateOf('resaw-stock', { ...pair, wallsFrom: 'strip', boardThickness: 22.5 })).toBe('usual');
});

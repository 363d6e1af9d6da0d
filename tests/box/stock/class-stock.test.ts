/** What a class cuts its boxes from, against sums by hand. */
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import { classStock } from '../../../src/box/stock/class-stock.ts';
import { exampleBox } from '../../../src/box/subjects/example.ts';

/**
 * The example by hand, boards 900 × 150 × 26 mm, kerf 3: its walls are one strip of 118 + 172 + 112 + 178 and three cuts,
 * 589 × 62 mm, 10 mm thick as sawn. Bottom and lid are a strip of 175.5 + 180 and a cut, 358.5 × 108.8 mm, 8 mm as sawn.
 */
const example = designBox(exampleBox);

describe('the boards of a class', () => {
  test('for twelve learners and a fifth to spare are eight, 7.2 m long', () => {
    // 12 × 1.2 = 14.4, so 15 boxes. Walls: one strip a row (2 × 589 > 900), two rows a face (62 + 3 + 62 ≤ 150): 8 slices.
    // Panels: two strips a row (358.5 + 3 + 358.5 ≤ 900), one row a face: 8 slices. One of each fits 26 mm (10 + 3 + 8).
    expect(classStock(example, 12, 20)).toMatchObject({ boxes: 15, boards: 8, length: 8 * 900 });
  });

  test('are those of one box for one learner without spare', () => {
    expect(classStock(example, 1, 0)).toMatchObject({ boxes: 1, boards: 1, boardsOfOne: 1 });
  });

  test('never are more than every box by itself would take', () => {
    for (const learners of [1, 2, 5, 24, 40]) {
      const { boards, boxes, boardsOfOne } = classStock(example, learners, 10);
      expect(boards).toBeLessThanOrEqual(boxes * boardsOfOne);
    }
  });

  test('are not shared where slices of one board must match', () => {
    const matched = designBox({ ...exampleBox, wallsFrom: 'bookmatched', boardThickness: 40 });
    const { shared, boards, boxes, boardsOfOne } = classStock(matched, 10, 0);
    expect(shared).toBe(false);
    expect(boards).toBe(boxes * boardsOfOne);
  });
});

test('one box takes 589 and 358.5 mm of strip; four cuts in it take 12 mm', () => {
  const { stripsOfOne, cutsOfOne, sawnOfOne } = classStock(example, 12, 20);
  expect(stripsOfOne).toBeCloseTo(947.5, 6);
  expect(cutsOfOne).toBe(4);
  expect(sawnOfOne).toBe(12);
});

test('twelve learners and 25 % are fifteen boxes, one learner and 20 % are two', () => {
  expect(classStock(example, 12, 25).boxes).toBe(15);
  expect(classStock(example, 1, 20).boxes).toBe(2);
});

test('a plywood bottom is counted for every box, not laid on the boards', () => {
  const { plywood } = classStock(designBox({ ...exampleBox, bottom: 'plywood' }), 10, 20);
  expect(plywood.map(({ part, count }) => [part.name, count])).toEqual([['bottom', 12]]);
});

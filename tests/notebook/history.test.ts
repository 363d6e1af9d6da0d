/** Undo and redo of the current box. */
import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import { exampleBox } from '../../src/box/subjects/example.ts';
import type { Box } from '../../src/box/subjects/inputs.ts';
import {
  canRedo,
  canUndo,
  forgetHistory,
  remember,
  stepBack,
  stepForward,
} from '../../src/notebook/history.ts';

const box = (wall: number): Box => ({ ...exampleBox, wall });

beforeEach(forgetHistory);

describe('undo', () => {
  test('gives back each box in turn, and redo goes forward again', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 3, max: 25, noNaN: true }), { minLength: 1, maxLength: 50 }),
        (walls) => {
          forgetHistory();
          let now = exampleBox;
          const seen = [now];
          walls.forEach((wall, index) => {
            remember(now, { wall }, index * 5000);
            now = box(wall);
            seen.push(now);
          });
          for (const before of seen.slice(0, -1).reverse()) {
            now = stepBack(now)!;
            expect(now).toEqual(before);
          }
          expect(canUndo.value).toBe(false);
          for (const after of seen.slice(1)) {
            now = stepForward(now)!;
            expect(now).toEqual(after);
          }
          expect(canRedo.value).toBe(false);
        },
      ),
    );
  });

  test('takes a slider drag back in one step, and forward again to its end', () => {
    remember(box(9), { wall: 10 }, 0);
    remember(box(10), { wall: 11 }, 100);
    remember(box(11), { wall: 12 }, 200);
    expect(stepBack(box(12))).toEqual(box(9));
    expect(stepForward(box(9))).toEqual(box(12));
    stepBack(box(12));
    expect(stepBack(box(9))).toBeUndefined();
  });

  test('keeps a change of another input as a step of its own', () => {
    remember(box(9), { wall: 10 }, 0);
    remember(box(10), { clearance: 5 }, 100);
    expect(stepBack({ ...box(10), clearance: 5 })).toEqual(box(10));
    expect(stepBack(box(10))).toEqual(box(9));
  });

  test('takes back only what this tab changed: another tab’s kerf stays', () => {
    remember(box(9), { wall: 10 }, 0);
    expect(stepBack({ ...box(10), kerf: 1.5 })).toEqual({ ...box(9), kerf: 1.5 });
  });

  test('forgets what was undone once something else is changed', () => {
    remember(box(9), { wall: 10 }, 0);
    stepBack(box(10));
    expect(canRedo.value).toBe(true);
    remember(box(9), { wall: 11 }, 9000);
    expect(canRedo.value).toBe(false);
  });
});

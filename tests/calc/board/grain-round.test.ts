/** Steps of the figure at the corners, against a line followed along a board that is cut up piece by piece. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stepAtCut, stepAtFourth, stepBetweenLeaves } from '../../../src/calc/board/grain-round.ts';

/** A line, and its heights at both ends of each wall as the walls are cut off one after the other. */
function alongStrip(lengths: readonly number[], kerf: number, height: (x: number) => number) {
  let x = 0;
  return lengths.map((length) => {
    const ends = [height(x), height(x + length)] as const;
    x += length + kerf;
    return ends;
  });
}

describe('a straight line round a box from one strip', () => {
  test('misses by the kerf’s rise at three corners and by the strip’s at the fourth', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 400, noNaN: true }),
        fc.double({ min: 40, max: 300, noNaN: true }),
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 15, noNaN: true }),
        (L, W, k, a) => {
          // A line from a point far below to one far above, so that the slope is that of a right triangle.
          const [run, rise] = [Math.cos((a * Math.PI) / 180), Math.sin((a * Math.PI) / 180)];
          const walls = alongStrip([W, L, W, L], k, (x) => 10 + (x * rise) / run);
          const steps = walls.map(([, end], i) => Math.abs(walls[(i + 1) % 4]![0] - end));
          for (const step of steps.slice(0, 3)) expect(stepAtCut.compute({ k, a })).toBeCloseTo(step, 8);
          expect(stepAtFourth.compute({ L, W, k, a })).toBeCloseTo(steps[3]!, 7);
        },
      ),
    );
  });

  // By hand: tan 2° is 0.03492; 2 · (172 + 112) + 9 = 577; 577 · 0.03492 = 20.15, 3 · 0.03492 = 0.105.
  test('that climbs 2° misses by 20 mm at the fourth corner of a box 172 by 112 mm, and by a tenth at the others', () => {
    expect(stepAtFourth.compute({ L: 172, W: 112, k: 3, a: 2 })).toBeCloseTo(20.15, 2);
    expect(stepAtCut.compute({ k: 3, a: 2 })).toBeCloseTo(0.105, 3);
  });
});

describe('two leaves opened like a book', () => {
  // Kerf 1.2 and 0.8 planed off each: 2.8 mm are gone; rings 10° off square: 2.8 · tan 10° = 2.8 · 0.1763.
  test('shift by 0.49 mm with 2.8 mm gone and rings at 80° to the face', () => {
    expect(stepBetweenLeaves.compute({ k: 1.2, p: 0.8, r: 80 })).toBeCloseTo(0.49, 2);
  });

  test('of quarter-sawn wood match without a step', () => {
    expect(stepBetweenLeaves.compute({ k: 3, p: 2, r: 90 })).toBeCloseTo(0, 12);
  });

  test('walked round, meet at the same place along the board at all four corners, a kerf apart at two', () => {
    // Places along the board at both ends of each wall. The second leaf is turned over: it is walked from its far end.
    const [L, W, k] = [172, 112, 3];
    const whole = L + W + k;
    const walls = [
      [0, W],
      [W + k, whole],
      [whole, whole - W],
      [whole - W - k, 0],
    ] as const;
    const steps = walls.map(([, end], i) => Math.abs(walls[(i + 1) % 4]![0] - end));
    expect(steps).toEqual([k, 0, k, 0]);
  });

  test('lose what lies between the two faces: followed down a leaning ring in small steps', () => {
    for (const r of [30, 45, 60, 75]) {
      // A ring through the board as points: from the first face down to the second, sideways as it leans.
      const gone = 3 + 2 * 1;
      let [depth, aside] = [0, 0];
      const step = 1e-4;
      while (depth < gone) {
        depth += step * Math.sin((r * Math.PI) / 180);
        aside += step * Math.cos((r * Math.PI) / 180);
      }
      expect(stepBetweenLeaves.compute({ k: 3, p: 1, r })).toBeCloseTo(aside, 3);
    }
  });
});

/** Weighing until it stops, against an even approach that can be worked out by hand. */
import { expect, test } from 'vitest';
import { readyByWeighing, weighingChange } from '../../../src/calc/air/acclimatize.ts';
import { moistureCourse } from '../../../src/calc/air/diffusion.ts';

/** Moisture that closes in on 8 % from 12 %, the gap shrinking by a constant factor each day. */
const closing = (perDay: number) => Float64Array.from({ length: 200 }, (_, day) => 8 + 4 * perDay ** day);

test('an approach that halves every three days is called ready when three days change 0.3 % of the mass', () => {
  const half = 0.5 ** (1 / 3);
  // Gap 4, 2, 1, 0.5, 0.25 on days 0, 3, 6, 9, 12. From day 7 the gap is 0.794, three days later 0.397: 0.37 % of 108.8;
  // from day 8 it is 0.63 and 0.315: 0.29 % of 108.6. So day 11, with 0.315 points still to lose.
  const ready = readyByWeighing(closing(half), 8);
  expect(ready).toEqual({ day: 11, moisture: expect.closeTo(8.315, 3), left: expect.closeTo(-0.315, 3) });
});

test('thick wood seems ready with more still to go than thin wood', () => {
  const air = { surface: 8.64, moisture: () => 8 };
  const left = (thickness: number) => {
    const course = moistureCourse({ thickness, diffusion: 2.592, front: air, back: air }, 12, 200);
    if ('refused' in course) throw new Error(course.refused);
    const ready = readyByWeighing(course.mean, 8);
    if ('refused' in ready) throw new Error(ready.refused);
    return -ready.left;
  };
  expect(left(6)).toBeLessThan(0.4);
  expect(left(25)).toBeGreaterThan(2 * left(6));
});

test('weighings that never agree, and questions without sense, are refused', () => {
  const steady = Float64Array.from({ length: 10 }, (_, day) => 20 - day);
  expect(readyByWeighing(steady, 8)).toEqual({ refused: 'After 9 days the weighings do not agree yet.' });
  expect(readyByWeighing([], 8)).toEqual({ refused: expect.stringMatching(/0 days/) });
  expect(readyByWeighing(steady, 8, { apart: 0, within: 0.3 })).toEqual({ refused: expect.any(String) });
});

test('an offcut that goes from 210.0 to 209.6 g has lost 0.19 %', () => {
  // 0.4 / 210 by hand.
  expect(weighingChange.compute({ m_1: 210, m_2: 209.6 })).toBeCloseTo(-0.1905, 4);
});

/** Where a box opens: sums by hand. */
import { expect, test } from 'vitest';
import { frontLowered, lidShare, notchDepth } from '../../../src/calc/lid/opening.ts';

test('under 3.5 mm of wood and a groove of 6 mm the front is lowered by 9.5 mm; under 1/8 in and 1/4 in by 3/8 in', () => {
  expect(frontLowered.compute({ m_d: 3.5, d: 6 })).toBeCloseTo(9.5, 12);
  expect(frontLowered.compute({ m_d: 25.4 / 8, d: 25.4 / 4 })).toBeCloseTo((3 * 25.4) / 8, 12);
});

test('a lid of 24 mm on a box 80 mm high is three tenths of its height', () => {
  expect(lidShare.compute({ h: 24, H: 80 })).toBeCloseTo(0.3, 12);
});

test('a lid of 8 mm takes the whole notch of 4 mm, one of 6 mm only 3 mm, one of 4.2 mm only 1.2 mm', () => {
  const of = (T: number) => notchDepth.compute({ n_m: 4, T, f: 3 });
  expect([8, 6, 4.2].map(of)).toEqual([4, 3, expect.closeTo(1.2, 12)]);
});

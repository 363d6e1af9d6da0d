/** Strength against moisture: where it must agree with the table, and a value by hand. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { propertyAtMoisture } from '../../../src/calc/walls/property-at-moisture.ts';

const of = propertyAtMoisture.compute;

test('at 12 % it is the figure of the table, and where drying begins to show that of green wood', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 1e4, noNaN: true }),
      fc.double({ min: 0.4, max: 1, noNaN: true }),
      fc.integer({ min: 21, max: 28 }),
      (P_12, share, M_p) => {
        const P_g = P_12 * share;
        expect(of({ P_12, P_g, M: 12, M_p }) / P_12).toBeCloseTo(1, 9);
        expect(of({ P_12, P_g, M: M_p, M_p }) / P_g).toBeCloseTo(1, 9);
      },
    ),
  );
});

// 116 / 98 is 1.18367; its logarithm 0.16862 times 4 / 13 is 0.05188, and e to that 1.05325.
test('walnut, 9,800 MPa green and 11,600 at 12 %, is 5 % stiffer at 8 %', () => {
  expect(of({ P_12: 11600, P_g: 9800, M: 8, M_p: 25 })).toBeCloseTo(11600 * 1.05325, 0);
});

/** The arc of a stopped saw groove, against Pythagoras and against the power of a point. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcRun } from '../../../src/calc/grooves/saw-arc.ts';

test('a blade of 13 mm radius, 1 mm deep, runs 5 mm: the triangle of 5, 12 and 13', () => {
  expect(arcRun.compute({ R: 13, g: 1 })).toBeCloseTo(5, 12);
});

test('a blade as deep as its radius runs just as far', () => {
  expect(arcRun.compute({ R: 25, g: 25 })).toBeCloseTo(25, 12);
});

test('the end of the run lies on the circle of the blade', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 250, noNaN: true }),
      fc.double({ min: 0, max: 10, noNaN: true }),
      (R, g) => {
        expect(Math.hypot(arcRun.compute({ R, g }), R - g)).toBeCloseTo(R, 6);
      },
    ),
  );
});

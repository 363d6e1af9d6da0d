/** The ring angle at which wood would move as it was seen to. */
import { expect, test } from 'vitest';
import { movementSeen, ringAngleSeen } from '../../../src/calc/movement/seen-movement.ts';

test('wood that moves as along the rings has them flat, as across them upright, and halfway at 45 degrees', () => {
  expect([0, 0.5, 1].map((s) => ringAngleSeen.compute({ s }))).toEqual([
    0,
    expect.closeTo(45, 9),
    expect.closeTo(90, 9),
  ]);
});

test('a panel of 100 mm that grows 0.25 mm a point moves by 0.25 % a point', () => {
  expect(movementSeen.compute({ b: 0.25, W: 100 })).toBeCloseTo(0.0025, 12);
});

/** A panel that moves to other air: the trade's worked figure, and the way back. */
import { describe, expect, test } from 'vitest';
import { equilibriumMoisture } from '../../../src/calc/air/moisture.ts';
import { changeByCoefficient } from '../../../src/calc/movement/movement.ts';
import {
  heldAfterMoveCentral,
  heldAfterMoveCrept,
  playAfterMove,
} from '../../../src/calc/movement/moving-house.ts';

/** A bottom of flat-sawn northern red oak, 200 mm wide (Wood Handbook, Table 13-5), from a damp coast to a desert: 11 to 6 %. */
const oak = { W: 200, C: 0.00369, M_1: 11, M_2: 6 };

describe('a bottom of flat-sawn red oak, 200 mm wide, that moves from a damp coast (11 %) to a desert (6 %)', () => {
  test('shrinks by 3.7 mm', () => {
    expect(playAfterMove.compute({ ...oak, p: 0 })).toBeCloseTo(3.7, 1);
    expect(changeByCoefficient.compute({ D: 200, C: 0.00369, M_i: 11, M_f: 6 })).toBeCloseTo(-3.7, 1);
  });

  test('with 1 mm of play before, a groove of 5 mm keeps 2.66 mm of each edge in the middle, and 0.31 mm of one once crept', () => {
    // 1 + 3.69 = 4.69 mm of play; half of it is 2.345.
    expect(heldAfterMoveCentral.compute({ ...oak, g: 5, p: 1 })).toBeCloseTo(2.655, 6);
    expect(heldAfterMoveCrept.compute({ ...oak, g: 5, p: 1 })).toBeCloseTo(0.31, 6);
  });

  test('drops out of a groove of 4 mm once crept, and not while it is held', () => {
    expect(heldAfterMoveCrept.compute({ ...oak, g: 4, p: 1 })).toBeLessThan(0);
    expect(heldAfterMoveCentral.compute({ ...oak, g: 4, p: 1 })).toBeGreaterThan(1.5);
  });
});

test('the other way round it jams: a desert box with 1 mm of play wants 2.7 mm more on the coast', () => {
  expect(playAfterMove.compute({ ...oak, M_1: 6, M_2: 11, p: 1 })).toBeCloseTo(-2.69, 6);
});

test('those two moistures are air of 60 and of 29 % at 21.1 °C (Table 4-2: 11.0 at 60 %, 6.2 at 30 %)', () => {
  expect(equilibriumMoisture(21.1, 60)).toBeCloseTo(11.0, 1);
  expect(equilibriumMoisture(21.1, 29)).toBeCloseTo(6.0, 1);
});

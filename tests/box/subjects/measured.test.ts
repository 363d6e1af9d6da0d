/** Measured against predicted: the levels of the rubric, and the movement that several measurements show. */
import { expect, test } from 'vitest';
import { exampleBox } from '../../../src/box/subjects/example.ts';
import { compute, modelOf } from '../../../src/box/subjects/model.ts';
import {
  levelOf,
  moistureBy,
  predicted,
  seenIn,
  tableMovement,
} from '../../../src/box/subjects/movement/measured.ts';
import { movement } from '../../../src/box/subjects/movement/subject.ts';

const values = compute(modelOf(movement).results, exampleBox);

test('a difference has the level of the rubric: 0.2, 0.4 and 0.8 mm', () => {
  expect([0.1, 1.2 - 1, -0.3, 0.8, 0.81].map(levelOf)).toEqual([0.2, 0.2, 0.4, 0.8, undefined]);
});

test('a meter stands for the wood; without it the air does: 21.1 °C and 50 % bring it to 9.2 % (Wood Handbook 4-2)', () => {
  expect(moistureBy({ meter: 11 })).toEqual({ moisture: 11 });
  expect(moistureBy({ temperature: 21.1, humidity: 50 })).toMatchObject({ moisture: expect.closeTo(9.2, 1) });
  expect(moistureBy({})).toHaveProperty('refused');
});

test('at the moisture of the day of building a wall is as high as it was made', () => {
  expect(predicted('wall-height', values, values.moistureToday)).toMatchObject({
    value: expect.closeTo(values.outsideHeight, 6),
  });
});

test('sizes that grow by 0.6 % a point are seen as that, and as more than the table says', () => {
  const size = values.outsideHeight;
  const met = [7, 9, 11].map((moisture) => ({
    moisture,
    measured: size * (1 + 0.006 * (moisture - 9)),
    predicted: size,
  }));
  const seen = seenIn('wall-height', values, met, 0.01);
  if ('refused' in seen) throw new Error(seen.refused);
  expect(seen.perPoint).toBeCloseTo(0.006, 6);
  expect(seen.says).toBe('more');
  expect(tableMovement('wall-height', values)).toBeLessThan(0.005);
});

test('in the same air nothing is said of movement, and a coarse tool decides nothing', () => {
  const met = (moistures: readonly number[]) =>
    moistures.map((moisture) => ({ moisture, measured: 60, predicted: 60 }));
  expect(seenIn('wall-height', values, met([8, 8.5]), 0.1)).toHaveProperty('refused');
  expect(seenIn('wall-height', values, met([8, 10]), 0.5)).toMatchObject({ says: 'nothing' });
});

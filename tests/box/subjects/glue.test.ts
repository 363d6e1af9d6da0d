/** The glue-up of a box: faces, force, and what the water of its glue does. Expected values by hand. */
import { describe, expect, test } from 'vitest';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { evaluate, verdicts } from '../../../src/box/whole/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const box = (changes: Partial<Box>) => evaluate({ ...exampleBox, ...changes });
const of = (id: string, changes: Partial<Box>) => verdicts(box(changes)).find(({ check }) => check.id === id);

describe('faces that take glue', () => {
  test.each([
    [{ joint: 'mitre' }, 4],
    [{ joint: 'butt' }, 4],
    [{ joint: 'rabbet' }, 8],
    [{ joint: 'splined-mitre' }, 12],
    [{ joint: 'keyed-mitre', keyCount: 2 }, 20],
    [{ joint: 'dovetail', tailCount: 3 }, 24],
    [{ joint: 'finger', sizeFrom: 'outside', wantedHeight: 60, fingerWidth: 12 }, 16],
  ] as const)('%j has %d', (changes, faces) => {
    expect(box(changes).facesToGlue).toBe(faces);
  });
});

test('clamps press on the end of a wall: 60 × 10 mm at 1.03 to 1.38 MPa in cherry', () => {
  const { clampLeast, clampMost } = box({
    sizeFrom: 'outside',
    wantedHeight: 60,
    wall: 10,
    species: 'black-cherry',
  });
  expect(clampLeast).toBeCloseTo(618, 6);
  expect(clampMost).toBeCloseTo(828, 6);
});

test('the later it is leveled and the thinner the wall, the less the line sinks', () => {
  const [thin, thick] = [box({ wall: 6 }), box({ wall: 12 })];
  expect(thin.sunkNextWeek).toBeLessThan(thin.sunkNextDay / 5);
  expect(thin.sunkNextDay).toBeLessThan(thick.sunkNextDay);
});

describe('the rules on gluing up', () => {
  test('a room at 13 °C is warm enough, one at 12 is not', () => {
    expect(of('clamp-time-and-warmth', { temperature: 13 })?.state).toBe('usual');
    expect(of('clamp-time-and-warmth', { temperature: 12 })?.state).toBe('unusual');
  });

  test('play of 0.3 mm leaves a film of 0.15 on either side, and more is too much', () => {
    expect(of('thin-even-film', { joint: 'finger', fingerFit: 0.3 })?.state).toBe('usual');
    expect(of('thin-even-film', { joint: 'finger', fingerFit: 0.35 })?.state).toBe('unusual');
    expect(of('thin-even-film', { joint: 'mitre' })).toBeUndefined();
  });

  // By the table 90 % of a change takes 0.212 T²/D + 1.15 T/S: in cherry about 5.6 days at 8 mm and 11.8 at 12.
  test('a week is enough for walls of 8 mm and not for 12', () => {
    const cherry = { species: 'black-cherry', humidityToday: 45, temperature: 20 };
    expect(of('wait-for-the-glue-water', { ...cherry, wall: 8 })?.state).toBe('usual');
    expect(of('wait-for-the-glue-water', { ...cherry, wall: 12 })?.state).toBe('unusual');
  });

  test('of a wood without a density in the tables it is not known', () => {
    expect(of('wait-for-the-glue-water', { species: 'white-oak' })?.state).toBe('unknown');
  });
});

/**
 * Numbers that were drawn and are frozen: sheets and keys that were printed with them stay right. If this fails, the seed,
 * the generator, a list or a check of `fits` has changed; change it back, or every printed sheet is wrong.
 */
import { expect, test } from 'vitest';
import { askedOf, taskFor } from '../../src/exercises/core/task.ts';
import { byId } from './seeds.ts';

const frozen = [
  ['e1', '7b', 1, 'mm', { length: 245, width: 175, wall: 10 }, [265, 195]],
  ['e1', 'Évening class', 30, 'inch', { length: 177.8, width: 95.25, wall: 7.9375 }, [193.675, 111.125]],
  ['e2', '7b', 1, 'mm', { below: 6, bottom: 6, inside: 87, lid: 4, above: 5 }, [108]],
  [
    'e2',
    'Évening class',
    30,
    'inch',
    { below: 6.35, bottom: 3.175, inside: 76.2, lid: 6.35, above: 6.35 },
    [98.425],
  ],
  ['e3', '7b', 1, 'mm', { height: 51, finger: 10 }, [5, 50]],
  ['e3', 'Évening class', 30, 'inch', { height: 69.85, finger: 9.525 }, [7, 66.675]],
  [
    'e4',
    '7b',
    1,
    'mm',
    { wood: 'silver-maple', cut: 'quarter-sawn', width: 140, longer: 50, from: 40, to: 60 },
    [0.4712],
  ],
  [
    'e4',
    'Évening class',
    30,
    'inch',
    { wood: 'american-beech', cut: 'quarter-sawn', width: 120.65, longer: 50.8, from: 35, to: 65 },
    [1.1691],
  ],
  [
    'e5',
    '7b',
    1,
    'mm',
    { wood: 'red-alder', cut: 'quarter-sawn', width: 170, longer: 40, from: 50, to: 60 },
    [169.2379],
  ],
  [
    'e5',
    'Évening class',
    30,
    'inch',
    { wood: 'american-basswood', cut: 'flat-sawn', width: 76.2, longer: 50.8, from: 40, to: 70 },
    [74.5373],
  ],
  ['e6', '7b', 1, 'mm', { length: 188, width: 94, kerf: 1 }, [580.2426]],
  ['e6', 'Évening class', 30, 'inch', { length: 276.225, width: 203.2, kerf: 3.175 }, [985.0204]],
  ['e7', '7b', 1, 'mm', { wall: 10, error: 0.25 }, [0.4936]],
  ['e7', 'Évening class', 30, 'inch', { wall: 6.35, error: 0.2 }, [0.2507]],
  ['e8', '7b', 1, 'mm', { length: 320, width: 80, difference: 2 }, [1.0308, 'correct']],
  ['e8', 'Évening class', 30, 'inch', { length: 368.3, width: 254, difference: 2.3812 }, [1.4463, 'correct']],
  [
    'e9',
    '7b',
    1,
    'mm',
    { first: 'ends', wall: 8, depth: 2.5, finger: 6, below: 7, groove: 3 },
    ['sides', 5.5],
  ],
  [
    'e9',
    'Évening class',
    30,
    'inch',
    { first: 'ends', wall: 7.9375, depth: 2.3812, finger: 9.525, below: 4.7625, groove: 3.175 },
    ['ends', 5.5563],
  ],
  [
    'e10',
    '7b',
    1,
    'mm',
    { kind: 'lid', wood: 'sugar-maple', cut: 'flat-sawn', width: 95, up: 3.5, down: 1 },
    [3.8091],
  ],
  [
    'e10',
    'Évening class',
    30,
    'inch',
    { kind: 'loose', wood: 'black-cherry', cut: 'flat-sawn', width: 69.85, up: 2, down: 2 },
    [2.7884],
  ],
  ['e11', '7b', 1, 'mm', { fingers: 9, finger: 10, wall: 12 }, [1152, 1527.3506]],
  ['e11', 'Évening class', 30, 'inch', { fingers: 13, finger: 6.35, wall: 12.7 }, [1935.48, 1482.6403]],
  // The first draw of number 16 would be that of number 15.
  ['e11', 'Évening class', 15, 'mm', { fingers: 5, finger: 8, wall: 6 }, [144, 339.4113]],
  ['e11', 'Évening class', 16, 'mm', { fingers: 11, finger: 8, wall: 12 }, [1440, 1493.4095]],
  [
    'e12',
    '7b',
    1,
    'mm',
    { part: 'glued', wood: 'american-beech', cut: 'flat-sawn', width: 190, longer: 60, from: 60, to: 35 },
    [3.3575, 'cracks', 'float'],
  ],
  [
    'e12',
    'Évening class',
    30,
    'inch',
    { part: 'lid', wood: 'black-walnut', cut: 'flat-sawn', width: 127, longer: 101.6, from: 70, to: 45 },
    [1.6007, 'loose', 'thicken'],
  ],
] as const;

const four = (value: number | string) => (typeof value === 'number' ? Number(value.toFixed(4)) : value);

test.each(frozen)(
  '%s of class %s, number %i, in %s is for ever the same',
  (id, className, number, system, values, keys) => {
    const task = taskFor(byId(id), { className, number }, system);
    expect(
      Object.fromEntries(Object.entries(task.values).map(([name, value]) => [name, four(value)])),
    ).toEqual(values);
    expect(askedOf(task).map(({ gives }) => four(gives.key))).toEqual(keys);
  },
);

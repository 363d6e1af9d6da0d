/** The numbers drawn: from the stated lists, the same for ever, native in inches, and such that a box can be built. */
import { describe, expect, test } from 'vitest';
import { learnerInLink, learnerOf, linkOf, unitsInLink } from '../../src/exercises/core/learner.ts';
import { hash } from '../../src/exercises/core/seed.ts';
import { taskFor } from '../../src/exercises/core/task.ts';
import { exercises } from '../../src/exercises/index.ts';
import { INCH } from '../../src/units/index.ts';
import { byId, learners, tasksOf } from './seeds.ts';

type Range = readonly [low: number, high: number, step: number];
/** Lists of the course: low, high, step, in mm or in inches. Points, percent and degrees are the same in both. */
const lists: Readonly<Record<string, Readonly<Record<'mm' | 'inch', Readonly<Record<string, Range>>>>>> = {
  e1: {
    mm: { length: [140, 300, 5], width: [70, 180, 5], wall: [6, 12, 2] },
    inch: { length: [5.5, 12, 1 / 4], width: [2.75, 7, 1 / 4], wall: [1 / 4, 1 / 2, 1 / 16] },
  },
  e2: {
    mm: { below: [5, 7, 1], bottom: [3, 6, 1], inside: [30, 90, 1], lid: [4, 6, 1], above: [4, 6, 1] },
    inch: {
      below: [3 / 16, 5 / 16, 1 / 16],
      bottom: [1 / 8, 1 / 4, 1 / 16],
      inside: [1.25, 3.5, 1 / 8],
      lid: [3 / 16, 1 / 4, 1 / 16],
      above: [3 / 16, 1 / 4, 1 / 16],
    },
  },
  e3: {
    mm: { height: [40, 110, 1], finger: [5, 10, 1] },
    inch: { height: [1.5, 4.5, 1 / 8], finger: [3 / 16, 3 / 8, 1 / 16] },
  },
  e4: {
    mm: { width: [60, 180, 5], longer: [40, 120, 10], from: [30, 60, 5], to: [55, 70, 5] },
    inch: { width: [2.5, 7, 1 / 4], longer: [1.5, 5, 1 / 2], from: [30, 60, 5], to: [55, 70, 5] },
  },
  e6: {
    mm: { length: [150, 320, 2], width: [80, 200, 2], kerf: [1, 3.2, 0.1] },
    inch: { length: [6, 13, 1 / 8], width: [3.5, 8, 1 / 8], kerf: [1 / 16, 1 / 8, 1 / 32] },
  },
  e7: {
    mm: { wall: [6, 12, 2], error: [0.05, 0.5, 0.05] },
    inch: { wall: [1 / 4, 1 / 2, 1 / 16], error: [0.05, 0.5, 0.05] },
  },
  e8: {
    mm: { length: [150, 400, 10], width: [80, 250, 10], difference: [0.5, 3, 0.5] },
    inch: { length: [6, 16, 1 / 2], width: [3, 10, 1 / 2], difference: [1 / 64, 1 / 8, 1 / 64] },
  },
  e9: {
    mm: { wall: [8, 12, 2], depth: [2.5, 4, 0.5], finger: [6, 10, 2], below: [5, 14, 1], groove: [3, 6, 1] },
    inch: {
      wall: [5 / 16, 1 / 2, 1 / 16],
      depth: [3 / 32, 3 / 16, 1 / 32],
      finger: [1 / 4, 3 / 8, 1 / 16],
      below: [3 / 16, 9 / 16, 1 / 16],
      groove: [1 / 8, 3 / 16, 1 / 16],
    },
  },
  e10: {
    mm: { width: [60, 180, 5], up: [2, 4, 0.5], down: [1, 3, 0.5] },
    inch: { width: [2.5, 7, 1 / 4], up: [2, 4, 0.5], down: [1, 3, 0.5] },
  },
  e11: {
    mm: { fingers: [5, 13, 2], finger: [5, 10, 1], wall: [6, 12, 2] },
    inch: { fingers: [5, 13, 2], finger: [3 / 16, 3 / 8, 1 / 16], wall: [1 / 4, 1 / 2, 1 / 16] },
  },
  e12: {
    mm: { width: [80, 200, 5], longer: [40, 120, 10], from: [30, 70, 5], to: [30, 70, 5] },
    inch: { width: [3, 8, 1 / 4], longer: [1.5, 5, 1 / 2], from: [30, 70, 5], to: [30, 70, 5] },
  },
  e13: {
    mm: { long: [2, 5, 1], short: [1, 3, 1], width: [80, 180, 5], wall: [6, 12, 2] },
    inch: { long: [2, 5, 1], short: [1, 3, 1], width: [3, 7, 1 / 4], wall: [1 / 4, 1 / 2, 1 / 16] },
  },
  e14: {
    mm: {
      length: [140, 300, 10],
      width: [80, 180, 10],
      height: [60, 100, 5],
      inside: [35, 85, 5],
      wall: [6, 12, 2],
    },
    inch: {
      length: [5.5, 12, 1 / 2],
      width: [3, 7, 1 / 2],
      height: [2.25, 4, 1 / 4],
      inside: [1.25, 3.5, 1 / 4],
      wall: [1 / 4, 1 / 2, 1 / 16],
    },
  },
  e15: {
    mm: { slant: [15, 75, 15], width: [80, 200, 5], up: [2, 5, 0.5] },
    inch: { slant: [15, 75, 15], width: [3, 8, 1 / 4], up: [2, 5, 0.5] },
  },
  e16: {
    mm: { wall: [6, 10, 1], planing: [0.5, 1.5, 0.5], kerf: [1, 3, 0.5], board: [16, 32, 1] },
    inch: {
      wall: [1 / 4, 3 / 8, 1 / 16],
      planing: [1 / 64, 3 / 64, 1 / 64],
      kerf: [1 / 32, 1 / 8, 1 / 32],
      board: [5 / 8, 1.25, 1 / 8],
    },
  },
  e17: {
    mm: { offcut: [6, 10, 2], board: [8, 28, 1], days: [3, 9, 1] },
    inch: { offcut: [1 / 4, 3 / 8, 1 / 16], board: [3 / 8, 1, 1 / 16], days: [3, 9, 1] },
  },
  e18: {
    mm: { wall: [8, 14, 1], depth: [2, 6, 0.5], lip: [3, 6, 1], thicker: [5, 9, 1] },
    inch: {
      wall: [5 / 16, 9 / 16, 1 / 16],
      depth: [3 / 32, 1 / 4, 1 / 32],
      lip: [1 / 8, 1 / 4, 1 / 16],
      thicker: [3 / 16, 3 / 8, 1 / 16],
    },
  },
  e19: {
    mm: { fingers: [7, 19, 2], finger: [4, 10, 1], error: [0.02, 0.08, 0.01] },
    inch: { fingers: [7, 19, 2], finger: [3 / 16, 3 / 8, 1 / 16], error: [0.001, 0.004, 0.001] },
  },
  e20: {
    mm: { before: [3, 5, 1], after: [4, 9, 0.5], sag: [0.6, 2, 0.1] },
    inch: { before: [1 / 8, 3 / 16, 1 / 32], after: [5 / 32, 3 / 8, 1 / 32], sag: [0.024, 0.08, 0.004] },
  },
  e21: {
    mm: { height: [60, 120, 5], lid: [15, 40, 1], kerf: [1, 3.2, 0.1] },
    inch: { height: [2.5, 5, 1 / 4], lid: [5 / 8, 1.5, 1 / 8], kerf: [1 / 32, 1 / 8, 1 / 32] },
  },
  e22: {
    mm: { fingers: [5, 15, 2], spread: [4, 10, 1], steps: [8, 14, 1], each: [10, 30, 5], open: [5, 20, 1] },
    inch: { fingers: [5, 15, 2], spread: [4, 10, 1], steps: [8, 14, 1], each: [10, 30, 5], open: [5, 20, 1] },
  },
  e23: {
    mm: { rock: [0.4, 1.6, 0.1], lip: [3, 6, 0.5], least: [2.5, 5, 0.5] },
    inch: { rock: [0.016, 0.08, 0.004], lip: [1 / 8, 1 / 4, 1 / 32], least: [3 / 32, 7 / 32, 1 / 32] },
  },
  e24: {
    mm: { width: [60, 180, 5], dry: [30, 40, 5], from: [40, 60, 5], to: [50, 70, 5] },
    inch: { width: [2.5, 7, 1 / 4], dry: [30, 40, 5], from: [40, 60, 5], to: [50, 70, 5] },
  },
  e25: {
    mm: { coats: [2, 6, 1], film: [0.02, 0.05, 0.01], play: [0.3, 0.9, 0.05] },
    inch: { coats: [2, 6, 1], film: [0.001, 0.002, 0.001], play: [0.012, 0.036, 0.002] },
  },
};
const listsOf = (id: string) => lists[id === 'e5' ? 'e4' : id]!;
const noLength = [
  ...['from', 'to', 'dry', 'error degrees', 'up', 'down', 'slant', 'days'],
  ...['fingers', 'long', 'short', 'coats', 'spread', 'steps', 'each', 'open'],
];
/** An error is one of an angle in e7 and one of a length elsewhere. */
const isLength = (id: string, name: string) =>
  !noLength.includes(id === 'e7' && name === 'error' ? 'error degrees' : name);

describe.each(['mm', 'inch'] as const)('in %s', (system) => {
  test.each(exercises.map(({ id }) => id))('the numbers of %s lie on the marks of their lists', (id) => {
    const ranges = listsOf(id)[system];
    for (const { values } of tasksOf(id, system)) {
      for (const [name, value] of Object.entries(values)) {
        if (typeof value !== 'number') continue;
        const [low, high, step] = ranges[name]!;
        const shown = system === 'inch' && isLength(id, name) ? value / INCH : value;
        expect(shown, `${name} from ${low} to ${high}`).toBeGreaterThanOrEqual(low - 1e-9);
        expect(shown, `${name} from ${low} to ${high}`).toBeLessThanOrEqual(high + 1e-9);
        const marks = (shown - low) / step;
        expect(Math.abs(marks - Math.round(marks)), `${name}: ${shown}`).toBeLessThan(1e-6);
      }
    }
  });

  test.each(exercises.map(({ id }) => id))('%s gives different learners different numbers', (id) => {
    const different = new Set(tasksOf(id, system).map(({ values }) => JSON.stringify(values)));
    expect(different.size).toBeGreaterThan(30);
    // A class of thirty: nobody sits beside many with the same numbers.
    const oneClass = Array.from({ length: 30 }, (_, at) =>
      JSON.stringify(taskFor(byId(id), { className: '7b', number: at + 1 }, system).values),
    );
    expect(new Set(oneClass).size).toBeGreaterThanOrEqual(20);
  });

  test('every groove leaves wood enough: at most half of a wall of 12 mm, 1/2 in, or of its own wall', () => {
    for (const { lines } of tasksOf('e10', system))
      expect(lines.at(-1)!.gives.key).toBeLessThanOrEqual(system === 'mm' ? 6 : INCH / 4 + 1e-9);
    for (const { values } of tasksOf('e9', system))
      expect(values.depth).toBeLessThanOrEqual(Number(values.wall) / 2);
  });

  test('the air of e4, e5, e12 and e24 keeps the wood between 6 and 14 %, where its figures hold', () => {
    for (const id of ['e4', 'e5', 'e12', 'e24'])
      for (const { table } of [tasksOf(id, system)[0]!])
        for (const [, moisture] of table!.rows) {
          expect(Number.parseFloat(moisture)).toBeGreaterThanOrEqual(6);
          expect(Number.parseFloat(moisture)).toBeLessThanOrEqual(14);
        }
  });

  test('no text of a task holds a number of the other system', () => {
    const other = system === 'mm' ? /\d\s?in\b|\d\/\d+ in/ : /\d\s?(mm|cm)\b/;
    for (const { id } of exercises)
      for (const task of tasksOf(id, system).slice(0, 50)) {
        const { values: _, table: _t, ...said } = task;
        expect(JSON.stringify(said)).not.toMatch(other);
      }
  });
});

test('the hash is 32-bit FNV-1a: its published values for "", "a" and "foobar" come out', () => {
  expect(hash('')).toBe(0x811c9dc5);
  expect(hash('a')).toBe(0xe40c292c);
  expect(hash('foobar')).toBe(0xbf9cf968);
});

test('a class is the same however it is spaced or capitalized, and another class has other numbers', () => {
  const numbers = (className: string) => taskFor(byId('e5'), { className, number: 3 }, 'mm').values;
  expect(numbers(' Class  7B ')).toEqual(numbers('class 7b'));
  expect(numbers('class 7c')).not.toEqual(numbers('class 7b'));
});

test('a link gives the learner back, and what is no learner gives none', () => {
  const learner = { className: 'Box making & more, Ä', number: 30 };
  expect(learnerInLink(linkOf(learner, 'inch'))).toEqual(learner);
  expect(unitsInLink(linkOf(learner, 'inch'))).toBe('inch');
  expect(unitsInLink('?class=7b&n=3')).toBeUndefined();
  for (const [name, number] of [
    ['', '3'],
    ['  ', '3'],
    ['7b', ''],
    ['7b', '0'],
    ['7b', '1000'],
    ['7b', '3.5'],
    ['7b', '-3'],
    ['7b', 'three'],
    [null, null],
  ] as const)
    expect(learnerOf(name, number)).toBeUndefined();
});

test('a thousand learners are a thousand seeds', () => {
  expect(new Set(learners.map(({ className, number }) => `${className} ${number}`)).size).toBe(1000);
});

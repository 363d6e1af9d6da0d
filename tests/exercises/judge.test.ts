/** Answers judged: what is right is never a slip, every slip is recognized, and each has words of its own. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type NumberAsked, write } from '../../src/exercises/core/exercise.ts';
import { isMissing, rulesToPick, stagesOf } from '../../src/exercises/core/fade.ts';
import { judge } from '../../src/exercises/core/judge.ts';
import { principleRule } from '../../src/exercises/core/principles.ts';
import { exampleTask, firstStepTo, taskFor } from '../../src/exercises/core/task.ts';
import { exercises } from '../../src/exercises/index.ts';
import { INCH } from '../../src/units/index.ts';
import { parse } from '../../src/units/parse.ts';
import { systems, tasksOf } from './seeds.ts';

const numbersOf = (task: ReturnType<typeof tasksOf>[number], askedOnly = false) =>
  task.lines
    .filter(({ asked }) => asked || !askedOnly)
    .map(({ gives }) => gives)
    .filter((gives): gives is NumberAsked => gives.type === 'number');

const anyLearner = fc.record({
  className: fc.string({ minLength: 1, maxLength: 20 }).filter((text) => text.trim() !== ''),
  number: fc.integer({ min: 1, max: 999 }),
});

describe.each(exercises.map((one) => [one.id, one] as const))('%s', (id, one) => {
  test.each(systems)('no right answer is taken for a slip, whoever learns, in %s', (system) => {
    fc.assert(
      fc.property(anyLearner, fc.double({ min: -1, max: 1, noNaN: true }), (learner, off) => {
        for (const asked of numbersOf(taskFor(one, learner, system))) {
          expect(judge(asked, asked.key + off * asked.within).is).toBe('right');
          for (const { value } of asked.mistakes) expect(judge(asked, value).is).toBe('mistake');
        }
      }),
      { numRuns: 300 },
    );
  });

  test.each(systems)('the key, typed as it is printed, is right, in %s', (system) => {
    for (const task of tasksOf(id, system).slice(0, 300))
      for (const asked of numbersOf(task)) {
        const text = write(asked.key, asked.print, system).replace(/,.*/, '');
        const typed = parse(text, asked.print.kind, system);
        expect(typed.ok && judge(asked, typed.value).is, text).toBe('right');
      }
  });

  test('an answer that is no usual slip is led back to the first step of its own way', () => {
    const task = tasksOf(id, 'mm')[0]!;
    task.lines.forEach((line, at) => {
      const begin = task.lines.findIndex(({ does }) => does === firstStepTo(task, at));
      expect(begin).toBeLessThanOrEqual(at);
      expect(task.lines.slice(begin, at).every(({ asked }) => !asked)).toBe(true);
      expect(begin === 0 || task.lines[begin - 1]!.asked).toBe(true);
      expect(line.does).not.toBe('');
    });
  });

  test('what is far from the key and from every slip is told which way it is off', () => {
    for (const asked of numbersOf(tasksOf(id, 'mm')[0]!, true)) {
      expect(judge(asked, asked.key * 97 + 1234)).toEqual({ is: 'off', too: 'large' });
      expect(judge(asked, -1234)).toEqual({ is: 'off', too: 'small' });
    }
  });

  test('every wrong choice says which step went wrong, and the right one is among the choices', () => {
    for (const task of tasksOf(id, 'mm').slice(0, 100))
      for (const { gives } of task.lines) {
        if (gives.type !== 'pick') continue;
        expect(gives.options.map((option) => option.id)).toContain(gives.key);
        for (const option of gives.options)
          if (option.id !== gives.key) expect(option.says?.length).toBeGreaterThan(30);
      }
  });

  test('what a hint says to do holds no size, so no result', () => {
    for (const task of tasksOf(id, 'mm').slice(0, 20))
      for (const { does } of task.lines) expect(does).not.toMatch(/\d{2,} mm/);
  });
});

/** Every slip that there is, by exercise and number asked; each must be met by some learner and be recognized there. */
const slips: Readonly<Record<string, readonly (readonly string[])[]>> = {
  e1: [
    ['one-wall', 'walls-taken-off', 'no-wall', 'four-walls'],
    ['one-wall', 'walls-taken-off', 'no-wall', 'four-walls'],
  ],
  e2: [['no-above', 'no-below', 'no-lid', 'no-bottom', 'no-wood', 'no-panels', 'inside-only']],
  e3: [
    ['even', 'farther', 'one-wall', 'slots'],
    ['not-changed', 'even', 'farther', 'slots'],
  ],
  e4: [['humidity-points', 'other-rings', 'along-the-grain', 'half', 'one-moisture']],
  e5: [
    [
      'rounded-down',
      'no-room',
      'no-swelling',
      'no-play',
      'play-added',
      'humidity-points',
      'other-rings',
      'along-the-grain',
      'half',
      'one-moisture',
    ],
  ],
  e6: [['no-kerfs', 'square-cuts', 'no-trim', 'one-pair', 'no-kerfs-no-trim']],
  e7: [['four-cuts', 'one-cut', 'one-corner', 'no-root', 'radians']],
  e8: [['whole', 'difference', 'half', 'other-side']],
  e9: [['whole-wall', 'depth', 'added', 'half-wall']],
  e10: [['whole', 'taken-central', 'other-rings', 'no-fall', 'no-engagement', 'no-rise', 'rounded-down']],
  e11: [
    ['fingers', 'slots', 'one-wall', 'finger-wide', 'whole-height'],
    ['no-root', 'twice', 'two-faces'],
  ],
  e12: [['humidity-points', 'other-rings', 'along-the-grain', 'half', 'one-moisture']],
  e13: [
    ['outside-ratio', 'no-walls', 'one-wall', 'upside-down'],
    ['inside', 'upside-down', 'one-wall'],
  ],
  e14: [['inside-share', 'one-wall', 'floor-only', 'height-only']],
  e15: [['flat', 'upright', 'swapped', 'in-proportion', 'both']],
  e16: [['no-kerf', 'two-kerfs', 'two-faces', 'no-planing', 'walls-only']],
  e17: [['linear', 'same', 'cube', 'twice', 'upside-down']],
  e18: [
    ['linear', 'cube', 'groove', 'lost'],
    ['linear', 'cube', 'upside-down', 'difference'],
  ],
  e19: [
    ['fingers', 'gaps', 'rounded-up'],
    ['fingers', 'gaps', 'one-step', 'rounded-up', 'by-chance'],
  ],
  e20: [
    ['linear', 'square', 'upside-down', 'less'],
    ['linear', 'cube', 'upside-down', 'less', 'pitch'],
  ],
  e21: [
    ['no-kerf', 'kerf-off', 'two-kerfs', 'lid-added'],
    ['upper-side', 'kerf-off', 'lid', 'half-kerf'],
  ],
  e22: [
    ['one-corner', 'fingers', 'both', 'one-wall'],
    ['spreading-only', 'dry', 'one-corner', 'seconds'],
  ],
  e23: [
    ['whole', 'quarter', 'double'],
    ['whole', 'quarter', 'added', 'nothing'],
  ],
  e24: [
    ['no-room', 'whole-year', 'half', 'other-rings', 'humidity-points'],
    ['today', 'shrinking', 'shrunk-off', 'no-room', 'half', 'other-rings', 'humidity-points'],
  ],
  e25: [
    ['one-face', 'one-coat', 'one-film'],
    ['one-face', 'one-coat', 'added', 'nothing'],
  ],
};

describe.each(systems)('the slips in %s', (system) => {
  const cases = Object.entries(slips).flatMap(([id, numbers]) =>
    numbers.flatMap((ids, at) => ids.map((slip) => [id, slip, at] as const)),
  );
  test.each(cases)('%s: %s is met and recognized, with a sentence about its step', (id, slip, at) => {
    const shares = tasksOf(id, system).slice(0, 300);
    let known = 0;
    for (const task of shares) {
      const asked = numbersOf(task, true)[at]!;
      const mistake = asked.mistakes.find((one) => one.id === slip);
      if (!mistake) continue;
      known++;
      const said = judge(asked, mistake.value);
      expect(said.is === 'mistake' && said.mistakes.map((one) => one.id)).toContain(slip);
      expect(mistake.says).toMatch(/^[A-Z].{30,}\.$/);
    }
    expect(known / shares.length).toBeGreaterThan(0.2);
  });

  test('there is no slip without a test', () => {
    for (const { id } of exercises)
      for (const task of tasksOf(id, system).slice(0, 300))
        numbersOf(task, true).forEach((asked, at) => {
          for (const mistake of asked.mistakes) expect(slips[id]![at]).toContain(mistake.id);
        });
  });
});

test('the sum right but in the other unit, or with the point one place off, is recognized as that', () => {
  const [asked] = numbersOf(tasksOf('e1', 'mm')[0]!, true);
  const ids = (value: number) => {
    const said = judge(asked!, value);
    return said.is === 'mistake' ? said.mistakes.map(({ id }) => id) : said.is;
  };
  expect(ids(asked!.key / INCH)).toEqual(['inches-as-mm']);
  expect(ids(asked!.key * INCH)).toEqual(['mm-as-inches']);
  expect(ids(asked!.key * 10)).toEqual(['ten-times']);
});

test('two slips that give one number are both named, since nobody can tell which it was', () => {
  const asked = {
    type: 'number',
    label: 'x',
    key: 10,
    within: 0.1,
    print: { kind: 'length' },
    mistakes: [
      { id: 'a', value: 20, says: 'a' },
      { id: 'b', value: 20, says: 'b' },
      { id: 'c', value: 20.5, says: 'c' },
    ],
  } as const;
  const said = judge(asked, 20.02);
  expect(said.is === 'mistake' && said.mistakes.map(({ id }) => id)).toEqual(['a', 'b']);
});

describe('fading', () => {
  test.each(exercises.map((one) => [one.id, one] as const))(
    '%s fades from the last line backwards',
    (_, one) => {
      const task = exampleTask(one, 0, 'mm');
      const last = task.lines.length - 1;
      expect(stagesOf(task)).toBe(task.lines.length + 1);
      expect(isMissing(task, last, 0)).toBe(false);
      expect(isMissing(task, last, 1)).toBe(true);
      expect(isMissing(task, 0, last)).toBe(false);
      expect(isMissing(task, 0, last + 1)).toBe(true);
    },
  );

  test('each stage has numbers of its own', () => {
    for (const one of exercises)
      expect(exampleTask(one, 1, 'mm').values).not.toEqual(exampleTask(one, 0, 'mm').values);
  });

  test('three different rules stand to choice at each step, its own among them, each with a page', async () => {
    const { readdirSync } = await import('node:fs');
    const rules = readdirSync(new URL('../../content/rules/', import.meta.url));
    for (const one of exercises) {
      for (const rule of one.rules) expect(rules).toContain(`${rule}.mdx`);
      const task = exampleTask(one, 0, 'mm');
      for (const line of task.lines) {
        const choice = rulesToPick(task, line);
        expect(new Set(choice).size).toBe(3);
        expect(choice).toContain(line.principle);
        for (const principle of choice) expect(rules).toContain(`${principleRule(principle)}.mdx`);
      }
    }
  });
});

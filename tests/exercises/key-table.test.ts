/** Keys of a class: the same as on the page of each exercise, every slip where it gives something wrong, and a file that keeps all. */
import { csvParse } from 'd3-dsv';
import { describe, expect, test } from 'vitest';
import { judge } from '../../src/exercises/core/judge.ts';
import { keyTable } from '../../src/exercises/core/key-table.ts';
import { askedOf, taskFor } from '../../src/exercises/core/task.ts';
import { keyText, nearness } from '../../src/exercises/core/written.ts';
import { exercises } from '../../src/exercises/index.ts';
import { parse } from '../../src/units/parse.ts';
import { keysCsv, makeSheets } from '../../src/widgets/exercises/sheets/make.ts';
import { systems } from './seeds.ts';

const numbers = Array.from({ length: 30 }, (_, at) => at + 1);
const learners = (className: string) => numbers.map((number) => ({ className, number }));

describe.each(exercises.map((one) => [one.id, one] as const))('the keys of %s', (_, one) => {
  test.each(systems)('say to each learner what the page of the exercise says, in %s', (system) => {
    const tasks = learners('7b').map((learner) => taskFor(one, learner, system));
    const { rows, columns } = keyTable(one, tasks, system);
    expect(rows.map(({ number }) => number)).toEqual(numbers);
    rows.forEach(({ number, cells }) => {
      const asked = askedOf(taskFor(one, { className: '7b', number }, system));
      expect(cells.map(({ answer }) => answer)).toEqual(asked.map(({ gives }) => keyText(gives, system)));
      asked.forEach(({ gives }, place) => {
        expect(columns[place]!.label).toContain(gives.label);
        if (gives.type === 'number') {
          expect(columns[place]!.within).toContain(nearness(gives, system));
          expect(cells[place]!.choice).toBe('');
        } else {
          const letter = 'abcdefgh'[gives.options.findIndex(({ id }) => id === gives.key)];
          expect(cells[place]!.choice).toBe(`(${letter})`);
        }
      });
    });
  });

  test.each(systems)('give for each slip a value that is judged as that slip, in %s', (system) => {
    const tasks = learners('Ä 12').map((learner) => taskFor(one, learner, system));
    const { rows, columns, notes } = keyTable(one, tasks, system);
    const says = new Map(notes.map((note) => [note.letter, note.says]));
    rows.forEach(({ cells }, row) => {
      askedOf(tasks[row]!).forEach(({ gives }, place) => {
        if (gives.type !== 'number') return;
        const { slips } = columns[place]!;
        expect(cells[place]!.slips.filter((value) => value !== '')).toHaveLength(gives.mistakes.length);
        cells[place]!.slips.forEach((value, at) => {
          if (value === '') return;
          const read = parse(value, gives.print.kind, system);
          const found = read.ok && judge(gives, read.value);
          // A printed value is rounded: where that brings it to what is right, the slip cannot be told from it on paper.
          if (!found || found.is === 'right') return;
          expect(found.is, `${slips[at]}: ${value}`).toBe('mistake');
          if (found.is !== 'mistake') return;
          // Another slip may lie as near.
          const own = gives.mistakes.find((one) => says.get(slips[at]!)!.includes(one.says))!;
          expect(Math.abs(own.value - (read.ok ? read.value : Number.NaN))).toBeLessThanOrEqual(
            Math.max(gives.within, 0.5),
          );
        });
      });
    });
    for (const letter of columns.flatMap(({ slips }) => slips)) expect(says.get(letter)).not.toEqual([]);
  });

  test('say of every choice what is wrong with it where it is wrong', () => {
    const tasks = learners('7b').map((learner) => taskFor(one, learner, 'mm'));
    const { notes } = keyTable(one, tasks, 'mm');
    for (const task of tasks)
      for (const { gives } of askedOf(task))
        for (const { id, text, says } of gives.type === 'pick' ? gives.options : []) {
          const note = notes.find(({ asked, chosen }) => asked === gives.label && chosen === text);
          if (id === gives.key) expect(note).toBeDefined();
          else expect(note?.says).toContain(says);
        }
  });
});

const choices = (className: string, system: 'mm' | 'inch') =>
  ({
    className,
    learners: 30,
    system,
    paper: 'A4',
    print: 'both',
    exercises: exercises.map(({ id }) => id),
  }) as const;

describe.each(systems)('the file of keys, in %s', (system) => {
  test('comes back as it was written: a row for all that is asked of each learner', async () => {
    // A folder has no address for a code, and needs nothing that makes one.
    const made = await makeSheets(choices('Ä "12", spring', system), 'file:///stick/exercises/');
    const rows = csvParse(keysCsv(made));
    const asked = made.sheets.flatMap(({ learner, tasks }) =>
      tasks.flatMap(({ exercise, task }) =>
        askedOf(task).map(({ gives }) => ({ exercise: exercise.id, learner: learner.number, gives })),
      ),
    );
    expect(rows).toHaveLength(asked.length);
    for (const { exercise, learner, gives } of asked) {
      const [row, ...more] = rows.filter(
        (one) => one.exercise === exercise && one.learner === String(learner) && one.asked === gives.label,
      );
      expect(more).toEqual([]);
      expect(row!.class).toBe('Ä "12", spring');
      if (gives.type === 'pick') expect(row!.key).toBe(keyText(gives, system));
      else {
        // The number alone is right too, in the unit that stands beside it.
        const read = parse(`${row!.number} ${row!.unit}`, gives.print.kind, system);
        expect(read.ok && judge(gives, read.value).is, `${exercise}: ${row!.number} ${row!.unit}`).toBe(
          'right',
        );
        for (const { says } of gives.mistakes) expect(row!['usual mistakes']).toContain(says);
      }
    }
  });

  test('holds nothing that a spreadsheet would run', async () => {
    const made = await makeSheets(choices('=1+1', system), 'file:///stick/exercises/');
    for (const row of csvParse(keysCsv(made)))
      for (const text of Object.values(row)) expect(text).not.toMatch(/^[=+@\t\r]/);
  });
});

test('a class of another spelling has the same sheets, and each learner’s code leads to the exercise and the numbers', async () => {
  const one = await makeSheets(choices('Class 7B', 'inch'), 'https://example.org/exercises/');
  const other = await makeSheets(choices(' class  7b ', 'inch'), 'https://example.org/exercises/');
  expect(one.keys).toEqual(other.keys);
  expect(one.site).toBe('example.org/exercises/');
  expect(one.sheets.every(({ tasks }) => tasks.every(({ code }) => code !== undefined))).toBe(true);
  expect((await makeSheets(choices('7b', 'mm'), 'file:///x/')).sheets[0]!.tasks[0]!.code).toBeUndefined();
});

/**
 * The keys of one exercise for a whole class: learner by what is asked, with the value that each usual slip gives. A slip
 * has one letter in the whole exercise, so its words stand once below the table and its values in the rows.
 */

import { fieldUnit, type UnitSystem } from '../../units/index.ts';
import { parse } from '../../units/parse.ts';
import { type Asked, type Exercise, type Task, write } from './exercise.ts';
import { choiceAt, type KeyNote, Notes } from './key-notes.ts';
import { askedOf } from './task.ts';
import { keyText, nearness } from './written.ts';

/** One thing asked. */
export interface KeyColumn {
  readonly label: string;
  /** How far from the key is still right; empty where only the key is, and for a choice. */
  readonly within: string;
  /** Unit of the values that slips give. */
  readonly unit: string;
  /** Letters of its slips, in order; none for a choice. */
  readonly slips: readonly string[];
}

export interface KeyCell {
  readonly answer: string;
  /** Letter of the right choice; empty for a number. */
  readonly choice: string;
  /** What each slip of the column gives, without unit; empty where this learner's slip gives what is right. */
  readonly slips: readonly string[];
}

export interface KeyTable {
  readonly exercise: string;
  readonly title: string;
  readonly columns: readonly KeyColumn[];
  readonly rows: readonly { readonly number: number; readonly cells: readonly KeyCell[] }[];
  readonly notes: readonly KeyNote[];
  /** Whether a reason is asked for, which only the teacher can judge. */
  readonly reason: boolean;
}

/** What is asked at one place of every task. */
const column = (tasks: readonly Task[], at: number): Asked[] =>
  tasks.flatMap((task) => askedOf(task)[at]?.gives ?? []);

/** Ids of the slips at one place, in the order in which they first occur, with their words. */
function slipsOf(asked: readonly Asked[]): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, Set<string>>();
  for (const one of asked)
    for (const { id, says } of one.type === 'number' ? one.mistakes : [])
      found.set(id, (found.get(id) ?? new Set()).add(says));
  return new Map([...found].map(([id, says]) => [id, [...says]]));
}

function cellOf(asked: Asked, slips: readonly string[], system: UnitSystem): KeyCell {
  const answer = keyText(asked, system);
  if (asked.type === 'pick')
    return { answer, choice: choiceAt(asked.options.findIndex(({ id }) => id === asked.key)), slips: [] };
  const value = (id: string) => {
    const slip = asked.mistakes.find((one) => one.id === id);
    if (!slip) return '';
    const { kind, as } = asked.print;
    const written = write(slip.value, { ...asked.print, unit: false }, system);
    const exact = () => write(slip.value, { kind, as: 'exact', unit: false }, system);
    // The mark of the rule beside it would be in the way: only the number, as in the answer.
    if (as === 'fine') return exact();
    // A mark of the rule that is no longer the slip is no help.
    const read = parse(written, kind, system);
    const isOff = read.ok && Math.abs(read.value - slip.value) > asked.within + 1e-9;
    return kind === 'length' && isOff ? exact() : written;
  };
  return { answer, choice: '', slips: slips.map(value) };
}

/** The table of an exercise. @param tasks those of the learners 1 to n, in order */
export function keyTable(of: Exercise, tasks: readonly Task[], system: UnitSystem): KeyTable {
  const notes = new Notes();
  const places = Array.from({ length: Math.max(...tasks.map((task) => askedOf(task).length)) }, (_, at) => {
    const asked = column(tasks, at);
    const slips = slipsOf(asked);
    const letters = [...slips].map(([id, says]) => notes.slip(id, says));
    for (const one of asked)
      if (one.type === 'pick')
        one.options.forEach(({ id, text, says }, option) => {
          notes.choice(one.label, choiceAt(option), text, id === one.key ? undefined : says);
        });
    const [first] = asked as [Asked, ...Asked[]];
    return {
      ids: [...slips.keys()],
      column: {
        label: [...new Set(asked.map(({ label }) => label))].join(' or '),
        within: [...new Set(asked.map((one) => (one.type === 'number' ? nearness(one, system) : '')))].join(
          ' to ',
        ),
        unit: first.type === 'number' ? fieldUnit(first.print.kind, system) : '',
        slips: letters,
      },
    };
  });
  return {
    exercise: of.id,
    title: of.title,
    columns: places.map((place) => place.column),
    rows: tasks.map((task, at) => ({
      number: at + 1,
      cells: askedOf(task).map(({ gives }, place) => cellOf(gives, places[place]!.ids, system)),
    })),
    notes: notes.all,
    reason: tasks.some(({ reason }) => reason !== undefined),
  };
}

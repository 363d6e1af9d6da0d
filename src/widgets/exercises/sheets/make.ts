/** The sheets of a class: every learner's tasks, the code and the words that bring them up on the site, and the keys. */

import { csvFormat } from 'd3-dsv';
import type { Exercise, Task } from '../../../exercises/core/exercise.ts';
import { keyRows } from '../../../exercises/core/key-rows.ts';
import { type KeyTable, keyTable } from '../../../exercises/core/key-table.ts';
import { type Learner, linkOf } from '../../../exercises/core/learner.ts';
import { taskFor } from '../../../exercises/core/task.ts';
import { exercises } from '../../../exercises/index.ts';
import type { SheetChoices } from '../../../notebook/learning/sheets.ts';
import { type Qr, qrMaker } from '../../kit/qr.ts';

export interface SheetTask {
  readonly exercise: Exercise;
  readonly task: Task;
  /** Of the exercise on the site with the same numbers. None from a folder: no phone could open it. */
  readonly code: Qr | undefined;
}

export interface Sheet {
  readonly learner: Learner;
  readonly tasks: readonly SheetTask[];
}

export interface Made {
  readonly choices: SheetChoices;
  /** Address of the exercises, as it is typed. Empty where the pages come from a folder. */
  readonly site: string;
  readonly sheets: readonly Sheet[];
  readonly keys: readonly KeyTable[];
}

/** The exercises that were chosen, in the order of the course. */
const chosen = (ids: readonly string[]) => exercises.filter(({ id }) => ids.includes(id));

const classOf = ({ className, learners }: SheetChoices): Learner[] =>
  Array.from({ length: learners }, (_, at) => ({ className, number: at + 1 }));

/** @param address of the page of all exercises, with a slash at its end */
export async function makeSheets(choices: SheetChoices, address: string): Promise<Made> {
  const { system } = choices;
  const onSite = /^https?:/.test(address);
  const code = onSite ? await qrMaker('many') : () => undefined;
  const these = chosen(choices.exercises);
  const sheets = classOf(choices).map((learner) => ({
    learner,
    tasks: these.map((exercise) => ({
      exercise,
      task: taskFor(exercise, learner, system),
      code: code(`${address}${exercise.id}/${linkOf(learner, system)}`),
    })),
  }));
  return {
    choices,
    site: onSite ? address.replace(/^https?:\/\//, '') : '',
    sheets,
    keys: these.map((exercise, at) =>
      keyTable(
        exercise,
        sheets.map(({ tasks }) => tasks[at]!.task),
        system,
      ),
    ),
  };
}

/** A leading sign that a spreadsheet would take for a formula gets an apostrophe. */
const safe = (value: string | number) =>
  typeof value === 'string' ? value.replace(/^[=+@\t\r]/, "'$&") : value;

/** The keys as a file. */
export function keysCsv({ choices: { className, system }, sheets }: Made): string {
  const rows = (sheets[0]?.tasks ?? []).flatMap(({ exercise }, at) =>
    keyRows(
      exercise,
      className,
      sheets.map(({ tasks }) => tasks[at]!.task),
      system,
    ),
  );
  return csvFormat(
    rows.map((row) => Object.fromEntries(Object.entries(row).map(([name, value]) => [name, safe(value)]))),
  );
}

/** The keys of a class as rows of a file: one for each thing asked of each learner. */

import { fieldUnit, type UnitSystem } from '../../units/index.ts';
import { type Asked, type Exercise, type Print, type Task, write } from './exercise.ts';
import { askedOf } from './task.ts';
import { keyText, nearness } from './written.ts';

/** Signs that a printed number has for the eye, as a spreadsheet wants them. */
const bare = (text: string) =>
  text.replaceAll('\u202f', '').replaceAll('\u00a0', ' ').replaceAll('\u2212', '-');

/** A number in the unit of its column: decimals, also of an inch. */
const decimal = (value: number, print: Print, system: UnitSystem) =>
  bare(write(value, { ...print, ...(print.kind === 'length' && { as: 'exact' }), unit: false }, system));

const slipsOf = (asked: Asked, system: UnitSystem): string[] =>
  asked.type === 'number'
    ? asked.mistakes.map(({ value, says }) => `${bare(write(value, asked.print, system))}: ${says}`)
    : asked.options.flatMap(({ id, text, says }) => (id !== asked.key && says ? [`${text}: ${says}`] : []));

/** @param tasks those of the learners 1 to n, in order */
export const keyRows = (of: Exercise, className: string, tasks: readonly Task[], system: UnitSystem) =>
  tasks.flatMap((task, at) =>
    askedOf(task).map(({ gives }) => ({
      class: className,
      learner: at + 1,
      exercise: of.id,
      title: of.title,
      asked: gives.label,
      key: bare(keyText(gives, system)),
      number: gives.type === 'number' ? decimal(gives.key, gives.print, system) : '',
      unit: gives.type === 'number' ? fieldUnit(gives.print.kind, system) : '',
      'right within': gives.type === 'number' ? bare(nearness(gives, system)) : '',
      'usual mistakes': slipsOf(gives, system).join(' | '),
    })),
  );

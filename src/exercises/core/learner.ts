/**
 * Whose numbers they are: the name of a class and the number of a learner in it, as the teacher gave them. A link may
 * hold both, for the square code of a printed sheet: `exercises/e5/?class=7b&n=12`. The numbers of a sheet in inches are
 * others than those in millimeters, so its link says `&u=inch` as well.
 */

import type { UnitSystem } from '../../units/index.ts';

export interface Learner {
  /** As the learner wrote it. */
  readonly className: string;
  /** 1 to `highestNumber`. */
  readonly number: number;
}

export const highestNumber = 999;
const longestName = 60;

/** One spelling of a class: "Class  7B" and "class 7b" give the same numbers. */
export const classKey = (name: string): string =>
  name.normalize('NFKC').toLowerCase().replace(/\s+/gu, ' ').trim().slice(0, longestName);

/** A learner from what was typed or stands in a link, or undefined if a part is missing or no number. */
export function learnerOf(className: string | null, number: string | null): Learner | undefined {
  const name = (className ?? '').replace(/\s+/gu, ' ').trim().slice(0, longestName);
  const digits = (number ?? '').trim();
  if (classKey(name) === '' || !/^\d{1,3}$/.test(digits) || Number(digits) === 0) return undefined;
  return { className: name, number: Number(digits) };
}

/** The learner in the query of an address: `?class=7b&n=12`. */
export function learnerInLink(query: string): Learner | undefined {
  const asked = new URLSearchParams(query);
  return learnerOf(asked.get('class'), asked.get('n'));
}

/** The units that a link asks for, if it does. */
export function unitsInLink(query: string): UnitSystem | undefined {
  const asked = new URLSearchParams(query).get('u');
  return asked === 'mm' || asked === 'inch' ? asked : undefined;
}

/** The query of a link to this learner's numbers, in these units. */
export const linkOf = ({ className, number }: Learner, system: UnitSystem): string =>
  `?${new URLSearchParams({ class: className, n: String(number), u: system })}`;

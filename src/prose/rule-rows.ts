/** Which numbers of the box stand behind a rule: found in the tables of the subjects, so that no list has to be kept. */
import type { Subject } from '../box/core/subject.ts';
import { type ResultName, subjects, type Values } from '../box/whole/index.ts';
import type { Card } from '../calc/core/relation.ts';

type AnySubject = Subject<ResultName, Values>;
const all = Object.values(subjects) as unknown as readonly AnySubject[];

const rowsIn = ({ results }: AnySubject) =>
  Object.entries(results) as [ResultName, AnySubject['results'][ResultName]][];

/** The subject that judges a box by this rule, else one that has a number which it teaches. */
export function subjectOfRule(rule: string): { subject: AnySubject | undefined; judges: boolean } {
  const judge = all.find(({ checks }) => checks.some((check) => check.rule === rule));
  return {
    subject: judge ?? all.find((one) => rowsIn(one).some(([, row]) => row.rule === rule)),
    judges: judge !== undefined,
  };
}

/**
 * The numbers that a relation gives, of those the rule is about: that teach it, or are judged by it.
 * @returns their names, in the order of the table
 */
export const rowsOfRule = (subject: AnySubject, rule: string, relation: string): readonly ResultName[] => {
  const judged = subject.checks.filter((check) => check.rule === rule).map(({ of }) => of as string);
  return rowsIn(subject)
    .filter(([name, row]) => row.rule === rule || judged.includes(name))
    .filter(([, row]) => row.relations.some(({ id }) => id === relation))
    .map(([name]) => name);
};

/** The relations that give what a rule judges. */
export const judgedBy = (subject: AnySubject | undefined, rule: string): readonly Card[] =>
  (subject?.checks ?? [])
    .filter((check) => check.rule === rule)
    .flatMap(({ of }) => subject?.results[of as ResultName]?.relations ?? []);

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

/** Checks and results that are named together, by the subject that makes them, in the order in which they are named; a name that is none stops the build. */
export function bySubject(of: string, checks: readonly string[], results: readonly string[]) {
  const subjectOf = (name: string, makes: (subject: AnySubject) => boolean): AnySubject => {
    const maker = all.find(makes);
    if (!maker) throw new Error(`“${of}” names “${name}”, and no subject has such a check or result.`);
    return maker;
  };
  const named = [
    ...checks.map((name) => ({
      name,
      isCheck: true,
      subject: subjectOf(name, (one) => one.checks.some(({ id }) => id === name)),
    })),
    ...results.map((name) => ({
      name,
      isCheck: false,
      subject: subjectOf(name, (one) => Object.hasOwn(one.results, name)),
    })),
  ];
  return [...Map.groupBy(named, ({ subject }) => subject)].map(([subject, some]) => ({
    subject: subject.name,
    trouble: {
      checks: some.filter(({ isCheck }) => isCheck).map(({ name }) => name),
      results: some.filter(({ isCheck }) => !isCheck).map(({ name }) => name as ResultName),
    },
  }));
}

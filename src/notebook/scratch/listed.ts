/** The names a cell may use as a page lists them: with values, units and ranges. Words of relations are the page's. */
import type { Unit } from '../../calc/core/relation.ts';
import { type Shown, show } from './amounts.ts';
import { constants, functions } from './functions.ts';
import { callable, type NamedNumber } from './names.ts';

/** What a page shows of a name. */
export type Listed = { readonly name: string } & (
  | { readonly type: 'number'; readonly meaning: string; readonly shown?: Shown; readonly note?: string }
  | {
      readonly type: 'relation';
      /** Its title and the names of its inputs stand with the words of relations. */
      readonly id: string;
      readonly inputs: readonly {
        readonly symbol: string;
        readonly unit: Unit;
        readonly range: readonly [number, number];
      }[];
      readonly gives: Unit;
    }
  | { readonly type: 'function'; readonly meaning: string; readonly takes: string }
);

const constantMeanings: Readonly<Record<string, string>> = {
  pi: 'circle to its diameter',
  phi: 'golden ratio',
};

/** The list for the page: numbers of the box first, then relations, then woods. */
export function listOf(numbers: ReadonlyMap<string, NamedNumber>): Listed[] {
  const listed = [...numbers.values()].map(
    ({ name, meaning, note, value }): Listed => ({
      type: 'number',
      name,
      meaning,
      ...(value === undefined ? {} : { shown: show(value) }),
      ...(note ? { note } : {}),
    }),
  );
  const isOfWoods = ({ name }: Listed) => name.startsWith('wood.');
  const called = [...callable].map(
    ([name, { id, inputs, result }]): Listed => ({
      type: 'relation',
      name,
      id,
      inputs: Object.entries(inputs).map(([symbol, { unit, range }]) => ({ symbol, unit, range })),
      gives: result.unit,
    }),
  );
  const fixed = [...functions].map(
    ([name, { takes, says }]): Listed => ({ type: 'function', name, takes, meaning: says }),
  );
  const known = [...constants].map(
    ([name, value]): Listed => ({
      type: 'number',
      name,
      meaning: constantMeanings[name] ?? '',
      shown: show(value),
    }),
  );
  return [
    ...listed.filter((one) => !isOfWoods(one)),
    ...called,
    ...fixed,
    ...known,
    ...listed.filter(isOfWoods),
  ];
}

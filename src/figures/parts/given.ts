/** What a drawing of a given task gets: the numbers drawn, by name, mm; and the units it is written in. */

import { format, type UnitSystem } from '../../units/index.ts';

export interface GivenProps {
  readonly values: Readonly<Record<string, number | string>>;
  readonly system: UnitSystem;
}

/** The numbers of these names, and how to write one of them as a length. */
export function numbersOf<Name extends string>({ values, system }: GivenProps, ...names: readonly Name[]) {
  return {
    ...(Object.fromEntries(names.map((name) => [name, Number(values[name])])) as Record<Name, number>),
    text: (value: number) => format(value, 'length', { system }),
  };
}

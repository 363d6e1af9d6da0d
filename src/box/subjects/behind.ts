/**
 * Which inputs of the box stand behind a number: found by moving what a row reads, one after the other, and looking what
 * comes of it. So no list says it, and none can be wrong.
 */
import type { Result } from '../core/result.ts';
import type { Values } from '../whole/index.ts';
import { type Box, fields } from './inputs.ts';
import type { Results } from './model.ts';

/** The input that the figures of a wood come from. */
const wood: keyof Box = 'species';
/** By how much a number is moved to see what follows. */
const bump = 1e-4;
/** An input that moves a number by less than so many percent a percent is not named. */
const weak = 0.02;

/** What of a row is looked at: its result, or one symbol that is put into its relation. */
const read = (row: Result<Values>, values: Values, symbol: string | undefined): number => {
  const { value, given } = row.work(values);
  return symbol === undefined ? value : given[symbol]!;
};

/** The numbers of the box that a row reads, each with the elasticity of what is looked at to it. */
function moved(row: Result<Values>, values: Values, symbol?: string): [name: string, elasticity: number][] {
  const names = new Set<string>();
  const middle = read(
    row,
    new Proxy(values, {
      get(of, name) {
        names.add(String(name));
        return Reflect.get(of, name);
      },
    }),
    symbol,
  );
  return [...names].flatMap((name): [string, number][] => {
    const value = values[name as keyof Values];
    if (typeof value !== 'number' || !Number.isFinite(value)) return [];
    const by = value === 0 ? bump : value * bump;
    const after = read(row, { ...values, [name]: value + by }, symbol);
    const elasticity = (after - middle) / (middle || 1) / bump;
    return Number.isFinite(elasticity) && Math.abs(elasticity) > bump ? [[name, elasticity]] : [];
  });
}

type Strengths = ReadonlyMap<keyof Box, number>;

/**
 * The inputs that move a number most, strongest first.
 * @param symbol of the row's relation; without it, the row's result
 * @param most how many
 * @returns none for a constant of the trade; of a wood's figures, the wood
 */
export function inputsBehind(
  results: Results,
  row: Result<Values>,
  values: Values,
  symbol?: string,
  most = 1,
): readonly (keyof Box)[] {
  /** What stands behind each result that was met on the way. */
  const known = new Map<string, Strengths>();
  const follow = (from: Result<Values>, of?: string): Strengths => {
    const strengths = new Map<keyof Box, number>();
    const add = (input: keyof Box, along: number) =>
      strengths.set(input, (strengths.get(input) ?? 0) + along);
    for (const [name, elasticity] of moved(from, values, of)) {
      const next = results[name as keyof Results];
      if (!next) {
        add(name in fields ? (name as keyof Box) : wood, elasticity);
        continue;
      }
      const behind = known.get(name) ?? follow(next);
      known.set(name, behind);
      for (const [input, along] of behind) add(input, elasticity * along);
    }
    return strengths;
  };
  return [...follow(row, symbol)]
    .filter(([, along]) => Math.abs(along) > weak)
    .sort(([, a], [, b]) => Math.abs(b) - Math.abs(a))
    .slice(0, most)
    .map(([name]) => name);
}

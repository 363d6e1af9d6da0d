/** A relation at work on numbers: whether it holds for them, what comes out, and what moves it. */
import type { Card, Relation, SymbolSpec } from './relation.ts';

/**
 * Names the first input that lies outside the relation's range of validity.
 * @returns `undefined` when every input is inside; NaN counts as outside. The range in the answer is the one that
 *   holds beside the other inputs.
 */
export function outsideRange<Name extends string>(
  of: Relation<Name>,
  inputs: Readonly<Record<Name, number>>,
): { symbol: Name; spec: SymbolSpec; value: number } | undefined {
  const narrower = of.rangesGiven?.(inputs);
  for (const symbol in of.inputs) {
    const spec = of.inputs[symbol];
    const value = inputs[symbol];
    const given = narrower?.[symbol] ?? spec.range;
    const range = [Math.max(spec.range[0], given[0]), Math.min(spec.range[1], given[1])] as const;
    if (!(value >= range[0] && value <= range[1])) return { symbol, spec: { ...spec, range }, value };
  }
  return undefined;
}

/** An input outside the range in which a relation holds. */
export interface Outside {
  readonly symbol: string;
  readonly spec: SymbolSpec;
  readonly value: number;
}

/** A relation at work on numbers: what was put in, what came out, and whether it may be believed. */
export interface Working {
  readonly of: Card;
  readonly given: Readonly<Record<string, number>>;
  /** What comes out, also outside the range, where it may be nonsense: print it only where `outside` is undefined. */
  readonly value: number;
  readonly outside: Outside | undefined;
  /** The same with some inputs changed. */
  readonly with: (changed: Readonly<Record<string, number>>) => number;
}

/** Puts numbers into a relation. A name it does not have, or one that is missing, does not compile. */
export function work<Name extends string>(
  of: Relation<Name>,
  given: Readonly<Record<NoInfer<Name>, number>>,
): Working {
  return {
    of,
    given,
    value: of.compute(given),
    outside: outsideRange(of, given),
    with: (changed) => of.compute({ ...given, ...changed }),
  };
}

/**
 * Elasticity of the result to each input, strongest first: by how many percent the result changes when
 * the input grows by one percent, from a central difference of ±1 %. Inputs at zero are left out.
 */
export function sensitivity({ of, given, value: middle, with: after }: Working) {
  const found: { symbol: string; elasticity: number }[] = [];
  for (const [symbol, { whole }] of Object.entries(of.inputs)) {
    const value = given[symbol]!;
    if (value === 0 || whole) continue;
    const elasticity =
      (after({ [symbol]: value * 1.01 }) - after({ [symbol]: value * 0.99 })) / middle / 0.02;
    if (Number.isFinite(elasticity)) found.push({ symbol, elasticity });
  }
  return found.sort((a, b) => Math.abs(b.elasticity) - Math.abs(a.elasticity));
}

/** Every relation is checked by mathjs: the expression on the page, with units attached, is the code that runs. */
import fc from 'fast-check';
import { all, create, type Unit as MathUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import type { Relation, Unit } from '../../../src/calc/core/relation.ts';
import { outsideRange } from '../../../src/calc/core/working.ts';
import { relations } from '../../../src/calc/index.ts';

const math = create(all!, {});
/** Percent points and temperatures in empirical formulas are pure numbers to mathjs. */
const plain: readonly Unit[] = ['1', '%', 'degC'];
const attach = (value: number, unit: Unit) => (plain.includes(unit) ? value : math.unit(value, unit));
/** Arc functions of mathjs give plain radians. */
const strip = (value: unknown, unit: Unit) =>
  plain.includes(unit)
    ? (value as number)
    : (unit === 'deg' && typeof value === 'number' ? math.unit(value, 'rad') : (value as MathUnit)).toNumber(
        unit,
      );

const anyInputs = (of: Relation) =>
  fc.record(
    Object.fromEntries(
      Object.entries(of.inputs).map(([symbol, { range, whole }]) => [
        symbol,
        whole
          ? fc.integer({ min: range[0], max: range[1] })
          : fc.double({ min: range[0], max: range[1], noNaN: true }),
      ]),
    ),
  );

describe.each([...relations.values()])('the relation $id', (of) => {
  const code = math.compile(of.expression);
  const unitOf = (unit: Unit): Unit => (of.fit ? '1' : unit);

  test('says the same in mathjs with units as in the program', () => {
    fc.assert(
      fc.property(anyInputs(of), (inputs) => {
        fc.pre(!outsideRange(of, inputs));
        const scope = Object.fromEntries(
          Object.entries(inputs).map(([symbol, value]) => [
            symbol,
            attach(value, unitOf(of.inputs[symbol]!.unit)),
          ]),
        );
        const expected = strip(code.evaluate(scope), unitOf(of.result.unit));
        const found = of.compute(inputs);
        expect(Math.abs(found - expected)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(expected)));
      }),
      { numRuns: 100 },
    );
  });

  test('uses exactly the symbols it declares', () => {
    const used = new Set<string>();
    math.parse(of.expression).traverse((node, path) => {
      if ('isSymbolNode' in node && path !== 'fn') used.add((node as unknown as { name: string }).name);
    });
    for (const constant of ['pi', 'e']) if (!(constant in of.inputs)) used.delete(constant);
    expect([...used].sort()).toEqual(Object.keys(of.inputs).sort());
  });
});

test('no two relations share an id, and ids are kebab-case', () => {
  for (const id of relations.keys()) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
});

/** A relation called in a cell gives what the program computes, and refuses what lies outside its range. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exampleFor } from '../../../src/box/subjects/example.ts';
import type { Unit } from '../../../src/calc/core/relation.ts';
import { outsideRange } from '../../../src/calc/core/working.ts';
import { relations } from '../../../src/calc/index.ts';
import { callRelation } from '../../../src/notebook/scratch/call.ts';
import { functions } from '../../../src/notebook/scratch/functions.ts';
import { type Amount, isAmount, type Value } from '../../../src/notebook/scratch/math.ts';
import { numbersOf, relationNamed, relationNames } from '../../../src/notebook/scratch/names.ts';
import { read, workOut } from '../../../src/notebook/scratch/work-out.ts';

const camel = (id: string) => id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
const plain: readonly Unit[] = ['1', '%', 'degC'];
const numbers = numbersOf(exampleFor('mm'));
const value = (text: string): Value =>
  workOut(read(text), { numbers, words: {}, own: new Map(), until: performance.now() + 1000 });
const inUnit = (given: Value, unit: Unit) =>
  isAmount(given) ? (given as Amount).toNumber(unit) : (given as number);

test('every relation can be called by its name, and none takes the name of another thing', () => {
  expect(relationNames.toSorted()).toEqual([...relations.keys()].map(camel).toSorted());
  expect(new Set(relationNames.map((name) => name.toLowerCase())).size).toBe(relations.size);
  for (const name of relationNames) {
    expect([...functions.keys()]).not.toContain(name);
    expect(numbers.has(name.toLowerCase())).toBe(false);
  }
});

describe.each([...relations.values()])('$id', (of) => {
  const name = camel(of.id);
  const entries = Object.entries(of.inputs);
  const anyInputs = fc.record(
    Object.fromEntries(
      entries.map(([symbol, { range, whole }]) => [
        symbol,
        whole
          ? fc.integer({ min: range[0], max: range[1] })
          : fc.double({ min: range[0], max: range[1], noNaN: true }),
      ]),
    ),
  );
  const typed = (number: number, unit: Unit) => `${number}${plain.includes(unit) ? '' : ` ${unit}`}`;

  test('gives in a cell what it computes, by position and by its letters', () => {
    expect(relationNamed(name)).toBe(of);
    fc.assert(
      fc.property(anyInputs, (inputs) => {
        fc.pre(!outsideRange(of, inputs));
        const expected = of.compute(inputs);
        fc.pre(Number.isFinite(expected));
        // What is typed is read with its unit: the inputs that come out are the same but for noise in the last place.
        const args = entries.map(([symbol, { unit }]) => typed(inputs[symbol]!, unit));
        fc.pre(args.join(', ').length < 400);
        let found: Value;
        try {
          found = value(`${name}(${args.join(', ')})`);
        } catch (error) {
          // An end of a range may be left by noise in the last place.
          expect(String(error)).toContain('holds for');
          const atAnEnd = entries.some(([symbol, { range }]) =>
            range.some((end) => Math.abs(inputs[symbol]! - end) <= 1e-9 * Math.max(1, Math.abs(end))),
          );
          expect(atAnEnd || of.rangesGiven !== undefined, String(error)).toBe(true);
          return;
        }
        const near = 1e-7 * Math.max(1, Math.abs(expected));
        expect(Math.abs(inUnit(found, of.result.unit) - expected)).toBeLessThanOrEqual(near);
        const byLetters = value(
          `${name}({${entries.map(([symbol], at) => `${symbol}: ${args[at]}`).join(', ')}})`,
        );
        expect(inUnit(byLetters, of.result.unit)).toBe(inUnit(found, of.result.unit));
      }),
      { numRuns: 15 },
    );
  });

  test('says which input lies outside its range', () => {
    const [[symbol, { range, unit, name: says }]] = entries as [(typeof entries)[number]];
    const inputs = Object.fromEntries(
      entries.map(
        ([
          key,
          {
            range: [low],
          },
        ]) => [key, low],
      ),
    );
    const beyond = { ...inputs, [symbol]: range[1] + Math.abs(range[1]) + 1 };
    const given = Object.fromEntries(
      entries.map(([key, spec]) => [key, value(typed(beyond[key]!, spec.unit))]),
    );
    expect(unit).toBeDefined();
    expect(() => callRelation(name, of, given, {})).toThrow(`${name} holds for ${symbol} (${says}) from`);
  });
});

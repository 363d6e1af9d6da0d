/** A lesson loads only its own model; this holds every check to the numbers that its model computes. */
import { describe, expect, test } from 'vitest';
import { judge } from '../../../src/box/core/verdict.ts';
import { compute, type Model, modelOf } from '../../../src/box/subjects/model.ts';
import { evaluate, type ResultName, subjects, type Values } from '../../../src/box/whole/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const models: readonly [string, Model][] = [
  ...Object.entries(subjects).map(([name, subject]): [string, Model] => [name, modelOf(subject)]),
  ['movement and the run of the lid', modelOf(subjects.movement, subjects.lid)],
];

/** The same values, but asking for one that is not there fails. */
const strict = (values: Values): Values =>
  new Proxy(values, {
    get(target, name) {
      if (typeof name === 'string' && !(name in target)) throw new Error(`${name} is not in this model`);
      return Reflect.get(target, name);
    },
  });

describe.each(models)('the model of %s', (_, model) => {
  const values = strict(compute(model.results, exampleBox));

  test('computes the same numbers as the whole', () => {
    const whole = evaluate(exampleBox);
    for (const name of Object.keys(model.results) as ResultName[]) {
      expect(Number.isFinite(whole[name]), `${name} is a number in the example`).toBe(true);
      expect(values[name], name).toBe(whole[name]);
    }
  });

  test('has everything that its own results need', () => {
    for (const result of Object.values(model.results)) {
      result.work(values);
    }
  });

  test('has everything that its checks need', () => {
    for (const check of model.checks) judge(check, values);
  });
});

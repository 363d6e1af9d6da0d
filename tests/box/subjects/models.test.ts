/** A lesson loads only its own model; this holds every check to the numbers that its model computes. */
import { describe, expect, test } from 'vitest';
import { compute, type Model } from '../../../src/box/core/model.ts';
import type { Values } from '../../../src/box/core/values.ts';
import { judge } from '../../../src/box/core/verdict.ts';
import { airModel } from '../../../src/box/subjects/air/model.ts';
import { evaluate, type results } from '../../../src/box/subjects/evaluate.ts';
import { finishModel } from '../../../src/box/subjects/finish/model.ts';
import { groovesModel } from '../../../src/box/subjects/grooves/model.ts';
import { jointsModel } from '../../../src/box/subjects/joints/model.ts';
import { lidRunModel } from '../../../src/box/subjects/lid/model.ts';
import { movementModel } from '../../../src/box/subjects/movement/model.ts';
import { proportionModel } from '../../../src/box/subjects/proportion/model.ts';
import { wallsModel } from '../../../src/box/subjects/walls/model.ts';
import { exampleBox } from '../reckoned-box.ts';

const models: Record<string, Model> = {
  proportion: proportionModel,
  walls: wallsModel,
  grooves: groovesModel,
  movement: movementModel,
  'movement and the run of the lid': lidRunModel,
  joints: jointsModel,
  air: airModel,
  finish: finishModel,
};

/** The same values, but asking for one that is not there fails. */
const strict = (values: Values): Values =>
  new Proxy(values, {
    get(target, name) {
      if (typeof name === 'string' && !(name in target)) throw new Error(`${name} is not in this model`);
      return Reflect.get(target, name);
    },
  });

describe.each(Object.entries(models))('the model of %s', (_, model) => {
  const values = strict(compute(model.results, exampleBox));

  test('computes the same numbers as the whole', () => {
    const whole = evaluate(exampleBox);
    for (const name of Object.keys(model.results) as (keyof typeof results)[]) {
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

/** From a learner to the task: values drawn until a box can be built with them, slips that meet the key left out. */

import type { UnitSystem } from '../../units/index.ts';
import type { Asked, Exercise, Task, Values } from './exercise.ts';
import type { Learner } from './learner.ts';
import { drawFrom, seedText } from './seed.ts';

/** Draws after which a list must be at fault. */
const patience = 1000;

/**
 * The values that a text gives, other than those to avoid. Which slips there are has no say in it, so a new slip never
 * changes printed numbers.
 */
function valuesFrom(of: Exercise, text: string, system: UnitSystem, avoid: readonly Values[] = []): Values {
  const draw = drawFrom(text);
  const taken = avoid.map((values) => JSON.stringify(values));
  for (let drawn = 0; drawn < patience; drawn++) {
    const values = of.draw(draw, system);
    if ((of.fits?.(values, system) ?? true) && !taken.includes(JSON.stringify(values))) return values;
  }
  throw new Error(`${of.id} finds no values that fit`);
}

/** A slip that gives what is still right is none; nor is one without a number. */
const apart = (asked: Asked): Asked =>
  asked.type === 'pick'
    ? asked
    : {
        ...asked,
        mistakes: asked.mistakes.filter(
          ({ value }) => Math.abs(value - asked.key) > asked.within * (1 + 1e-6),
        ),
      };

/** The task with these values. */
export function taskWith(of: Exercise, values: Values, system: UnitSystem): Task {
  const posed = of.pose(values, system);
  return {
    exercise: of.id,
    system,
    values,
    ...posed,
    lines: posed.lines.map((line) => ({ ...line, gives: apart(line.gives) })),
  };
}

/**
 * The values of a learner. Who has an even number gets others than both neighbors, so two who sit side by side never share
 * theirs; who has an odd one need not look aside, so nobody's numbers hang on how many are in the class.
 */
function valuesOf(of: Exercise, learner: Learner, system: UnitSystem): Values {
  const { number } = learner;
  const at = (place: number) => seedText({ ...learner, number: place }, of.id);
  const beside = number % 2 === 0 ? [number - 1, number + 1] : [];
  return valuesFrom(
    of,
    at(number),
    system,
    beside.map((place) => valuesFrom(of, at(place), system)),
  );
}

/** A learner's own task. */
export const taskFor = (of: Exercise, learner: Learner, system: UnitSystem): Task =>
  taskWith(of, valuesOf(of, learner, system), system);

/** A worked example: other numbers than any learner's; each stage of fading has its own. */
export const exampleTask = (of: Exercise, stage: number, system: UnitSystem): Task =>
  taskWith(of, valuesFrom(of, ['a worked example', stage, of.id].join('\n\n'), system), system);

/** The first of the steps that lead to a line: where to begin again when its answer is no usual slip. */
export function firstStepTo({ lines }: Task, index: number): string {
  let first = index;
  while (first > 0 && !lines[first - 1]!.asked) first--;
  return lines[first]!.does;
}

/** The lines that are asked of the learner. */
export const askedOf = ({ lines }: Task): readonly Task['lines'][number][] =>
  lines.filter(({ asked }) => asked);

/** The order that the lesson times: this notebook's example, ordinary white or yellow glue. */
import type { Values } from '../../box/whole/index.ts';
import { glueUpTime } from '../../calc/glue/glue-up.ts';

/** Bottom in, four corners, four clamps, diagonals: ten steps. Seconds are the example’s; open time in minutes. */
export const exampleOrder = { secondsFace: 8, otherSteps: 10, secondsStep: 20, openTime: 8 } as const;
export type Order = { readonly [K in keyof typeof exampleOrder]: number };

/** What is put into the relation for a glue-up; without faces it is the trial. */
export const clockGiven = (faces: number, { secondsFace, otherSteps, secondsStep }: Order) => ({
  N: faces,
  s_f: secondsFace,
  k: otherSteps,
  s_k: secondsStep,
});

/** Minutes of the dry trial, and of the example's glue-up with this box's faces. */
export const trialMinutes = (order: Order): number => glueUpTime.compute(clockGiven(0, order));
export const glueUpMinutes = (v: Values): number =>
  glueUpTime.compute(clockGiven(v.facesToGlue, exampleOrder));

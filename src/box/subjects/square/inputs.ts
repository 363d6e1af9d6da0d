/** The reader's own errors. */
import { fine, number } from '../../core/inputs.ts';

export const squareInputs = {
  /** Of the saw, degrees. */
  angleError: number('error of the saw’s angle', 'angle', {
    low: 0,
    high: 1,
    step: 0.05,
    digits: 2,
    start: 0.1,
  }),
  /** mm */
  lengthError: fine('error of a part’s length', { low: 0, high: 2, start: { mm: 0.1, inch: 0.004 } }),
  /** By how much each step of the finger jig is off, mm. */
  stepError: fine('error of each step', {
    low: 0,
    high: 0.3,
    start: { mm: 0.03, inch: 0.001 },
    when: [{ joint: ['finger'] }],
  }),
};

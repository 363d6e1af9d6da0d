/** The reader's own errors, and what the glued box measures. */
import { INCH } from '../../../units/index.ts';
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
  lengthError: fine('error of a part’s length', { low: 0, high: 2, start: { mm: 0.05, inch: 0.002 } }),
  /** By how much each step of the finger jig is off, mm. */
  stepError: fine('error of each step', {
    low: 0,
    high: 0.3,
    start: { mm: 0.03, inch: 0.001 },
    when: [{ joint: ['finger'] }],
  }),
  /** Difference of the diagonals as measured, mm; 0 until it is measured. */
  diagonalsApart: fine('diagonals apart, as measured', {
    low: 0,
    high: 10,
    step: 0.1,
    inchStep: INCH / 64,
    denominator: 64,
    start: 0,
    help: 'Inside, at the rim. Leave it at 0 until there is a box to measure.',
  }),
  /** Gap under the free corner on a flat plate, the other three touching, mm; 0 until it is measured. */
  rock: fine('rock on a flat plate, as measured', {
    low: 0,
    high: 5,
    step: 0.05,
    start: 0,
    help: 'The gap under the free corner while the other three touch.',
  }),
};

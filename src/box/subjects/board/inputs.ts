/** The board to cut from, as it comes, and what sawing and planing take. mm. */
import { INCH } from '../../../units/index.ts';
import { choice, length } from '../../core/inputs.ts';

const fineStep = { step: 0.1, inchStep: INCH / 64, denominator: 64 } as const;

export const boardInputs = {
  /** Walls from one strip in walk-round order, or from a resawn pair opened like a book. */
  wallsFrom: choice(
    'walls come from',
    { strip: 'one strip, in walk-round order', bookmatched: 'a resawn pair, opened like a book' },
    'strip',
  ),
  boardLength: length('board length', { low: 100, high: 4000, start: { mm: 900, inch: 36 } }),
  boardWidth: length('board width', { low: 20, high: 600, start: { mm: 150, inch: 6 } }),
  boardThickness: length('board thickness, rough', {
    step: 0.5,
    inchStep: INCH / 32,
    denominator: 32,
    low: 3,
    high: 100,
    start: { mm: 26, inch: 1 },
  }),
  /** Width of the saw cut. */
  kerf: length('kerf: width of the saw cut', {
    ...fineStep,
    low: 0.3,
    high: 6,
    start: { mm: 3, inch: 1 / 8 },
  }),
  /** Planed away on each face. */
  planing: length('planed off each face', {
    ...fineStep,
    low: 0,
    high: 5,
    start: { mm: 1, inch: 1 / 32 },
  }),
};

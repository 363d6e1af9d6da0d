/** The ratio a reader would like. */
import { number } from '../../core/inputs.ts';

export const proportionInputs = {
  /** Length to width, outside or inside; it moves nothing, it answers "what would it take?". */
  wantedRatio: number('wanted length to width', 'ratio', {
    low: 1,
    high: 3,
    step: 0.05,
    digits: 2,
    start: 1.5,
    help: 'Write it as 1.6 or as 8:5.',
  }),
};

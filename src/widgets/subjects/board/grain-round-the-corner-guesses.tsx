/** Guesses of the lesson on grain round the corner. */
import { climb, climbFrame, climbOf, climbRange, FourthGuess } from '../../../figures/board/FourthGuess.tsx';
import { bestOrder, cornersOf, OrderPick } from '../../../figures/board/OrderPick.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

export const grainRoundTheCornerGuesses: Readonly<Record<string, GuessSpec>> = {
  'order-on-strip': {
    type: 'pick',
    label: 'Which order keeps the figure going round most corners?',
    event: 'Put them round the box',
    options: {
      lengths: 'both short ones, both long ones',
      walk: 'short, long, short, long, as one walks round',
      half: 'half the way round, then from the other end',
    },
    option: OrderPick,
    truth: bestOrder,
    answer: () =>
      `Walls that follow each other on the box must follow each other on the strip: ${cornersOf('walk')} corners match, ${cornersOf('half')} in the third order, and none if they lie by length.`,
  },
  'fourth-corner': {
    type: 'number',
    label: 'above its beginning',
    event: 'Close the box',
    field: { kind: 'length', step: 0.5, inchStep: INCH / 32, digits: 1, ...climbRange },
    figure: FourthGuess,
    frame: climbFrame,
    start: () => 0,
    truth: climbOf,
    controls: ['kerf'],
    answer: (v) => (
      <>
        It ends <Quantity value={climbOf(v)} kind="length" /> above its beginning: it climbed {climb}° over
        the whole strip.
      </>
    ),
  },
};

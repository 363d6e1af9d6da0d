/** Guesses of the lesson on cutting fingers. */
import {
  byChance,
  ChanceGuess,
  chanceFrame,
  chanceRange,
  stepsOfOne,
} from '../../../figures/joints/ChanceGuess.tsx';
import { PlayPick, playPattern, playsOf } from '../../../figures/joints/PlayPick.tsx';
import { bevel, RidgeGuess, ridgeFrame, ridgeOf, ridgeRange } from '../../../figures/joints/RidgeGuess.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

export const turnItRoundGuesses: Readonly<Record<string, GuessSpec>> = {
  'pin-too-near': {
    type: 'pick',
    label: 'Seven fingers, and the play of each. Dashed: as it should be',
    event: 'Cut them',
    pins: (system) =>
      system === 'mm'
        ? { joint: 'finger', fingerWidth: 8, fingerFit: 0.1 }
        : { joint: 'finger', fingerWidth: (5 / 16) * INCH, fingerFit: 0.004 * INCH },
    options: {
      growing: 'each looser than the last',
      last: 'only the last is loose',
      all: 'all equally loose',
    },
    option: PlayPick,
    truth: playPattern,
    answer: (v) => (
      <>
        All alike: <Quantity value={playsOf(v).cut} kind="length" as="fine" /> of play in place of{' '}
        <Quantity value={playsOf(v).set} kind="length" as="fine" />.
      </>
    ),
  },
  'nine-chances': {
    type: 'number',
    label: 'the last slot is off by so many times one error',
    event: 'Cut ten boards',
    field: { kind: 'count', step: 1, digits: 0, ...chanceRange },
    figure: ChanceGuess,
    frame: chanceFrame,
    start: () => 0,
    truth: () => byChance(stepsOfOne),
    answer: () => (
      <>
        About {byChance(stepsOfOne)} times, to one side or the other. Ten boards are drawn; some end near
        nothing.
      </>
    ),
  },
  'tooth-ridge': {
    type: 'number',
    label: 'height of the ridge',
    event: 'Cut the slot',
    field: { kind: 'length', step: 0.1, inchStep: INCH / 64, digits: 1, ...ridgeRange },
    pins: (system) => ({ kerf: system === 'mm' ? 3 : INCH / 8 }),
    figure: RidgeGuess,
    frame: ridgeFrame,
    start: () => 0,
    truth: ridgeOf,
    answer: (v) => (
      <>
        Teeth beveled by {bevel}° leave a ridge of <Quantity value={ridgeOf(v)} kind="length" as="fine" />:
        the end of the finger rests on it, and a hollow shows on either side.
      </>
    ),
  },
};

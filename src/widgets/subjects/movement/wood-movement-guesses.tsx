/** Guesses of the lesson on wood movement. */

import { HoldGuess, holdFrame, holdRange } from '../../../figures/movement/HoldGuess.tsx';
import { heldOf, heldShares, LidPulled } from '../../../figures/movement/LidsPulled.tsx';
import { StripGuess, stripFrame, stripGrowth, stripRange } from '../../../figures/movement/StripGuess.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { GuessSpec } from '../../lesson/guess-spec.ts';
import { Fine, lidAugust, smallLength } from './august/lid-august.tsx';

export const woodMovementGuesses: Readonly<Record<string, GuessSpec>> = {
  'lid-august': lidAugust,
  'rings-upright': {
    type: 'number',
    label: 'your mark',
    event: 'Let it get damp',
    field: { ...smallLength, ...stripRange },
    figure: StripGuess,
    frame: stripFrame,
    start: () => 0,
    truth: (v) => stripGrowth(v, 90),
    controls: ['species'],
    answer: (v) => (
      <>
        The strip with its rings upright grows <Fine of={stripGrowth(v, 90)} />, which saves{' '}
        <Quantity value={v.quarterSawnSaving} kind="percent" digits={0} />.
      </>
    ),
  },
  'held-when-dry': {
    type: 'number',
    label: 'still in the groove',
    event: 'Let it dry',
    field: { ...smallLength, ...holdRange },
    figure: HoldGuess,
    frame: holdFrame,
    start: (v) => v.grooveDepth - v.bottomGap,
    truth: (v) => v.bottomEngagementCrept,
    controls: ['humidityDry', 'grooveDepth'],
    answer: (v) =>
      v.bottomEngagementCrept > 0 ? (
        <>
          <Fine of={v.bottomEngagementCrept} /> are left at this side; held central it would be{' '}
          <Fine of={v.bottomEngagement} />.
        </>
      ) : (
        'Nothing is left at this side: it drops out of its groove.'
      ),
  },
  'jams-with-play': {
    type: 'pick',
    label: 'All have the same play. Which one jams?',
    event: 'Pull',
    options: { short: 'the short end', square: 'as long as wide', long: 'the long one' },
    option: LidPulled,
    truth: (v) => Object.keys(heldShares).find((option) => heldOf(v, option) < v.jamLengthAtEdge) ?? '',
    controls: ['friction'],
    answer: (v) => (
      <>
        A lid <Quantity value={v.lidWidth} kind="length" digits={0} denominator={8} /> wide, pulled at its
        very edge, jams once less than{' '}
        <Quantity value={v.jamLengthAtEdge} kind="length" digits={0} denominator={8} round="up" /> of it are
        in the grooves.
      </>
    ),
  },
};

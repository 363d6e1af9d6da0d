/** Guesses of the lesson on joint spacing. */
import { AreaPick, areaOf, leastArea } from '../../../figures/joints/AreaPick.tsx';
import { BindGuess, bindFrame, bindRange, boundFinger } from '../../../figures/joints/BindGuess.tsx';
import { EdgeGuess, leftFrame, leftRange } from '../../../figures/joints/EdgeGuess.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Area = ({ of }: { of: number }) => <Quantity value={of} kind="area" />;

export const jointSpacingGuesses: Readonly<Record<string, GuessSpec>> = {
  'left-at-edge': {
    type: 'number',
    label: 'left at the upper edge',
    event: 'Cut the rest',
    field: { kind: 'length', step: 0.5, inchStep: INCH / 32, digits: 1, ...leftRange },
    pins: (system) =>
      system === 'mm'
        ? { sizeFrom: 'outside', wantedHeight: 48, joint: 'finger', fingerWidth: 9, wall: 9.5 }
        : {
            sizeFrom: 'outside',
            wantedHeight: 2 * INCH,
            joint: 'finger',
            fingerWidth: (3 / 8) * INCH,
            wall: (3 / 8) * INCH,
          },
    figure: EdgeGuess,
    frame: leftFrame,
    start: () => 0,
    truth: (v) => v.edgeSliver,
    controls: ['fingerWidth'],
    answer: (v) =>
      v.edgeSliver > 0 ? (
        <>
          {Math.floor(v.fingerCount)} whole fingers leave <Quantity value={v.edgeSliver} kind="length" />:{' '}
          {v.edgeSliver < v.fingerWidth / 2 ? 'a sliver' : 'a part of a finger'}.
        </>
      ) : (
        'Whole fingers fill the height: nothing is left.'
      ),
  },
  'binding-finger': {
    type: 'number',
    label: 'first finger that binds',
    event: 'Push it together',
    field: { kind: 'count', step: 1, digits: 0, ...bindRange },
    pins: (system) =>
      system === 'mm'
        ? {
            sizeFrom: 'outside',
            wantedHeight: 95,
            joint: 'finger',
            fingerWidth: 5,
            fingerFit: 0.1,
            stepError: 0.03,
          }
        : {
            sizeFrom: 'outside',
            wantedHeight: 19 * (3 / 16) * INCH,
            joint: 'finger',
            fingerWidth: (3 / 16) * INCH,
            fingerFit: 0.004 * INCH,
            stepError: 0.001 * INCH,
          },
    figure: BindGuess,
    frame: bindFrame,
    start: () => 0,
    truth: boundFinger,
    controls: ['fingerFit'],
    answer: (v) =>
      Number.isNaN(boundFinger(v)) ? (
        'All nineteen go in: the sum of the steps is no more than the play.'
      ) : (
        <>
          Finger {boundFinger(v)} binds: after {boundFinger(v) / 2} steps the miss is more than the play of{' '}
          <Quantity value={v.fingerFit} kind="length" as="fine" />.
        </>
      ),
  },
  'least-area': {
    type: 'pick',
    label: 'Which has the least area for glue?',
    event: 'Take them apart',
    pins: (system) =>
      system === 'mm'
        ? { sizeFrom: 'outside', wantedHeight: 70, wall: 10 }
        : { sizeFrom: 'outside', wantedHeight: 7 * (3 / 8) * INCH, wall: (3 / 8) * INCH },
    options: {
      wide: 'fingers as wide as the wall',
      narrow: 'fingers half as wide',
      miter: 'a plain miter (mitre)',
    },
    option: AreaPick,
    truth: leastArea,
    answer: (v) => (
      <>
        Fingers as wide as the wall have the least: <Area of={areaOf(v, 'wide')} />, the miter{' '}
        <Area of={areaOf(v, 'miter')} />, fingers half as wide <Area of={areaOf(v, 'narrow')} />.
      </>
    ),
  },
};

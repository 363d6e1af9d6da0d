/** Guesses of the lesson on corner joints. */
import { DryMiter, openSide, pointsLost, timesLarger, wedgeOf } from '../../../figures/joints/DryMiter.tsx';
import { FacePick, faceOf, largestFace } from '../../../figures/joints/FacePick.tsx';
import { behindFrame, behindRange, KeyGuess } from '../../../figures/joints/KeyGuess.tsx';
import { gainFrame, gainOf, gainRange, SlopeGuess } from '../../../figures/joints/SlopeGuess.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Area = ({ of }: { of: number }) => <Quantity value={of} kind="area" />;

export const whichCornerJointGuesses: Readonly<Record<string, GuessSpec>> = {
  'largest-face': {
    type: 'pick',
    label: 'Which has the largest face for glue?',
    event: 'Measure the faces',
    pins: (system) =>
      system === 'mm'
        ? { sizeFrom: 'outside', wantedHeight: 30, wall: 10 }
        : { sizeFrom: 'outside', wantedHeight: (5 / 4) * INCH, wall: (3 / 8) * INCH },
    options: {
      butt: 'a butt joint',
      rabbet: 'a rabbet (rebate) of half the wall',
      miter: 'a plain miter (mitre)',
    },
    option: FacePick,
    truth: largestFace,
    answer: (v) => (
      <>
        The rabbet has the most: <Area of={faceOf(v, 'rabbet')} />, the miter <Area of={faceOf(v, 'miter')} />
        , the butt joint <Area of={faceOf(v, 'butt')} />.
      </>
    ),
  },
  'slope-adds': {
    type: 'number',
    label: 'area added by the slope',
    event: 'Measure the cheek',
    field: { kind: 'percent', step: 0.5, digits: 1, ...gainRange },
    pins: (system) => ({ joint: 'dovetail', dovetailSlope: 6, wall: system === 'mm' ? 10 : (3 / 8) * INCH }),
    figure: SlopeGuess,
    frame: gainFrame,
    start: () => 10,
    truth: gainOf,
    controls: ['dovetailSlope'],
    answer: (v) => (
      <>
        A slope of 1 in {v.dovetailSlope} adds <Quantity value={gainOf(v)} kind="percent" digits={1} /> to the
        area.
      </>
    ),
  },
  'behind-the-key': {
    type: 'number',
    label: 'wood left behind the slot',
    event: 'Raise the saw',
    field: { kind: 'length', step: 0.5, inchStep: INCH / 32, digits: 1, ...behindRange },
    pins: (system) => ({
      sizeFrom: 'outside',
      wantedHeight: system === 'mm' ? 60 : 2.5 * INCH,
      joint: 'keyed-mitre',
      wall: system === 'mm' ? 10 : (3 / 8) * INCH,
    }),
    figure: KeyGuess,
    frame: behindFrame,
    start: () => 0,
    truth: (v) => v.keyLeft,
    answer: (v) => (
      <>
        A slot <Quantity value={v.keyDepth} kind="length" /> deep leaves{' '}
        <Quantity value={v.keyLeft} kind="length" />, about two fifths of the wall.
      </>
    ),
  },
  'dry-miter': {
    type: 'pick',
    label: `Where does it open? Drawn ${timesLarger} times`,
    event: 'Heat the room',
    pins: (system) => ({ joint: 'mitre', wall: system === 'mm' ? 10 : (3 / 8) * INCH }),
    options: { outside: 'on the outside', inside: 'on the inside', shut: 'nowhere' },
    option: DryMiter,
    truth: openSide,
    answer: (v) => (
      <>
        On the inside. Walls that lose {pointsLost} points of moisture would open it by up to{' '}
        <Quantity value={wedgeOf(v)} kind="length" as="fine" />, if the glue let them.
      </>
    ),
  },
};

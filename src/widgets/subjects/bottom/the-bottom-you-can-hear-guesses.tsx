/** Guesses of the lesson on what the bottom sounds like. */
import {
  doubledMotion,
  doubledPitch,
  NotePick,
  noteOption,
  TwoBottoms,
} from '../../../figures/bottom/NotePick.tsx';
import { RingGuess, ringFrame, ringOf, ringRange } from '../../../figures/bottom/RingGuess.tsx';
import { doubledSag, SagGuess, sagFrame, sagRange, thinSag } from '../../../figures/bottom/SagGuess.tsx';
import { doubledSwing, SwingGuess, swingFrame, swingRange } from '../../../figures/bottom/SwingGuess.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH, type UnitSystem } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

/** A bottom of the usual thickness, so that the thin one is half of it. */
const pins = (system: UnitSystem) =>
  system === 'mm'
    ? ({ sizeFrom: 'inside', wantedLength: 200, wantedWidth: 120, bottomThickness: 6 } as const)
    : ({
        sizeFrom: 'inside',
        wantedLength: 8 * INCH,
        wantedWidth: 4.75 * INCH,
        bottomThickness: INCH / 4,
      } as const);

const Seconds = ({ of }: { of: number }) => <Quantity value={of} kind="number" digits={2} />;

export const theBottomYouCanHearGuesses: Readonly<Record<string, GuessSpec>> = {
  'doubled-sag': {
    type: 'number',
    label: 'sag of the thick one, against the thin one',
    event: 'Load it',
    field: { kind: 'percent', step: 1, digits: 0, ...sagRange },
    pins,
    figure: SagGuess,
    frame: sagFrame,
    start: () => 0,
    truth: doubledSag,
    answer: (v) => (
      <>
        It sags <Quantity value={doubledSag(v)} kind="percent" digits={1} /> as far, an eighth:{' '}
        <Quantity value={(thinSag(v) * doubledSag(v)) / 100} kind="length" as="fine" />.
      </>
    ),
  },
  'thicker-note': {
    type: 'pick',
    label: 'Twice as thick, it swings',
    event: 'Tap it',
    pins,
    figure: TwoBottoms,
    options: {
      deeper: 'slower: a deeper note',
      same: 'as fast: the same note',
      higher: 'faster: a higher note',
    },
    option: NotePick,
    truth: noteOption,
    answer: (v) => (
      <>
        It swings <Quantity value={doubledPitch(v)} kind="number" digits={0} /> times as fast, an octave
        higher, and only <Quantity value={doubledMotion(v)} kind="percent" digits={0} /> as far.
      </>
    ),
  },
  'doubled-ring': {
    type: 'number',
    label: 'the thick one rings, in seconds',
    event: 'Let it ring',
    field: { kind: 'number', step: 0.01, digits: 2, ...ringRange },
    pins,
    figure: RingGuess,
    frame: ringFrame,
    start: () => 0,
    truth: (v) => ringOf(v, 1),
    answer: (v) => (
      <>
        It rings <Seconds of={ringOf(v, 1)} /> s, half as long as the thin one with its{' '}
        <Seconds of={ringOf(v, 0.5)} /> s.
      </>
    ),
  },
  'doubled-swing': {
    type: 'number',
    label: 'swing of the thick one, against the thin one',
    event: 'Tap both',
    field: { kind: 'percent', step: 1, digits: 0, ...swingRange },
    pins,
    figure: SwingGuess,
    frame: swingFrame,
    start: () => 0,
    truth: doubledSwing,
    answer: (v) => (
      <>
        It swings <Quantity value={doubledSwing(v)} kind="percent" digits={0} /> as far.
      </>
    ),
  },
};

/** Guesses of the lesson on where a groove shows. */
import { ArcGuess, runFrame, runOf, runRange } from '../../../figures/grooves/ArcGuess.tsx';
import { CornerPick, trueHoles } from '../../../figures/grooves/CornerPick.tsx';
import { FrontPick, holeOf, showsHole } from '../../../figures/grooves/FrontPick.tsx';
import { StopGuess, stopFrame, stopRange } from '../../../figures/grooves/StopGuess.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Length = ({ of }: { of: number }) => <Quantity value={of} kind="length" digits={1} denominator={32} />;

export const grooveShowsGuesses: Readonly<Record<string, GuessSpec>> = {
  'corner-hole': {
    type: 'pick',
    label: 'Where will holes show?',
    event: 'Run the groove through',
    options: {
      none: 'nowhere',
      finger: 'left: finger at the lower edge',
      socket: 'right: socket at the lower edge',
      both: 'in both',
    },
    option: CornerPick,
    truth: trueHoles,
    answer: (v) => {
      const found = trueHoles(v);
      return found === 'both'
        ? 'Holes show in both: the groove runs from one finger into the next.'
        : `A hole shows in the walls with a ${found} at the lower edge, so the others need a stopped groove.`;
    },
  },
  'groove-stop': {
    type: 'number',
    label: 'groove stops from the end by',
    event: 'Lay the bottom in',
    field: { kind: 'length', step: 0.5, inchStep: INCH / 32, digits: 1, ...stopRange },
    pins: (system) =>
      system === 'mm' ? { wall: 10, grooveDepth: 4 } : { wall: (3 / 8) * INCH, grooveDepth: (5 / 32) * INCH },
    figure: StopGuess,
    frame: stopFrame,
    start: () => 0,
    truth: (v) => v.grooveStop,
    controls: ['grooveDepth'],
    answer: (v) => (
      <>
        <Length of={v.grooveStop} />: the neighbor covers a wall’s thickness, and the bottom reaches{' '}
        <Length of={v.grooveDepth} /> into it.
      </>
    ),
  },
  'saw-arc': {
    type: 'number',
    label: 'runs out over',
    event: 'Stop the saw',
    field: { kind: 'length', step: 1, inchStep: INCH / 16, digits: 0, ...runRange },
    pins: (system) =>
      system === 'mm' ? { wall: 10, grooveDepth: 4 } : { wall: (3 / 8) * INCH, grooveDepth: (5 / 32) * INCH },
    figure: ArcGuess,
    frame: runFrame,
    start: () => 0,
    truth: runOf,
    controls: ['grooveDepth'],
    answer: (v, system) => (
      <>
        <Length of={runOf(v, system)} />: a large circle meets the wood at a shallow angle, so a saw cannot
        stop short of a corner.
      </>
    ),
  },
  'front-hole': {
    type: 'pick',
    label: 'Which front leaves a hole above it?',
    event: 'Saw the front down',
    pins: (system) =>
      system === 'mm'
        ? { fingerWidth: 9, wall: 9, joint: 'finger' }
        : { fingerWidth: (3 / 8) * INCH, wall: (3 / 8) * INCH, joint: 'finger' },
    options: {
      whole: 'ends with one of its own fingers',
      side: 'ends inside a finger of the side',
      own: 'ends inside one of its own fingers',
    },
    option: FrontPick,
    truth: showsHole,
    answer: (v) => (
      <>
        The one that ends inside its own finger: the socket for it is cut already, and{' '}
        <Length of={holeOf(v, showsHole(v))} /> of it stay open.
      </>
    ),
  },
};

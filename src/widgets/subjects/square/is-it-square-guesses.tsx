/** Guesses of the lesson on squareness. */

import type { Box } from '../../../box/subjects/inputs.ts';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { EqualPick, leanOf, stillLeans } from '../../../figures/square/EqualPick.tsx';
import { ShiftGuess, shiftFrame, shiftRange } from '../../../figures/square/ShiftGuess.tsx';
import {
  readingFrame,
  readingOf,
  readingRange,
  WindingGuess,
} from '../../../figures/square/WindingGuess.tsx';
import { INCH, type UnitSystem } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Fine = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;
const Angle = ({ of }: { of: number }) => <Quantity value={of} kind="angle" digits={2} />;

const inside = (system: UnitSystem): Partial<Box> =>
  system === 'mm'
    ? { sizeFrom: 'inside', wantedLength: 200, wantedWidth: 120, wall: 9 }
    : { sizeFrom: 'inside', wantedLength: 8 * INCH, wantedWidth: 4.75 * INCH, wall: (3 / 8) * INCH };

export const isItSquareGuesses: Readonly<Record<string, GuessSpec>> = {
  'far-end-aside': {
    type: 'number',
    label: 'far end stands aside by',
    event: 'Lay a true square against it',
    field: { kind: 'length', step: 0.1, inchStep: INCH / 64, digits: 1, ...shiftRange },
    pins: (system) => ({ ...inside(system), diagonalsApart: system === 'mm' ? 1 : INCH / 32 }),
    figure: ShiftGuess,
    frame: shiftFrame,
    start: () => 0,
    truth: (v) => v.endShift,
    controls: ['diagonalsApart'],
    answer: (v) => (
      <>
        <Fine of={v.endShift} />: the corners are only <Angle of={v.angleOffSquare} /> off square.
      </>
    ),
  },
  'equal-and-not-square': {
    type: 'pick',
    label: 'Clamped until its diagonals are equal, which one still leans?',
    event: 'Clamp all three',
    pins: (system) => ({ ...inside(system), lengthError: system === 'mm' ? 0.5 : INCH / 64 }),
    options: {
      leaning: 'opposite walls equal, but leaning',
      one: 'one long wall too long',
      both: 'both long walls too long, alike',
    },
    option: EqualPick,
    truth: stillLeans,
    answer: (v) => (
      <>
        The one with one long wall too long. A difference of <Fine of={v.wallsApart} /> leaves each end
        leaning by <Angle of={leanOf(v, 'one')} />, and the diagonals say nothing of it.
      </>
    ),
  },
  'winding-sticks': {
    type: 'number',
    label: 'far tip above the near one',
    event: 'Lay the far stick on',
    field: { kind: 'length', step: 0.1, inchStep: INCH / 64, digits: 1, ...readingRange },
    pins: (system) => ({
      sizeFrom: 'outside',
      ...(system === 'mm'
        ? { wantedLength: 200, wantedWidth: 120, rock: 0.4 }
        : { wantedLength: 8 * INCH, wantedWidth: 4.75 * INCH, rock: INCH / 64 }),
    }),
    figure: WindingGuess,
    frame: readingFrame,
    start: () => 0,
    truth: readingOf,
    controls: ['rock'],
    answer: (v, system) => (
      <>
        <Fine of={readingOf(v, system)} />: the sticks are longer than the box is wide, and show its rock of{' '}
        <Fine of={v.rock} /> by as much larger.
      </>
    ),
  },
};

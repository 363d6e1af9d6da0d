/** Guesses of the lesson on thickness from thickness. */
import {
  damper,
  FreshLeaves,
  FreshPick,
  freshHollow,
  freshOption,
} from '../../../figures/board/FreshFaces.tsx';
import { ResawGuess, thickFrame, thickRange } from '../../../figures/board/ResawGuess.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

export const thicknessFromThicknessGuesses: Readonly<Record<string, GuessSpec>> = {
  'board-for-two': {
    type: 'number',
    label: 'thickness of the board',
    event: 'Put the board back together',
    field: { kind: 'length', step: 0.5, inchStep: INCH / 32, digits: 1, ...thickRange },
    pins: (system) =>
      system === 'mm'
        ? { wall: 8, kerf: 3, planing: 1 }
        : { wall: (5 / 16) * INCH, kerf: INCH / 8, planing: INCH / 32 },
    figure: ResawGuess,
    frame: thickFrame,
    start: (v) => 2 * v.wall,
    truth: (v) => v.pairThickness,
    controls: ['planing'],
    answer: (v) => (
      <>
        Two walls of <Quantity value={v.wall} kind="length" /> need a board{' '}
        <Quantity value={v.pairThickness} kind="length" /> thick: one saw cut and four faces to clean up.
      </>
    ),
  },
  'fresh-faces': {
    type: 'pick',
    label: 'Dry all through, they look like this:',
    event: 'Let them dry',
    figure: FreshLeaves,
    options: { lens: 'fresh faces hollow', flat: 'both flat', waist: 'outer faces hollow' },
    option: FreshPick,
    truth: freshOption,
    controls: ['species'],
    answer: (v) => (
      <>
        The fresh faces go hollow, by <Quantity value={freshHollow(v)} kind="length" as="fine" /> each: they
        had {damper} points more to lose.
      </>
    ),
  },
};

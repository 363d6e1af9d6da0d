/** Guesses of the lesson on reading the board. */
import { barkHollow, CupPick, cupOption, StripInLog } from '../../../figures/board/CupPick.tsx';
import { ArchedFace, EndPick, facedBoard } from '../../../figures/board/EndPick.tsx';
import { depthFrame, depthRange, panelCup, ThickerCup } from '../../../figures/board/ThickerCup.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Fine = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;

export const readingTheBoardGuesses: Readonly<Record<string, GuessSpec>> = {
  'end-of-a-face': {
    type: 'pick',
    label: 'Which end belongs to this face?',
    event: 'Turn the board',
    figure: ArchedFace,
    options: { upright: 'rings upright', slant: 'rings at a slant', flat: 'rings along the face' },
    option: EndPick,
    truth: () => facedBoard,
    answer: () => 'Its rings lie along the face: the face just shaves them, and each shows as an arch.',
  },
  'hollow-side': {
    type: 'pick',
    label: 'Bark side up, it dries. What does it do?',
    event: 'Let it dry',
    figure: StripInLog,
    options: { crowned: 'its middle rises', flat: 'it stays flat', hollow: 'its middle sinks' },
    option: CupPick,
    truth: cupOption,
    controls: ['species'],
    answer: (v) => (
      <>
        The side toward the bark goes hollow, by <Fine of={barkHollow(v)} /> in this strip.
      </>
    ),
  },
  'thicker-cup': {
    type: 'number',
    label: 'depth of the hollow',
    event: 'Let one face get damp',
    field: { kind: 'length', step: 0.1, inchStep: INCH / 64, digits: 1, ...depthRange },
    figure: ThickerCup,
    frame: depthFrame,
    start: () => 0,
    truth: (v, system) => panelCup(v, system, 2),
    answer: (v, system) => (
      <>
        The thick panel goes hollow by <Fine of={panelCup(v, system, 2)} />, the thin one by{' '}
        <Fine of={panelCup(v, system, 1)} />.
      </>
    ),
  },
};

/** Guesses of the lesson on surfaces: a rim on the plate, scratches, a film in a fit, and how much finish a box takes. */
import type { Box } from '../../../box/subjects/inputs.ts';
import { LEAST_SLIP } from '../../../calc/finish/coats.ts';
import { FinishGlass, glassFrame, glassRange } from '../../../figures/finish/FinishGlass.tsx';
import { RimGuess, rimFrame, rimRange } from '../../../figures/finish/RimGuess.tsx';
import { CoarseFace, papers, ScratchPick, scratchesLeft } from '../../../figures/finish/ScratchPick.tsx';
import { filmTaken, TongueFilm } from '../../../figures/finish/TongueFilm.tsx';
import { filmFrame, filmRange } from '../../../figures/finish/TongueInGroove.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH, type UnitSystem } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Exact = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="exact" />;

/** A box for a hand, with a rock that is measured by slips of paper. */
const rocking = (system: UnitSystem): Partial<Box> => ({
  sizeFrom: 'outside',
  ...(system === 'mm'
    ? { wantedLength: 200, wantedWidth: 120, rock: 0.4 }
    : { wantedLength: 8 * INCH, wantedWidth: 4.75 * INCH, rock: INCH / 64 }),
});

const coat = { kind: 'length', step: 0.01, inchStep: INCH / 1000, digits: 2 } as const;

export const flatSmoothAndKindGuesses: Readonly<Record<string, GuessSpec>> = {
  'rim-on-the-plate': {
    type: 'number',
    label: 'comes off the third corner',
    event: 'Rub it flat',
    field: { ...coat, ...rimRange },
    pins: rocking,
    figure: RimGuess,
    frame: rimFrame,
    start: () => 0,
    truth: (v) => v.rimLoss,
    controls: ['rock'],
    answer: (v) => (
      <>
        <Exact of={v.rimLoss} />, half of the rock of <Exact of={v.rock} />. The first corner loses as much,
        the two others nothing.
      </>
    ),
  },
  'fine-after-coarse': {
    type: 'pick',
    label: `After a few minutes with ${papers.fine}, it looks like`,
    event: 'Wipe off the dust',
    figure: CoarseFace,
    options: {
      smooth: 'no scratch left',
      fine: 'fine scratches only',
      deep: 'fine ones, and floors of coarse ones',
    },
    option: ScratchPick,
    truth: scratchesLeft,
    answer: () =>
      `The peaks are gone and the floors of the ${papers.coarse} scratches are left. Bare, the even sheen hides them; the first coat shows them.`,
  },
  'film-in-the-fit': {
    type: 'number',
    label: 'taken by three coats',
    event: 'Let three coats dry',
    field: { ...coat, ...filmRange },
    figure: TongueFilm,
    frame: filmFrame,
    start: () => 0,
    truth: filmTaken,
    answer: (v) => (
      <>
        <Exact of={filmTaken()} />, and <Exact of={v.tongueSlipCoated} /> of play is left, where{' '}
        <Exact of={LEAST_SLIP} /> is the least that makers leave.
      </>
    ),
  },
  'finish-in-a-glass': {
    type: 'number',
    label: 'three coats take',
    event: 'Pour it out',
    field: { kind: 'volume', step: 1000, inchStep: INCH ** 3 / 4, digits: 0, ...glassRange },
    figure: FinishGlass,
    frame: glassFrame,
    start: () => 0,
    truth: (v) => v.outsideFinish,
    answer: (v) => (
      <>
        <Quantity value={v.outsideFinish} kind="volume" digits={1} /> for{' '}
        <Quantity value={v.outsideArea} kind="area" digits={0} /> of wood.
      </>
    ),
  },
};

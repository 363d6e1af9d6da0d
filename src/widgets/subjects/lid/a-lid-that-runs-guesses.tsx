/** Guesses of the lesson on sliding lids. */
import { changeByCoefficient } from '../../../calc/movement/movement.ts';
import { CreptGuess, creptFrame, creptRange, depthNeeded, toHold } from '../../../figures/lid/CreptGuess.tsx';
import { FitGuess, fitFrame, fitRange, toRun } from '../../../figures/lid/FitGuess.tsx';
import {
  PressGuess,
  pressFrame,
  pressOf,
  pressRange,
  pull,
  rubOf,
} from '../../../figures/lid/PressGuess.tsx';
import { differs, leastStrained, StripPick } from '../../../figures/lid/StripPick.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Fine = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;
const Force = ({ of }: { of: number }) => <Quantity value={of} kind="force" digits={1} />;
/** Marks of small lengths, in both units. */
const small = { kind: 'length', step: 0.1, inchStep: INCH / 64, digits: 2 } as const;

export const lidThatRunsGuesses: Readonly<Record<string, GuessSpec>> = {
  'fitted-in-dry-air': {
    type: 'number',
    label: 'play to leave',
    event: 'Wait for the damp',
    field: { ...small, ...fitRange },
    pins: () => ({ humidityToday: 40, humidityDamp: 60, ringAngle: 0 }),
    figure: FitGuess,
    frame: fitFrame,
    start: () => toRun,
    truth: (v) => v.lidPlayNeeded,
    controls: ['humidityToday'],
    answer: (v) => (
      <>
        <Fine of={v.lidPlayNeeded} />: what it will still grow, and <Fine of={toRun} /> to run.
      </>
    ),
  },
  'groove-for-a-lid': {
    type: 'number',
    label: 'depth of the groove',
    event: 'Push it aside',
    field: { ...small, ...creptRange },
    pins: () => ({ humidityToday: 40, humidityDamp: 60, humidityDry: 30, ringAngle: 0 }),
    figure: CreptGuess,
    frame: creptFrame,
    start: () => toHold.mm,
    truth: depthNeeded,
    controls: ['ringAngle'],
    answer: (v, system) => (
      <>
        <Fine of={depthNeeded(v, system)} />: the <Fine of={toHold[system]} /> that are held, and all the play
        of the driest day, <Fine of={v.lidPlayDry} />.
      </>
    ),
  },
  'side-press': {
    type: 'number',
    label: 'force on each side',
    event: 'Pull',
    field: { kind: 'force', step: 0.5, digits: 1, ...pressRange },
    pins: (system) =>
      system === 'mm'
        ? { sizeFrom: 'inside', wantedLength: 80, wantedWidth: 100, pullOffset: 45 }
        : {
            sizeFrom: 'inside',
            wantedLength: 3.25 * INCH,
            wantedWidth: 4 * INCH,
            pullOffset: 1.75 * INCH,
          },
    figure: PressGuess,
    frame: pressFrame,
    start: () => 0,
    truth: pressOf,
    controls: ['pullOffset'],
    answer: (v) => (
      <>
        Each side is pressed with <Force of={pressOf(v)} />.{' '}
        {rubOf(v) >= pull ? (
          <>
            Both together rub with <Force of={rubOf(v)} />, more than the pull: it jams.
          </>
        ) : (
          <>
            Both together rub with <Force of={rubOf(v)} />, so <Force of={pull - rubOf(v)} /> of the pull are
            left to move the lid.
          </>
        )}
      </>
    ),
  },
  'strip-glued': {
    type: 'pick',
    label: 'Where must the glue bridge least?',
    event: 'Let August come',
    pins: () => ({ humidityToday: 40, humidityDamp: 60, ringAngle: 0 }),
    options: { whole: 'all along', ends: 'at both ends', middle: 'in its middle third' },
    option: StripPick,
    truth: leastStrained,
    answer: (v) => (
      <>
        In its middle third: <Fine of={differs(v, 'middle')} /> at each end, against{' '}
        <Fine of={differs(v, 'whole')} /> all along and as much at both ends (hatched, drawn larger). The
        other way, along the lid, the strip itself grows by{' '}
        <Fine
          of={changeByCoefficient.compute({
            D: v.pullThickness,
            C: v.movementUp,
            M_i: v.moistureToday,
            M_f: v.moistureDamp,
          })}
        />{' '}
        at a thickness of <Quantity value={v.pullThickness} kind="length" as="size" />.
      </>
    ),
  },
};

/** Guesses of the lesson on the years after. */
import { DriedGuess, driedFrame, driedRange, givenBack } from '../../../figures/movement/DriedGuess.tsx';
import { MovedGuess, movedFrame, movedRange, shrinksBy } from '../../../figures/movement/MovedGuess.tsx';
import { bestPlaned, PlanedPick, planedTo, playsOf } from '../../../figures/movement/PlanedPick.tsx';
import {
  ThicknessGuess,
  thickFrame,
  thickRange,
  widthOverYear,
} from '../../../figures/movement/ThicknessGuess.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';
import { Fine, smallLength } from './august/lid-august.tsx';

export const tenYearsGuesses: Readonly<Record<string, GuessSpec>> = {
  'dried-first': {
    type: 'number',
    label: 'play once it has dried',
    event: 'Let it dry',
    field: { ...smallLength, ...driedRange },
    // Today is the dampest day, and the lid has no play at all.
    pins: () => ({ humidityToday: 60, humidityDamp: 60, humidityDry: 42, lidPlay: 0, ringAngle: 0 }),
    figure: DriedGuess,
    frame: driedFrame,
    start: () => 0,
    truth: givenBack,
    controls: ['ringAngle'],
    answer: (v) => (
      <>
        <Fine of={givenBack(v)} /> of play, and not a shaving was taken off.
      </>
    ),
  },
  'planed-when': {
    type: 'pick',
    label: 'Which of them runs all year, and is least loose in winter?',
    event: 'Let a year go by',
    pins: () => ({ humidityToday: 45, humidityDamp: 60, humidityDry: 30, ringAngle: 0 }),
    options: {
      driest: 'in the driest week',
      between: 'at 45 %, in between',
      dampest: 'in the dampest week',
    },
    option: PlanedPick,
    truth: bestPlaned,
    answer: (v) => (
      <>
        The one planed at 45 %: <Fine of={playsOf(v, 'between').damp} /> of play on the dampest day (second
        row), <Fine of={playsOf(v, 'between').dry} /> on the driest (third row). Planed in the driest week to
        the same <Fine of={planedTo(v)} />, it lacks <Fine of={-playsOf(v, 'driest').damp} /> in August;
        planed in the dampest, it has <Fine of={playsOf(v, 'dampest').dry} /> in winter.
      </>
    ),
  },
  'thickness-year': {
    type: 'number',
    label: 'thicker by',
    event: 'Let a year go by',
    field: { kind: 'length', step: 0.02, inchStep: INCH / 1000, digits: 2, ...thickRange },
    pins: (system) => ({
      humidityToday: 45,
      humidityDamp: 60,
      humidityDry: 30,
      ringAngle: 0,
      lidThickness: system === 'mm' ? 6 : INCH / 4,
    }),
    figure: ThicknessGuess,
    frame: thickFrame,
    start: widthOverYear,
    truth: (v) => v.lidThicknessYear,
    controls: ['lidThickness'],
    answer: (v) => (
      <>
        <Fine of={v.lidThicknessYear} />, for a thickness of{' '}
        <Quantity value={v.lidTongue} kind="length" digits={1} />. The width moves{' '}
        <Quantity value={widthOverYear(v) / v.lidThicknessYear} kind="number" digits={0} /> times as much.
      </>
    ),
  },
  'bottom-moved': {
    type: 'number',
    label: 'narrower by',
    event: 'Move house',
    field: { ...smallLength, ...movedRange },
    pins: (system) => ({
      species: 'commercial-red-oak',
      ringAngle: 0,
      temperature: 21,
      humidityToday: 60,
      humidityDamp: 60,
      humidityDry: 29,
      sizeFrom: 'inside',
      ...(system === 'mm'
        ? { wantedWidth: 192, grooveDepth: 5, bottomGap: 1, wall: 10 }
        : {
            wantedWidth: 7.6875 * INCH,
            grooveDepth: (3 / 16) * INCH,
            bottomGap: INCH / 32,
            wall: (3 / 8) * INCH,
          }),
    }),
    figure: MovedGuess,
    frame: movedFrame,
    start: () => 0,
    truth: shrinksBy,
    controls: ['humidityDry'],
    answer: (v) =>
      v.bottomEngagementCrept > 0 ? (
        <>
          It shrinks by <Fine of={shrinksBy(v)} />, and <Fine of={v.bottomEngagementCrept} /> are still held
          here.
        </>
      ) : (
        <>
          It shrinks by <Fine of={shrinksBy(v)} />: at this side nothing is held any more. In the middle, each
          side would hold <Fine of={v.bottomEngagement} />.
        </>
      ),
  },
};

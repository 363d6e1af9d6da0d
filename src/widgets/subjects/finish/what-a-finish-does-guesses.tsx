/** Guesses of the lesson on finishes: all about three coats of urethane varnish. */
import { varnishedYear } from '../../../box/subjects/finish/varnished-year.ts';
import type { MovementValues } from '../../../box/subjects/movement/results.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { KeptOut, keptOutAfter, keptOutFrame, keptOutRange } from '../../../figures/finish/KeptOut.tsx';
import { bowsOf, bowTimes, LidBows, mostBowed } from '../../../figures/finish/LidBows.tsx';
import { SwingLeft, swingFrame, swingRange } from '../../../figures/finish/SwingLeft.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Fine = ({ of }: { of: number }) => <Quantity value={Math.abs(of)} kind="length" as="fine" />;
const Percent = ({ of }: { of: number }) => <Quantity value={of} kind="percent" digits={0} />;

/** What is left of the swing, %, and how many days later it comes. */
function leftOf(v: MovementValues) {
  const year = varnishedYear(v);
  return isRefused(year) ? { left: Number.NaN, later: Number.NaN } : year;
}

/** A lid whose thickness is told in the text. */
const lidThick = (mm: number, inch: number) => (system: 'mm' | 'inch') => ({
  lidThickness: system === 'mm' ? mm : inch * INCH,
});

export const whatAFinishDoesGuesses: Readonly<Record<string, GuessSpec>> = {
  'kept-out': {
    type: 'number',
    label: 'kept out after 14 days',
    event: 'Let two weeks pass',
    field: { kind: 'percent', step: 1, digits: 0, ...keptOutRange },
    figure: KeptOut,
    frame: keptOutFrame,
    start: () => keptOutAfter(1),
    truth: () => keptOutAfter(14),
    answer: () => (
      <>
        The varnish kept out <Percent of={keptOutAfter(7)} /> after a week and{' '}
        <Percent of={keptOutAfter(14)} /> after two.
      </>
    ),
  },
  'year-behind-varnish': {
    type: 'number',
    label: 'left of the swing',
    event: 'Let a year pass',
    field: { kind: 'percent', step: 1, digits: 0, ...swingRange },
    pins: lidThick(6, 1 / 4),
    figure: SwingLeft,
    frame: swingFrame,
    start: () => 0,
    truth: (v) => leftOf(v).left,
    controls: ['lidThickness'],
    answer: (v) => (
      <>
        The varnished lid still makes <Percent of={leftOf(v).left} /> of the swing, about{' '}
        <Quantity value={leftOf(v).later} kind="days" digits={0} /> later.
      </>
    ),
  },
  'face-that-bows': {
    type: 'pick',
    label: 'Which lid bows most?',
    event: 'Let it get damp',
    options: {
      both: 'open, both faces',
      outer: 'open, outer face',
      shutBare: 'shut box, bare',
      shutOuter: 'shut box, outer face',
    },
    option: LidBows,
    truth: mostBowed,
    controls: ['lidThickness'],
    answer: (v) => {
      const bows = bowsOf(v);
      return (
        <>
          Bare on a shut box the lid crowns by <Fine of={bows.shutBare!} />, with varnish outside by{' '}
          <Fine of={bows.shutOuter!} />. Lying open with one face varnished it goes hollow by{' '}
          <Fine of={bows.outer!} />, with both it stays flat. All are drawn {bowTimes} times too far.
        </>
      );
    },
  },
};

/** Guesses of the lesson on a year of a panel, all in the air of a heated house. */
import { heatedLife, heatedYear } from '../../../box/subjects/movement/heated-year.ts';
import { DAYS_IN_YEAR, dateOf } from '../../../calc/air/year.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { BehindAir, behindFrame, behindRange } from '../../../figures/movement/BehindAir.tsx';
import { FittedWhen, fittings, lidFitted, tightest } from '../../../figures/movement/FittedWhen.tsx';
import { fittedDay, GrownBy, grownFrame, grownRange } from '../../../figures/movement/GrownBy.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Fine = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;
const days = (value: number) => Math.max(1, Math.round(value));
const fitted = (option: string) => dateOf(fittings[option]!);

export const aYearOfAPanelGuesses: Readonly<Record<string, GuessSpec>> = {
  'behind-the-air': {
    type: 'number',
    label: 'behind the air',
    event: 'Let the year pass',
    field: { kind: 'days', step: 1, digits: 0, ...behindRange },
    figure: BehindAir,
    frame: behindFrame,
    start: () => 0,
    truth: (v) => {
      const year = heatedYear(v, 'bottom');
      return isRefused(year) ? Number.NaN : year.behind;
    },
    controls: ['bottomThickness'],
    answer: (v) => {
      const year = heatedYear(v, 'bottom');
      if (isRefused(year)) return year.refused;
      const [slow, fast] = year.lag;
      return (
        <>
          The bottom follows about <Quantity value={year.behind} kind="days" digits={0} /> behind, somewhere
          between {days(fast)} and {days(slow)}, and is dampest around {dateOf(year.dampestDay)}.
        </>
      );
    },
  },
  'grown-by-august': {
    type: 'number',
    label: 'wider by',
    event: 'Let August come',
    field: { kind: 'length', step: 0.1, inchStep: INCH / 64, digits: 2, ...grownRange },
    // A gap that is small for a box fitted in winter.
    pins: (system) => ({ bottomGap: system === 'mm' ? 0.4 : INCH / 64 }),
    figure: GrownBy,
    frame: grownFrame,
    start: () => 0,
    truth: (v) => {
      const life = heatedLife(v, 'bottom', fittedDay);
      return isRefused(life) ? Number.NaN : life.grows;
    },
    controls: ['bottomGap'],
    answer: (v) => {
      const life = heatedLife(v, 'bottom', fittedDay);
      if (isRefused(life)) return life.refused;
      return (
        <>
          It gets <Fine of={life.grows} /> wider.{' '}
          {life.jams === undefined ? (
            <>
              <Fine of={life.fitted} /> of play were left, so it stays free.
            </>
          ) : (
            <>
              Only <Fine of={life.fitted} /> of play were left, so it jams from{' '}
              {dateOf((fittedDay + life.jams) % DAYS_IN_YEAR)} on.
            </>
          )}
        </>
      );
    },
  },
  'fitted-when': {
    type: 'pick',
    label: 'All have the same play. Which one jams?',
    event: 'Let a year pass',
    pins: (system) => ({ lidPlay: system === 'mm' ? 0.8 : INCH / 32 }),
    options: { february: fitted('february'), may: fitted('may'), august: fitted('august') },
    option: FittedWhen,
    truth: tightest,
    controls: ['lidPlay'],
    answer: (v) => {
      const [winter, summer] = [lidFitted(v, 'february'), lidFitted(v, 'august')];
      if (isRefused(winter)) return winter.refused;
      if (isRefused(summer)) return summer.refused;
      return (
        <>
          Fitted on {fitted('february')} the lid gets <Fine of={winter.grows} /> wider; its play of{' '}
          <Fine of={winter.fitted} /> {winter.jams === undefined ? 'is enough' : 'is too little'}. Fitted on{' '}
          {fitted('august')} it would need <Fine of={summer.playToLeave} />, just enough to run.
        </>
      );
    },
  },
};

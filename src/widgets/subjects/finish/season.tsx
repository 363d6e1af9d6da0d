/** What a finish leaves of a day's, a week's and a year's swing of the air. */
import type { InputsOf } from '../../../box/core/field.ts';
import { length } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { diffusionOf } from '../../../box/subjects/air/wait.ts';
import type { MovementValues } from '../../../box/subjects/movement/results.ts';
import type { DiffusionRange } from '../../../calc/air/diffusion-coefficient.ts';
import { waveKept } from '../../../calc/air/diffusion-series.ts';
import { seasonKept } from '../../../calc/air/film-times.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { finishes, ROOM_SURFACE, surfaceUnderFinish } from '../../../calc/finish/finish.ts';
import { type Kept, SwingKept } from '../../../figures/finish/SwingKept.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import { lab } from '../../lesson/lab-spec.ts';
import { oneFinish } from './choice.ts';

/** Days. */
const YEAR = 365;

const swings = [
  { word: 'a day and night', period: 1 },
  { word: 'a dry and a damp week', period: 14 },
  { word: 'a year', period: YEAR },
] as const;

const own = {
  partThickness: length('thickness of the part', {
    low: 3,
    high: 25,
    step: 0.5,
    inchStep: INCH / 16,
    start: 6,
  }),
  finish: oneFinish('finish on both faces'),
};
type V = MovementValues & InputsOf<typeof own>;

const finished = (v: V) =>
  surfaceUnderFinish.compute({ S_air: ROOM_SURFACE, r: finishes[Number(v.finish)]!.resistance });

/** What each swing leaves of itself, %, bare and finished, for the range of what is known of the wood. */
function keptOf(v: V, D: DiffusionRange) {
  const kept = (diffusion: number, surface: number, period: number) => {
    const wave = waveKept({ thickness: v.partThickness, diffusion, surface }, period);
    return isRefused(wave) ? 0 : 100 * wave.kept;
  };
  const range = (surface: number, period: number): Kept => ({
    low: kept(D.low, surface, period),
    middle: kept(D.middle, surface, period),
    high: kept(D.high, surface, period),
  });
  const rows = swings.map(({ word, period }) => ({
    word,
    bare: range(ROOM_SURFACE, period),
    finished: range(finished(v), period),
  }));
  return { rows, yearly: v.bottomSwelling - v.bottomShrinking };
}

const row = rowsOf<V>();
const share = (label: string, surface: (v: V) => number) =>
  row(
    seasonKept,
    (v) => {
      const D = diffusionOf(v, v.moistureToday);
      return { T: v.partThickness, D: isRefused(D) ? Number.NaN : D.middle, P: YEAR, S: surface(v) };
    },
    { label, kind: 'percent', digits: 0, rule: 'finish-slows-does-not-stop' },
  );
const Percent = ({ of }: { of: number }) => <Quantity value={of} kind="percent" digits={0} />;

export const seasonLab = lab({
  title: 'What is left of the swing',
  own,
  controls: ['partThickness', 'finish'],
  more: ['species', 'humidityDry', 'humidityDamp'],
  solve: (v) => {
    const D = diffusionOf(v, v.moistureToday);
    return isRefused(D) ? D : keptOf(v, D);
  },
  figure: ({ values: { rows } }) => <SwingKept swings={rows} />,
  says: ({ rows: [day, , year], yearly }) => (
    <>
      The finish takes a day’s swing from <Percent of={day!.bare.middle} /> down to{' '}
      <Percent of={day!.finished.middle} />, and leaves <Percent of={year!.finished.middle} /> of the year’s.{' '}
      {Number.isFinite(yearly) && (
        <>
          Bare, the bottom of your box moves <Quantity value={yearly} kind="length" as="fine" /> in a year; a
          bottom of this thickness, finished, still{' '}
          <Quantity value={(yearly * year!.finished.middle) / year!.bare.middle} kind="length" as="fine" />.
        </>
      )}
    </>
  ),
  results: [
    share('share of the yearly swing kept, bare', () => ROOM_SURFACE),
    share('share of the yearly swing kept, finished', finished),
  ],
});

/** Wood that comes from other air: how many days until it has arrived, and what the scales say meanwhile. */
import type { InputsOf } from '../../../box/core/field.ts';
import { count, length, number } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { diffusionOf, type WaitValues } from '../../../box/subjects/air/wait.ts';
import { readyByWeighing, WEIGHING } from '../../../calc/air/acclimatize.ts';
import { moistureCourse } from '../../../calc/air/diffusion.ts';
import type { DiffusionRange } from '../../../calc/air/diffusion-coefficient.ts';
import { halfTime } from '../../../calc/air/diffusion-series.ts';
import { ninetyTimeBehindFilm } from '../../../calc/air/film-times.ts';
import { ROOM_SURFACE } from '../../../calc/air/slab.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { BoardStack } from '../../../figures/air/BoardStack.tsx';
import { WaitCourse } from '../../../figures/air/WaitCourse.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import { lab } from '../../lesson/lab-spec.ts';
import { once } from '../../lesson/once.ts';

/** Points of moisture that are no change worth waiting for. */
const SAME = 0.3;

/** Days a figure may show; the first that holds nine tenths with room to spare is taken. */
const horizons = [7, 14, 30, 60, 120, 240, 480, 960, 1920, 4000] as const;

/** Means for the range of what is known and for half the thickness, and when the weighings agree. */
function coursesOf(thickness: number, D: DiffusionRange, from: number, target: number) {
  const ninety = ninetyTimeBehindFilm.compute({ T: thickness, D: D.middle, S: ROOM_SURFACE });
  const days = horizons.find((horizon) => horizon > 1.25 * ninety) ?? 4000;
  // Short waits are followed four times a day: the solver’s day is a quarter of one. Long ones from fewer cells, so
  // that a slider stays quick.
  const every = days > 60 ? 1 : 0.25;
  const steps = { cells: days > 480 ? 16 : 32, perDay: 1 };
  const face = { surface: ROOM_SURFACE * every, moisture: () => target };
  const mean = (diffusion: number, T = thickness) => {
    const slab = { thickness: T, diffusion: diffusion * every, front: face, back: face };
    const course = moistureCourse(slab, from, days / every, 0, steps);
    return isRefused(course) ? course : course.mean;
  };
  const all = [mean(D.low), mean(D.middle), mean(D.high), mean(D.middle, thickness / 2)];
  const bad = all.find(isRefused);
  if (bad) return bad;
  const [slow, middle, fast, half] = all as Float64Array[];
  const { apart, within } = WEIGHING;
  const ready = readyByWeighing(middle!, target, { apart: apart / every, within });
  return { every, slow: slow!, middle: middle!, fast: fast!, half: half!, ninety, ready };
}

const own = {
  thickness: length('thickness of each board', {
    low: 3,
    high: 50,
    step: 1,
    inchStep: INCH / 16,
    start: 10,
  }),
  tight: count('boards that lie on each other without sticks', { low: 1, high: 4, start: 1 }),
  arrival: number('moisture of the wood when it comes', 'percent', {
    low: 4,
    high: 20,
    step: 0.5,
    digits: 1,
    start: 12,
    help: 'Ask the seller, or use a meter.',
  }),
};
type V = WaitValues & InputsOf<typeof own>;

const whole = (v: V) => v.thickness * v.tight;
/** Halfway between what the wood brings and where it goes. */
const creep = (v: V) => diffusionOf(v, (v.arrival + v.moistureToday) / 2);
const given = (v: V) => {
  const D = creep(v);
  return { T: whole(v), D: isRefused(D) ? Number.NaN : D.middle, S: ROOM_SURFACE };
};
const solve = once(
  (v: V) => [whole(v), v.specificGravity, v.arrival, v.moistureToday],
  (v: V) => {
    const D = creep(v);
    return isRefused(D) ? D : coursesOf(whole(v), D, v.arrival, v.moistureToday);
  },
);

const row = rowsOf<V>();
const line = { kind: 'days', digits: 1, rule: 'thickness-squared' } as const;
const Days = ({ of }: { of: number }) => <Quantity value={of} kind="days" digits={of < 10 ? 1 : 0} />;

export const waitLab = lab({
  title: 'Days until the wood has arrived',
  own,
  controls: ['thickness', 'tight', 'arrival'],
  more: ['humidityToday', 'species'],
  solve,
  figure: ({ values: v }) => (
    <>
      <BoardStack thickness={v.thickness} tight={v.tight} />
      <WaitCourse
        {...v}
        target={v.moistureToday}
        ready={isRefused(v.ready) ? undefined : v.ready.day * v.every}
      />
    </>
  ),
  says: ({ arrival, moistureToday, ninety, ready, every }) =>
    Math.abs(arrival - moistureToday) < SAME ? (
      'This wood is already where the air would bring it.'
    ) : (
      <>
        Nine tenths of the change take about <Days of={ninety} />, but the truth may be anything from half to
        double.{' '}
        {!isRefused(ready) && (
          <>
            Weighed every third day it seems ready on day {Math.ceil(ready.day * every)}, with{' '}
            {Math.abs(ready.left) < 0.05 ? (
              'next to nothing'
            ) : (
              <Quantity value={Math.abs(ready.left)} kind="points" digits={1} />
            )}{' '}
            still to go.
          </>
        )}
      </>
    ),
  results: [
    row(halfTime, given, { ...line, label: 'days until half of the change' }),
    row(ninetyTimeBehindFilm, given, { ...line, label: 'days until nine tenths of the change' }),
  ],
});

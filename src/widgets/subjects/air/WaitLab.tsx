/** Wood that comes from other air: how many days until it has arrived, and what the scales say meanwhile. */
import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { air } from '../../../box/subjects/air/subject.ts';
import { diffusionOf } from '../../../box/subjects/air/wait.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { readyByWeighing, WEIGHING } from '../../../calc/air/acclimatize.ts';
import { moistureCourse } from '../../../calc/air/diffusion.ts';
import type { DiffusionRange } from '../../../calc/air/diffusion-coefficient.ts';
import { halfTime } from '../../../calc/air/diffusion-series.ts';
import { ninetyTimeBehindFilm } from '../../../calc/air/film-times.ts';
import { ROOM_SURFACE } from '../../../calc/air/slab.ts';
import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import { work } from '../../../calc/core/working.ts';
import { BoardStack } from '../../../figures/air/BoardStack.tsx';
import { WaitCourse } from '../../../figures/air/WaitCourse.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { Control } from '../../kit/Control.tsx';
import { RelationLine } from '../../kit/ResultLine.tsx';
import { useStore } from '../../kit/use-store.ts';
import { LabFrame } from '../../lesson/Lab.tsx';
import { OwnNumber } from '../../lesson/OwnNumber.tsx';
import { fields } from './fields.ts';

const model = modelOf(air);

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

const Days = ({ of }: { of: number }) => <Quantity value={of} kind="days" digits={of < 10 ? 1 : 0} />;

export function WaitLab() {
  const store = useStore(model);
  const v = store.values.value;
  const units = store.units.value;
  const thickness = useSignal(10);
  const tight = useSignal(1);
  const arrival = useSignal(12);
  const target = v.moistureToday;
  const whole = thickness.value * tight.value;
  const D = diffusionOf(v, (arrival.value + target) / 2);
  const found: ReturnType<typeof coursesOf> | Refused = useMemo(
    () => (isRefused(D) ? D : coursesOf(whole, D, arrival.value, target)),
    [whole, v.specificGravity, arrival.value, target],
  );
  const given = { T: whole, D: isRefused(D) ? Number.NaN : D.middle, S: ROOM_SURFACE };
  const line = { kind: 'days', units, rule: 'thickness-squared' } as const;
  return (
    <LabFrame
      within={store.ref}
      title="Days until the wood has arrived"
      picture={
        isRefused(found) ? (
          <p class="says message" role="status">
            {found.refused}
          </p>
        ) : (
          <>
            <BoardStack thickness={thickness.value} tight={tight.value} />
            <WaitCourse
              {...found}
              target={target}
              ready={isRefused(found.ready) ? undefined : found.ready.day * found.every}
            />
            <p class="says">
              {Math.abs(arrival.value - target) < SAME ? (
                'This wood is already where the air would bring it.'
              ) : (
                <>
                  Nine tenths of the change take about <Days of={found.ninety} />, but the truth may be
                  anything from half to double.{' '}
                  {!isRefused(found.ready) && (
                    <>
                      Weighed every third day it seems ready on day {Math.ceil(found.ready.day * found.every)}
                      , with{' '}
                      {Math.abs(found.ready.left) < 0.05 ? (
                        'next to nothing'
                      ) : (
                        <Quantity value={Math.abs(found.ready.left)} kind="points" digits={1} />
                      )}{' '}
                      still to go.
                    </>
                  )}
                </>
              )}
            </p>
          </>
        )
      }
      controls={
        <>
          <OwnNumber field={fields.thickness} of={thickness} system={units} />
          <OwnNumber field={fields.tight} of={tight} system={units} />
          <OwnNumber field={fields.arrival} of={arrival} system={units} />
          <details class="more">
            <summary>more to change</summary>
            <Control name="humidityToday" store={store} />
            <Control name="species" store={store} />
          </details>
        </>
      }
      results={
        <>
          <RelationLine
            {...line}
            digits={1}
            label="days until half of the change"
            working={work(halfTime, given)}
          />
          <RelationLine
            {...line}
            digits={1}
            label="days until nine tenths of the change"
            working={work(ninetyTimeBehindFilm, given)}
          />
        </>
      }
    />
  );
}

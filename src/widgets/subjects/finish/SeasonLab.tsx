/** What a finish leaves of a day's, a week's and a year's swing of the air. */

import { useSignal } from '@preact/signals';
import type { NumberField } from '../../../box/core/field.ts';
import { diffusionOf } from '../../../box/subjects/air/wait.ts';
import { finish } from '../../../box/subjects/finish/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { waveKept } from '../../../calc/air/diffusion-series.ts';
import { seasonKept } from '../../../calc/air/film-times.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { work } from '../../../calc/core/working.ts';
import { finishes, ROOM_SURFACE, surfaceUnderFinish } from '../../../calc/finish/finish.ts';
import { type Kept, SwingKept } from '../../../figures/finish/SwingKept.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import { Control } from '../../kit/Control.tsx';
import { RelationLine } from '../../kit/ResultLine.tsx';
import { useStore } from '../../kit/use-store.ts';
import { LabFrame } from '../../lesson/Lab.tsx';
import { OwnChoice, OwnNumber } from '../../lesson/OwnNumber.tsx';
import { finishLabels, varnish } from './choice.ts';

const model = modelOf(finish);

const thicknessField: NumberField = {
  type: 'number',
  label: 'thickness of the part',
  kind: 'length',
  low: 3,
  high: 25,
  step: 0.5,
  inchStep: INCH / 16,
  digits: 1,
  denominator: 16,
};

/** Days. */
const YEAR = 365;

const swings = [
  { word: 'a day and night', period: 1 },
  { word: 'a dry and a damp week', period: 14 },
  { word: 'a year', period: YEAR },
] as const;

const Percent = ({ of }: { of: number }) => <Quantity value={of} kind="percent" digits={0} />;

export function SeasonLab() {
  const store = useStore(model);
  const v = store.values.value;
  const units = store.units.value;
  const thickness = useSignal(6);
  const finish = useSignal(varnish);
  const D = diffusionOf(v, v.moistureToday);
  const { resistance } = finishes[finish.value]!;
  const finished = surfaceUnderFinish.compute({ S_air: ROOM_SURFACE, r: resistance });
  const kept = (diffusion: number, surface: number, period: number) => {
    const wave = waveKept({ thickness: thickness.value, diffusion, surface }, period);
    return isRefused(wave) ? 0 : 100 * wave.kept;
  };
  const range = (surface: number, period: number): Kept => {
    const [low, middle, high] = isRefused(D) ? [0, 0, 0] : [D.low, D.middle, D.high];
    return {
      low: kept(low, surface, period),
      middle: kept(middle, surface, period),
      high: kept(high, surface, period),
    };
  };
  const rows = swings.map(({ word, period }) => ({
    word,
    bare: range(ROOM_SURFACE, period),
    finished: range(finished, period),
  }));
  const [day, , year] = rows;
  const yearly = v.bottomSwelling - v.bottomShrinking;
  const line = {
    kind: 'percent',
    digits: 0,

    units,
    rule: 'finish-slows-does-not-stop',
  } as const;
  const given = { T: thickness.value, D: isRefused(D) ? Number.NaN : D.middle, P: YEAR };
  return (
    <LabFrame
      within={store.ref}
      title="What is left of the swing"
      picture={
        isRefused(D) ? (
          <p class="says message" role="status">
            {D.refused}
          </p>
        ) : (
          <>
            <SwingKept swings={rows} />
            <p class="says">
              The finish takes a day’s swing from <Percent of={day!.bare.middle} /> down to{' '}
              <Percent of={day!.finished.middle} />, and leaves <Percent of={year!.finished.middle} /> of the
              year’s.{' '}
              {Number.isFinite(yearly) && (
                <>
                  Bare, the bottom of your box moves <Quantity value={yearly} kind="length" digits={2} /> in a
                  year; a bottom of this thickness, finished, still{' '}
                  <Quantity
                    value={(yearly * year!.finished.middle) / year!.bare.middle}
                    kind="length"
                    digits={2}
                  />
                  .
                </>
              )}
            </p>
          </>
        )
      }
      controls={
        <>
          <OwnNumber field={thicknessField} of={thickness} system={units} />
          <OwnChoice label="finish on both faces" options={finishLabels} of={finish} />
          <details class="more">
            <summary>more to change</summary>
            <Control name="species" store={store} />
            <Control name="humidityDry" store={store} />
            <Control name="humidityDamp" store={store} />
          </details>
        </>
      }
      results={
        <>
          <RelationLine
            {...line}
            label="share of the yearly swing kept, bare"
            working={work(seasonKept, { ...given, S: ROOM_SURFACE })}
          />
          <RelationLine
            {...line}
            label="share of the yearly swing kept, finished"
            working={work(seasonKept, { ...given, S: finished })}
          />
        </>
      }
    />
  );
}

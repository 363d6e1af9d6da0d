/** Labs of the lesson on air and wood. */

import { air } from '../../../box/subjects/air/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { heatedHumidity } from '../../../calc/air/air.ts';
import { halfTime } from '../../../calc/air/diffusion-series.ts';
import { ninetyTimeBehindFilm } from '../../../calc/air/film-times.ts';
import { equilibriumMoisture, moistureInAir, moistureOfAir } from '../../../calc/air/moisture.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { MoistureCurve } from '../../../figures/air/MoistureCurve.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { LabSpec, OwnLabSpec } from '../../lesson/Lab.tsx';
import { islandOf } from '../../lesson/lesson.tsx';
import { HeatedLab } from './HeatedLab.tsx';
import { WaitLab } from './WaitLab.tsx';

/** Degrees by which the sentence warms the air, to show how little it matters. */
const WARMER = 10;

const labs: Record<string, LabSpec | OwnLabSpec> = {
  curve: {
    title: 'What wood makes of the air',
    figure: MoistureCurve,
    controls: ['humidityDry', 'humidityToday', 'humidityDamp'],
    more: ['temperature'],
    results: ['moistureDry', 'moistureToday', 'moistureDamp'],
    says: (v) => {
      const today = moistureInAir(v.temperature, v.humidityToday);
      if (isRefused(today)) return today.refused;
      const warmer = equilibriumMoisture(v.temperature + WARMER, v.humidityToday) - today.moisture;
      return (
        <>
          Today’s air brings thin wood to <Quantity value={today.moisture} kind="percent" /> moisture; over
          the year it swings by <Quantity value={v.moistureDamp - v.moistureDry} kind="points" digits={1} />.
          Air {WARMER} °C (18 °F) warmer, at the same humidity, would change today’s figure by{' '}
          <Quantity value={Math.abs(warmer)} kind="points" digits={1} />.
        </>
      );
    },
  },
  heated: { own: HeatedLab, relations: [heatedHumidity, moistureOfAir] },
  wait: { own: WaitLab, relations: [halfTime, ninetyTimeBehindFilm] },
};

export const lesson = { labs, model: modelOf(air) };
export default islandOf(lesson);

/** Labs of the lesson on air and wood. */

import { air } from '../../../box/subjects/air/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { equilibriumMoisture, moistureInAir } from '../../../calc/air/moisture.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { MoistureCurve } from '../../../figures/air/MoistureCurve.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { airAndWoodGuesses } from './air-and-wood-guesses.tsx';
import { heatedLab } from './heated.tsx';
import { waitLab } from './wait.tsx';

/** Degrees by which the sentence warms the air, to show how little it matters. */
const WARMER = 10;

const labs: Record<string, LabSpec> = {
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
  heated: heatedLab,
  wait: waitLab,
};

export const lesson = { labs, guesses: airAndWoodGuesses, model: modelOf(air) };
export default islandOf(lesson);

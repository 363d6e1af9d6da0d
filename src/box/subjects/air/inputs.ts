/** The air where the wood lies, today and through its year: °C, % relative humidity. */
import { number } from '../../core/inputs.ts';

/** Said beside both fields, and by the verdict on them. */
export const DRY_ABOVE_DAMP =
  'The driest time of the year is damper than the dampest: swap the two, since the gaps are reckoned for the wider swing.';

const humidity = { low: 5, high: 95, step: 1 } as const;

export const airInputs = {
  temperature: number('temperature', 'temperature', { low: 0, high: 40, step: 1, start: 20 }),
  humidityToday: number('humidity today', 'percent', {
    ...humidity,
    start: 45,
    help: 'Relative humidity where the wood lies now.',
  }),
  /** At the driest and the dampest time of its year. */
  humidityDry: number('humidity at the driest', 'percent', {
    ...humidity,
    start: 30,
    notAbove: ['humidityDamp', DRY_ABOVE_DAMP],
  }),
  humidityDamp: number('humidity at the dampest', 'percent', {
    ...humidity,
    start: 60,
    notBelow: ['humidityDry', DRY_ABOVE_DAMP],
  }),
};

/** Outdoor air brought indoors: what its humidity becomes, what wood makes of it, and what gets wet in it. */
import { number } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { dewPointOf, heatedHumidity, humidityOnceHeated, saturationPressure } from '../../../calc/air/air.ts';
import { moistureInAir, moistureOfAir, sorptionInputs } from '../../../calc/air/moisture.ts';
import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import { HeatedAir } from '../../../figures/air/HeatedAir.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { lab } from '../../lesson/lab-spec.ts';

/** Surfaces so many degrees below the room are common in it: a window, a board from the car. */
const COLD_SPOT = 8;
/** Nothing that is carried into a room is colder than this, °C: a lower dew point wets nothing. */
const COLDEST_SPOT = -10;

const own = {
  outdoorTemperature: number('temperature outdoors', 'temperature', {
    low: -25,
    high: 40,
    step: 1,
    start: 0,
  }),
  outdoorHumidity: number('humidity outdoors', 'percent', { low: 5, high: 100, step: 1, start: 85 }),
  indoorTemperature: number('temperature indoors', 'temperature', { low: 10, high: 30, step: 1, start: 21 }),
  added: number('water from people, cooking and plants', 'number', {
    low: 0,
    high: 8,
    step: 0.5,
    digits: 1,
    start: 0,
    help: 'Grams in each cubic meter of room air. Two to four is usual in a lived-in room§.',
  }),
};

interface Own {
  readonly outdoorTemperature: number;
  readonly outdoorHumidity: number;
  readonly indoorTemperature: number;
}
interface Found {
  readonly indoorHumidity: number;
  readonly dewPoint: number | undefined;
  readonly wood: ReturnType<typeof moistureInAir>;
}
const row = rowsOf<Own & Found>();
const outdoorOf = (v: Own) => ({ temperature: v.outdoorTemperature, humidity: v.outdoorHumidity });

export const heatedLab = lab({
  title: 'Outdoor air, heated',
  own,
  controls: ['outdoorTemperature', 'outdoorHumidity', 'indoorTemperature'],
  more: ['added'],
  solve: (v): Found | Refused => {
    const indoorHumidity = humidityOnceHeated(outdoorOf(v), v.indoorTemperature, v.added);
    if (isRefused(indoorHumidity))
      return {
        refused: `${indoorHumidity.refused} Cold things and cold rooms get wet in such air: no wood belongs there.`,
      };
    const dewPoint = dewPointOf((indoorHumidity / 100) * saturationPressure(v.indoorTemperature));
    return { indoorHumidity, dewPoint, wood: moistureInAir(v.indoorTemperature, indoorHumidity) };
  },
  figure: ({ values: v }) => (
    <HeatedAir
      outdoor={outdoorOf(v)}
      indoor={{ temperature: v.indoorTemperature, humidity: v.indoorHumidity }}
      dewPoint={v.dewPoint}
    />
  ),
  says: ({ indoorHumidity, indoorTemperature, dewPoint, wood }) => (
    <>
      Indoors this air has <Quantity value={indoorHumidity} kind="percent" digits={0} /> relative humidity.{' '}
      {isRefused(wood) ? (
        `For wood in such air there is no figure: ${wood.refused} `
      ) : (
        <>
          Wood in it settles at <Quantity value={wood.moisture} kind="percent" /> moisture.{' '}
        </>
      )}
      {dewPoint !== undefined && dewPoint > COLDEST_SPOT && (
        <>
          {dewPoint > indoorTemperature - COLD_SPOT ? 'Take care: water' : 'Water'} settles on anything colder
          than <Quantity value={dewPoint} kind="temperature" digits={0} />.
        </>
      )}
    </>
  ),
  results: [
    row(
      heatedHumidity,
      (v) => ({
        h_out: v.outdoorHumidity,
        p_out: saturationPressure(v.outdoorTemperature),
        p_in: saturationPressure(v.indoorTemperature),
      }),
      {
        label: 'humidity once heated, no water added',
        kind: 'percent',
        digits: 0,
        rule: 'heated-air-is-dry',
      },
    ),
    row(moistureOfAir, (v) => sorptionInputs(v.indoorTemperature, v.indoorHumidity), {
      label: 'moisture that wood settles to there',
      kind: 'percent',
      rule: 'write-the-humidity',
      when: ({ wood }) => !isRefused(wood),
    }),
  ],
});

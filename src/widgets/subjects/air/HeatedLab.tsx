/** Outdoor air brought indoors: what its humidity becomes, what wood makes of it, and what gets wet in it. */
import { useSignal } from '@preact/signals';
import { dewPointOf, heatedHumidity, humidityOnceHeated, saturationPressure } from '../../../calc/air/air.ts';
import { moistureInAir, moistureOfAir, sorptionInputs } from '../../../calc/air/moisture.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { work } from '../../../calc/core/working.ts';
import { HeatedAir } from '../../../figures/air/HeatedAir.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { RelationLine } from '../../kit/ResultLine.tsx';
import { useStore } from '../../kit/use-store.ts';
import { LabFrame } from '../../lesson/Lab.tsx';
import { OwnNumber } from '../../lesson/OwnNumber.tsx';
import { fields } from './fields.ts';

/** Surfaces so many degrees below the room are common in it: a window, a board from the car. */
const COLD_SPOT = 8;
/** Nothing that is carried into a room is colder than this, °C: a lower dew point wets nothing. */
const COLDEST_SPOT = -10;

export function HeatedLab() {
  const units = useStore().units.value;
  const temperature = useSignal(0);
  const humidity = useSignal(85);
  const indoors = useSignal(21);
  const added = useSignal(0);
  const outdoor = { temperature: temperature.value, humidity: humidity.value };
  const found = humidityOnceHeated(outdoor, indoors.value, added.value);
  const indoor = isRefused(found) ? undefined : { temperature: indoors.value, humidity: found };
  const dewPoint = indoor && dewPointOf((indoor.humidity / 100) * saturationPressure(indoor.temperature));
  const wood = indoor && moistureInAir(indoor.temperature, indoor.humidity);
  const given = {
    h_out: outdoor.humidity,
    p_out: saturationPressure(outdoor.temperature),
    p_in: saturationPressure(indoors.value),
  };
  return (
    <LabFrame
      title="Outdoor air, heated"
      picture={
        indoor ? (
          <>
            <HeatedAir outdoor={outdoor} indoor={indoor} dewPoint={dewPoint} />
            <p class="says">
              Indoors this air has <Quantity value={indoor.humidity} kind="percent" digits={0} /> relative
              humidity.{' '}
              {wood && !isRefused(wood) ? (
                <>
                  Wood in it settles at <Quantity value={wood.moisture} kind="percent" /> moisture.{' '}
                </>
              ) : (
                `For wood in such air there is no figure: ${wood?.refused} `
              )}
              {dewPoint !== undefined && dewPoint > COLDEST_SPOT && (
                <>
                  {dewPoint > indoors.value - COLD_SPOT ? 'Take care: water' : 'Water'} settles on anything
                  colder than <Quantity value={dewPoint} kind="temperature" digits={0} />.
                </>
              )}
            </p>
          </>
        ) : (
          <p class="says message" role="status">
            {isRefused(found) && found.refused} Cold things and cold rooms get wet in such air: no wood
            belongs there.
          </p>
        )
      }
      controls={
        <>
          <OwnNumber field={fields.outdoorTemperature} of={temperature} system={units} />
          <OwnNumber field={fields.outdoorHumidity} of={humidity} system={units} />
          <OwnNumber field={fields.indoorTemperature} of={indoors} system={units} />
          <details class="more">
            <summary>more to change</summary>
            <OwnNumber field={fields.added} of={added} system={units} />
          </details>
        </>
      }
      results={
        <>
          <RelationLine
            label="humidity once heated, no water added"
            kind="percent"
            digits={0}
            working={work(heatedHumidity, given)}
            units={units}
            rule="heated-air-is-dry"
          />
          {wood && !isRefused(wood) && indoor && (
            <RelationLine
              label="moisture that wood settles to there"
              kind="percent"
              working={work(moistureOfAir, sorptionInputs(indoor.temperature, indoor.humidity))}
              units={units}
              rule="write-the-humidity"
            />
          )}
        </>
      }
    />
  );
}

/**
 * Moisture of wood against the humidity of its air, with the reader's three readings. The gray band is every
 * temperature of a room from freezing to a hot summer: it is thin, because temperature hardly matters.
 * Drawn in units of a phone's pixels.
 */
import type { Values } from '../../box/whole/index.ts';
import { equilibriumMoisture, tabulatedAir } from '../../calc/air/moisture.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { axesOn, band, curve, evenly, Plot, Zone } from '../plot/Plot.tsx';
import { spread } from './spread.ts';

const axes = axesOn({ left: 46, right: 344, top: 8, bottom: 216 }, [0, 100], [0, 26]);
const { left, right, top, bottom, x, y } = axes;
const [driest, dampest] = tabulatedAir.humidity;
const [coldest, hottest] = [0, 40] as const;
const humidities = evenly([driest, dampest], 30);
const anyRoom = band(
  axes,
  humidities.map((h) => [h, equilibriumMoisture(coldest, h), equilibriumMoisture(hottest, h)]),
);

export function MoistureCurve({ values: v }: { values: Values }) {
  const readings = [
    { word: 'driest', humidity: v.humidityDry },
    { word: 'today', humidity: v.humidityToday },
    { word: 'dampest', humidity: v.humidityDamp },
  ].map((reading) => ({ ...reading, moisture: equilibriumMoisture(v.temperature, reading.humidity) }));
  const below = spread(
    readings.map(({ humidity }) => x(humidity)),
    66,
    left + 22,
    right - 26,
  );
  const beside = spread(
    readings.map(({ moisture }) => y(moisture)),
    16,
    top + 8,
    bottom - 6,
  );
  return (
    <Drawing
      view={[0, 0, 350, 276]}
      title="Moisture of wood against the humidity of its air"
      description={`${readings
        .map(
          ({ word, humidity, moisture }) =>
            `${word}: ${said(humidity, 'percent', { digits: 0 })} relative humidity gives ${said(moisture, 'percent')} moisture content`,
        )
        .join('; ')}. Temperatures from ${coldest} to ${hottest} °C hardly move the curve.`}
    >
      <Plot on={axes} />
      <Zone on={axes} x={[0, driest]} fill="url(#jam)" />
      <Zone on={axes} x={[dampest, 100]} fill="url(#jam)" />
      <path class="held-barely" d={anyRoom} />
      <path
        class="curve"
        d={curve(
          axes,
          humidities.map((h) => [h, equilibriumMoisture(v.temperature, h)]),
        )}
      />
      {readings.map(({ word, humidity, moisture }, i) => (
        <g key={word}>
          <path
            class="hidden-line"
            d={`M${below[i]!.toFixed(1)} ${bottom + 6}L${x(humidity).toFixed(1)} ${bottom}V${y(moisture).toFixed(1)}H${left}L${left - 6} ${beside[i]!.toFixed(1)}`}
          />
          <circle class="mark" cx={x(humidity)} cy={y(moisture)} r="4" />
          <NumberLabel x={left - 8} y={beside[i]!} anchor="end" value={moisture} kind="percent" digits={1} />
          <Label x={below[i]!} y={bottom + 15}>
            {word}
          </Label>
          <NumberLabel x={below[i]!} y={bottom + 33} value={humidity} kind="percent" digits={0} />
        </g>
      ))}
      <Label class="on-lines" x={left + 22} y={top + 14} anchor="start">
        moisture of the wood
      </Label>
      <Label x={(left + right) / 2} y={bottom + 52}>
        humidity of the air
      </Label>
    </Drawing>
  );
}

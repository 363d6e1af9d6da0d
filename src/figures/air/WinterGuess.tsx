/** Moisture of a board against the humidity of its air: today's is drawn, what the driest air brings it to is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { equilibriumMoisture, tabulatedAir } from '../../calc/air/moisture.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { Ticks } from '../plot/Axis.tsx';
import { axesOn, curve, evenly, Plot } from '../plot/Plot.tsx';

/** Moisture that can be marked, %. */
export const moistureRange = { low: 0, high: 20 } as const;
/** Humidity of the driest air in this guess, %: the handle stands there. */
export const winterHumidity = 25;
const axes = axesOn({ left: 46, right: 336, top: 30, bottom: 226 }, [0, 100], [0, 20]);
const { left, bottom, x, y } = axes;
export const winterFrame: GuessFrame = {
  width: 350,
  height: 282,
  from: [x(winterHumidity), bottom],
  to: [x(winterHumidity), axes.top],
};
const place = (moisture: number) => placeIn(winterFrame, moistureRange, moisture)[1];
const [driest] = tabulatedAir.humidity;

interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

export function WinterGuess({ values: v, mark, open }: Props) {
  const [shop, winter] = [x(v.humidityToday), x(v.humidityDry)];
  const points = evenly([driest, 90], 30).map((h) => [h, equilibriumMoisture(v.temperature, h)] as const);
  return (
    <Drawing
      view={[0, 0, winterFrame.width, winterFrame.height]}
      title="Moisture of a board against the humidity of its air"
      description={`In the shop, at ${said(v.humidityToday, 'percent', { digits: 0 })} relative humidity, it holds ${said(v.moistureToday, 'percent')}. ${
        open
          ? `In winter, at ${said(v.humidityDry, 'percent', { digits: 0 })}, it comes to ${said(v.moistureDry, 'percent')}.`
          : `What it comes to in winter, at ${said(v.humidityDry, 'percent', { digits: 0 })}, is not drawn yet.`
      }`}
    >
      <Plot on={axes}>{open && <path class="curve arrives" d={curve(axes, points)} />}</Plot>
      <Ticks on={axes} at={[0, 5, 10, 15, 20]} side="left" kind="percent" digits={0} />
      <path
        class="hidden-line"
        d={`M${shop} ${bottom}V${y(v.moistureToday)}H${left}M${winter} ${bottom}V${axes.top}`}
      />
      <circle class="mark" cx={shop} cy={y(v.moistureToday)} r="5" />
      <NumberLabel
        class="on-lines"
        x={shop + 10}
        y={y(v.moistureToday) + 12}
        anchor="start"
        value={v.moistureToday}
        kind="percent"
      />
      {mark !== undefined && (
        <path class="ghost bare" d={`M${left} ${place(mark)}H${x(winterHumidity) + 14}`} />
      )}
      {open && (
        <g class="arrives">
          <circle class="target" cx={winter} cy={y(v.moistureDry)} r="5" />
          <NumberLabel
            class="on-lines"
            x={winter + 10}
            y={y(v.moistureDry) + 14}
            anchor="start"
            value={v.moistureDry}
            kind="percent"
          />
        </g>
      )}
      <Label x={left} y={14} anchor="start">
        moisture of the board
      </Label>
      {(
        [
          [winter, v.humidityDry, 'in winter'],
          [shop, v.humidityToday, 'in the shop'],
        ] as const
      ).map(([at, humidity, words]) => (
        <g key={words}>
          <NumberLabel x={at} y={bottom + 16} value={humidity} kind="percent" digits={0} />
          <Label x={at} y={bottom + 34}>
            {words}
          </Label>
        </g>
      ))}
    </Drawing>
  );
}

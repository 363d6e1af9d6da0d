/**
 * Outdoor air that is heated: what it holds stays, what it could hold grows, so its humidity falls. Water in the air
 * against its temperature; the curve is all it can hold. Drawn in units of a phone's pixels.
 */
import { humidityRatio, SEA_LEVEL, saturationPressure } from '../../calc/air/air.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { axesOn, curve, evenly, Plot } from '../plot/Plot.tsx';

interface Air {
  /** °C and % relative humidity. */
  readonly temperature: number;
  readonly humidity: number;
}

export interface HeatedAirProps {
  readonly outdoor: Air;
  readonly indoor: Air;
  /** °C; undefined where it is not known. */
  readonly dewPoint: number | undefined;
}

const frame = { left: 6, right: 344, top: 6, bottom: 196 } as const;
const { left, right, top, bottom } = frame;
const [coldest, hottest] = [-26, 41] as const;

/** Grams of water in each kilogram of dry air. */
const water = ({ temperature, humidity }: Air) =>
  1000 * humidityRatio.compute({ p_w: (humidity / 100) * saturationPressure(temperature), p: SEA_LEVEL });
const limit = (temperature: number) => water({ temperature, humidity: 100 });
const limits = evenly([coldest, hottest], 33).map((celsius) => [celsius, limit(celsius)] as const);

export function HeatedAir({ outdoor, indoor, dewPoint }: HeatedAirProps) {
  // The column of the room is what the reader looks at: it fills most of the height, whatever its limit.
  const high = Math.max(1.25 * limit(indoor.temperature), 1.1 * water(outdoor));
  const axes = axesOn(frame, [coldest, hottest], [0, high]);
  const { x, y } = axes;
  const [ox, oy] = [x(outdoor.temperature), y(water(outdoor))];
  const [ix, iy] = [x(indoor.temperature), y(water(indoor))];
  const column = 15;
  const spoken = (value: number, kind: 'percent' | 'temperature') => said(value, kind, { digits: 0 });
  const warmer = indoor.temperature >= outdoor.temperature;
  return (
    <Drawing
      view={[0, 0, 350, 250]}
      title="Outdoor air, heated"
      description={`Outdoor air of ${spoken(outdoor.temperature, 'temperature')} and ${spoken(outdoor.humidity, 'percent')} has ${spoken(indoor.humidity, 'percent')} relative humidity in a room of ${spoken(indoor.temperature, 'temperature')}.`}
    >
      <Plot on={axes}>
        <path class="curve" d={curve(axes, limits)} />
      </Plot>
      <rect
        class="inside"
        x={ix - column}
        y={y(limit(indoor.temperature))}
        width={2 * column}
        height={bottom - y(limit(indoor.temperature))}
      />
      <rect class="water" x={ix - column} y={iy} width={2 * column} height={bottom - iy} />
      {Math.abs(ix - ox) > column + 8 && (
        <line
          class="force"
          x1={ox}
          y1={oy}
          x2={ix + (warmer ? -column : column)}
          y2={iy}
          marker-end="url(#arrow)"
        />
      )}
      <circle class="mark" cx={ox} cy={oy} r="4" />
      {dewPoint !== undefined && dewPoint > coldest && (
        <>
          <path class="hidden-line" d={`M${x(dewPoint).toFixed(1)} ${bottom}V${iy.toFixed(1)}`} />
          <circle class="target" cx={x(dewPoint)} cy={iy} r="4" />
        </>
      )}
      <NumberLabel
        class="on-lines strong"
        x={Math.min(ix, right - 22)}
        y={Math.min(iy, bottom) - 11}
        value={indoor.humidity}
        kind="percent"
        digits={0}
      />
      <NumberLabel
        x={Math.max(left + 40, Math.min(ox, ix - 62, right - 130))}
        y={bottom + 16}
        value={outdoor.temperature}
        kind="temperature"
        digits={0}
      />
      <Label x={Math.max(left + 40, Math.min(ox, ix - 62, right - 130))} y={bottom + 34}>
        outdoors
      </Label>
      <NumberLabel
        x={Math.min(ix, right - 26)}
        y={bottom + 16}
        value={indoor.temperature}
        kind="temperature"
        digits={0}
      />
      <Label x={Math.min(ix, right - 26)} y={bottom + 34}>
        indoors
      </Label>
      {['water in the air', 'column: all this room’s air can hold', 'filled: what it holds'].map(
        (words, i) => (
          <Label key={words} class="on-lines" x={left + 6} y={top + 14 + 18 * i} anchor="start">
            {words}
          </Label>
        ),
      )}
    </Drawing>
  );
}

/** Two columns, each all the water its air can hold: outdoors it is filled as it is, indoors the fill is guessed. */
import { heatedHumidity, saturationPressure } from '../../calc/air/air.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Relative humidity that can be marked, %. */
export const humidityRange = { low: 0, high: 100 } as const;
/** °C and % relative humidity. */
export const winterDay = { outdoors: 0, humidity: 85, indoors: 21 } as const;
const [top, foot] = [40, 220] as const;
const columns = { outdoors: 60, indoors: 200, width: 90 } as const;
export const heatedFrame: GuessFrame = {
  width: 350,
  height: 268,
  from: [columns.indoors + columns.width / 2, foot],
  to: [columns.indoors + columns.width / 2, top],
};
const place = (percent: number) => placeIn(heatedFrame, humidityRange, percent)[1];

const limits = {
  p_out: saturationPressure(winterDay.outdoors),
  p_in: saturationPressure(winterDay.indoors),
};
/** Relative humidity of the winter day's air once it is heated, %. */
export const onceHeated = (): number => heatedHumidity.compute({ h_out: winterDay.humidity, ...limits });
/** How many times as much water the air can hold indoors. */
export const roomForWater = limits.p_in / limits.p_out;

interface Props {
  mark: number | undefined;
  open: boolean;
}

export function HeatedGuess({ mark, open }: Props) {
  const indoors = onceHeated();
  const { width } = columns;
  const column = (x: number, filled: number | undefined, celsius: number, words: string) => (
    <>
      <rect class="inside" x={x} y={top} width={width} height={foot - top} />
      {filled !== undefined && (
        <rect class="water" x={x} y={place(filled)} width={width} height={foot - place(filled)} />
      )}
      <NumberLabel x={x + width / 2} y={foot + 16} value={celsius} kind="temperature" digits={0} />
      <Label x={x + width / 2} y={foot + 34}>
        {words}
      </Label>
    </>
  );
  const humidity = (x: number, value: number) => (
    <NumberLabel
      class="on-lines strong"
      x={x + width / 2}
      y={place(value) - 11}
      value={value}
      kind="percent"
      digits={0}
    />
  );
  return (
    <Drawing
      view={[0, 0, heatedFrame.width, heatedFrame.height]}
      title="Air outdoors, and the same air heated"
      description={`Outdoors it is ${said(winterDay.outdoors, 'temperature', { digits: 0 })} and ${said(winterDay.humidity, 'percent', { digits: 0 })} full. ${
        open
          ? `Heated to ${said(winterDay.indoors, 'temperature', { digits: 0 })} it is ${said(indoors, 'percent', { digits: 0 })} full.`
          : `How full it is at ${said(winterDay.indoors, 'temperature', { digits: 0 })} is not drawn yet.`
      }`}
    >
      <Label x={columns.outdoors} y={16} anchor="start">
        each column: all that air can hold
      </Label>
      {column(columns.outdoors, winterDay.humidity, winterDay.outdoors, 'outdoors')}
      {humidity(columns.outdoors, winterDay.humidity)}
      <g class={open ? 'arrives' : undefined}>
        {column(columns.indoors, open ? indoors : undefined, winterDay.indoors, 'heated')}
      </g>
      {mark !== undefined && (
        <path class="ghost" d={`M${columns.indoors} ${foot}V${place(mark)}h${width}V${foot}z`} />
      )}
      {open && humidity(columns.indoors, indoors)}
    </Drawing>
  );
}

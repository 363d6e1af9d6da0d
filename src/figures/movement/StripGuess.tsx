/** Two equally wide strips from dry to damp: how far the flat-sawn one grew is drawn, the quarter-sawn one is guessed. */

import { changeOf } from '../../box/subjects/movement/panel-state.ts';
import type { Values } from '../../box/whole/index.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { stripRings } from './august/strip-rings.ts';

/** Growth that fits in the drawing, mm. */
export const stripRange = { low: 0, high: 2.4 } as const;
const [left, length, high] = [2, 220, 30] as const;
const rows = { flat: 24, quarter: 92 } as const;
export const stripFrame: GuessFrame = {
  width: 350,
  height: 146,
  from: [left + length, rows.quarter + high / 2],
  to: [344, rows.quarter + high / 2],
};
const place = (mm: number) => placeIn(stripFrame, stripRange, mm)[0];

/** Growth of a strip as wide as the bottom, mm, from the driest to the dampest day; NaN where no figure holds. */
export function stripGrowth(v: Values, angle: number): number {
  const found = changeOf(v, v.bottomWidth, v.moistureDry, v.moistureDamp, angle);
  return isRefused(found) ? Number.NaN : found.change;
}

interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

export function StripGuess({ values: v, mark, open }: Props) {
  const [flat, quarter] = [stripGrowth(v, 0), stripGrowth(v, 90)];
  const times = Math.round((place(1) - place(0)) / (length / v.bottomWidth));
  const strip = (y: number, angle: number, grown: number | undefined) => (
    <>
      <rect class="wood-end" x={left} y={y} width={length} height={high} />
      <path class="ring" d={stripRings(angle, y, high, left, length)} />
      {grown !== undefined && Number.isFinite(grown) && (
        <rect
          class={`grown ${angle === 90 ? 'arrives' : ''}`}
          x={left + length}
          y={y}
          width={place(grown) - place(0)}
          height={high}
        />
      )}
    </>
  );
  return (
    <Drawing
      view={[0, 0, stripFrame.width, stripFrame.height]}
      title="A flat-sawn and a quarter-sawn strip, from dry to damp"
      description={`Both are ${said(v.bottomWidth, 'length', { digits: 0 })} wide. The flat-sawn one grows ${said(flat, 'length', { as: 'fine' })}${
        open
          ? `, the quarter-sawn one ${said(quarter, 'length', { as: 'fine' })}.`
          : '. How far the other grows is not drawn yet.'
      }`}
    >
      <NumberLabel
        x={left}
        y={rows.flat - 11}
        anchor="start"
        value={flat}
        kind="length"
        as="fine"
        before="rings along the face: grows "
      />
      {strip(rows.flat, 0, flat)}
      {open ? (
        <NumberLabel
          x={left}
          y={rows.quarter - 11}
          anchor="start"
          value={quarter}
          kind="length"
          as="fine"
          before="rings upright: grows "
        />
      ) : (
        <Label x={left} y={rows.quarter - 11} anchor="start">
          rings upright: grows …
        </Label>
      )}
      {strip(rows.quarter, 90, open ? quarter : undefined)}
      {mark !== undefined && (
        <path class="ghost" d={`M${place(0)} ${rows.quarter}H${place(mark)}v${high}H${place(0)}`} />
      )}
      <Label x={left} y={stripFrame.height - 10} anchor="start">
        {`growth drawn ${times} times too long`}
      </Label>
    </Drawing>
  );
}

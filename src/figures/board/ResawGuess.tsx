/** Two finished walls lying on each other: how thick the board was that gave both is guessed. */
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';
import { layerClass, layersOf } from './layers.ts';

/** Thickness that can be marked, mm. */
export const thickRange = { low: 0, high: 40 } as const;
const [top, foot] = [30, 290] as const;
const [left, right, ruler] = [14, 150, 300] as const;
export const thickFrame: GuessFrame = {
  width: 350,
  height: 324,
  from: [82, foot],
  to: [82, top],
};
const place = (mm: number) => placeIn(thickFrame, thickRange, mm)[1];

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function ResawGuess({ values: v, system, mark, open }: Props) {
  const thickness = open ? v.pairThickness : 2 * v.wall;
  const layers = open
    ? layersOf(2, { ...v, thickness })
    : [0, 1].map((i) => ({ kind: 'wall' as const, from: i * v.wall, to: (i + 1) * v.wall }));
  const walls = layers.filter(({ kind }) => kind === 'wall');
  const cut = layers.find(({ kind }) => kind === 'cut');
  return (
    <Drawing
      view={[0, 0, thickFrame.width, thickFrame.height]}
      title="The end of a board and two walls from it"
      description={`Two walls of ${said(v.wall, 'length')} each. The saw takes ${said(v.kerf, 'length')}, the plane ${said(v.planing, 'length')} off every face. ${
        open ? `The board is ${said(thickness, 'length')} thick.` : 'The board they came from is not drawn.'
      }`}
    >
      <g class={open ? 'arrives' : undefined}>
        {layers.map(({ kind, from, to }) => (
          <rect
            key={from}
            {...layerClass[kind]}
            x={left}
            y={place(to)}
            width={right - left}
            height={place(from) - place(to)}
          />
        ))}
        {walls.map(({ from, to }) => (
          <NumberLabel
            key={from}
            x={right + 10}
            y={place((from + to) / 2)}
            anchor="start"
            value={v.wall}
            kind="length"
            before="wall "
          />
        ))}
        {cut && (
          <NumberLabel
            x={right + 10}
            y={place((cut.from + cut.to) / 2)}
            anchor="start"
            value={v.kerf}
            kind="length"
            before="saw cut "
          />
        )}
        {open && v.planing > 0 && (
          <NumberLabel
            x={left}
            y={place(thickness) - 14}
            anchor="start"
            value={v.planing}
            kind="length"
            before="hatched: planed off, "
            after=" a face"
          />
        )}
      </g>
      {mark !== undefined && (
        <path class="ghost bare" d={`M${left - 6} ${place(mark)}H${right + 6}V${foot}H${left - 6}z`} />
      )}
      <Label x={left} y={foot + 18} anchor="start">
        lower face of the board
      </Label>
      <RuleScale from={[ruler, foot]} to={[ruler, top]} length={thickRange.high} system={system} />
    </Drawing>
  );
}

/** Two panels with one face damper than the other: how hollow the thin one is stands drawn, the thick one's depth is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { cupFromFaces } from '../../calc/board/cup.ts';
import { INCH, type UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Depth that can be marked, mm. */
export const depthRange = { low: 0, high: 2.4 } as const;
/** Size of the panels, and the points by which one face is damper. */
const panels = {
  mm: { width: 150, thin: 6, points: 1 },
  inch: { width: 6 * INCH, thin: INCH / 4, points: 1 },
} as const;

const [left, length, thinAt, thickAt] = [20, 310, 40, 150] as const;
export const depthFrame: GuessFrame = {
  width: 350,
  height: 262,
  from: [left + length / 2, thickAt],
  to: [left + length / 2, thickAt + 66],
};
const place = (mm: number) => placeIn(depthFrame, depthRange, mm)[1];

/** Depth of the hollow of a flat-sawn panel so many times as thick as the thin one, mm. */
export function panelCup(v: Values, system: UnitSystem, times: 1 | 2): number {
  const { width, thin, points } = panels[system];
  return cupFromFaces.compute({ C: v.tangentialCoefficient, dM: points, w: width, T: times * thin });
}

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function ThickerCup({ values: v, system, mark, open }: Props) {
  const { width, thin } = panels[system];
  const scale = length / width;
  const [cup, thick] = [panelCup(v, system, 1), panelCup(v, system, 2)];
  const times = Math.round((place(1) - place(0)) / scale);
  const middle = left + length / 2;
  /** A panel hollow above by `deep` user units at its middle. */
  const bent = (y: number, deep: number, high: number) =>
    `M${left} ${y}Q${middle} ${y + 2 * deep} ${left + length} ${y}v${high}Q${middle} ${y + high + 2 * deep} ${left} ${y + high}z`;
  const units = (mm: number) => place(mm) - place(0);
  return (
    <Drawing
      view={[0, 0, depthFrame.width, depthFrame.height]}
      title="Two panels whose lower face is damper"
      description={`Both are ${said(width, 'length', { digits: 0 })} wide. The one ${said(thin, 'length')} thick goes hollow by ${said(cup, 'length', { as: 'fine' })}${
        open
          ? `, the one twice as thick by ${said(thick, 'length', { as: 'fine' })}.`
          : '. The hollow of the one twice as thick is not drawn yet.'
      }`}
    >
      <NumberLabel x={left} y={18} anchor="start" value={thin} kind="length" after=" thick" />
      <path class="wood-end" d={bent(thinAt, units(cup), thin * scale)} />
      <line class="hidden-line" x1={left} x2={left + length} y1={thinAt} y2={thinAt} />
      <NumberLabel
        class="on-lines"
        x={middle}
        y={thinAt - 12}
        value={cup}
        kind="length"
        as="fine"
        before="hollow by "
      />
      <NumberLabel x={left} y={thickAt - 14} anchor="start" value={2 * thin} kind="length" after=" thick" />
      <path class="wood-end" d={bent(thickAt, open ? units(thick) : 0, 2 * thin * scale)} />
      <line class="hidden-line" x1={left} x2={left + length} y1={thickAt} y2={thickAt} />
      {mark !== undefined && (
        <path
          class="ghost bare"
          d={`M${left} ${thickAt}Q${middle} ${thickAt + 2 * units(mark)} ${left + length} ${thickAt}`}
        />
      )}
      {open && (
        <NumberLabel
          class="on-lines"
          x={left + length}
          y={thickAt - 14}
          anchor="end"
          value={thick}
          kind="length"
          as="fine"
          before="hollow by "
        />
      )}
      <Label x={left} y={depthFrame.height - 10} anchor="start">
        {`hollow drawn ${times} times too deep`}
      </Label>
    </Drawing>
  );
}

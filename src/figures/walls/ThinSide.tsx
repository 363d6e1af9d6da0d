/** Two sides from above under one push: how far the thick one gives stands drawn, how far half the thickness gives is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { sidePushFree, stiffnessAlongGrain } from '../../calc/walls/side-push.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';
import { bendingLine, free } from './bending-line.ts';

/** How far a side can be marked to give, mm. */
export const giveRange = { low: 0, high: 3 } as const;
const [left, length, thickAt, thinAt] = [14, 280, 56, 168] as const;
export const giveFrame: GuessFrame = {
  width: 350,
  height: 318,
  from: [left + length / 2, thinAt],
  to: [left + length / 2, thinAt + 108],
};
const place = (mm: number) => placeIn(giveFrame, giveRange, mm)[1];

/** How far a side so many times as thick as the wall gives, its ends free to turn, mm. */
export const sideGives = (v: Values, times: 1 | 0.5): number =>
  sidePushFree.compute({
    P: v.push,
    L: v.insideLength,
    E: stiffnessAlongGrain.compute({ E_b: v.modulusOfElasticity }),
    H: v.outsideHeight,
    t: v.wall * times,
  });

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function ThinSide({ values: v, system, mark, open }: Props) {
  const scale = length / v.insideLength;
  const units = (mm: number) => place(mm) - place(0);
  const times = Math.round(units(1) / scale);
  const [thick, thin] = [sideGives(v, 1), sideGives(v, 0.5)];
  const middle = left + length / 2;
  /** A side bent by `sag`, its inner face at `y` at the ends. */
  const bent = (y: number, sag: number, wall: number) =>
    `${bendingLine(free, left, y, length, sag)}v${-wall * scale}${bendingLine(free, left + length, y - wall * scale, -length, sag).replace(/^M[^c]*/, '')}z`;
  const arrow = (y: number) => (
    <path class="force" d={`M${middle} ${y - 30}V${y - 5}`} marker-end="url(#arrow)" />
  );
  return (
    <Drawing
      view={[0, 0, giveFrame.width, giveFrame.height]}
      title="Two sides from above, each pushed in the middle"
      description={`Both are ${said(v.insideLength, 'length')} long and pushed with ${said(v.push, 'force', { digits: 0 })}. The one ${said(v.wall, 'length')} thick gives ${said(thick, 'length', { as: 'fine' })}${
        open
          ? `, the one half as thick ${said(thin, 'length', { as: 'fine' })}.`
          : '. How far the one half as thick gives is not drawn yet.'
      }`}
    >
      <NumberLabel x={left} y={18} anchor="start" value={v.wall} kind="length" after=" thick" />
      <NumberLabel
        x={left + length}
        y={18}
        anchor="end"
        value={thick}
        kind="length"
        as="exact"
        before="gives "
      />
      <path class="wood" d={bent(thickAt, units(thick), v.wall)} />
      <path class="hidden-line" d={`M${left} ${thickAt}h${length}`} />
      {arrow(thickAt - v.wall * scale)}
      <NumberLabel x={left} y={thinAt - 42} anchor="start" value={v.wall / 2} kind="length" after=" thick" />
      {open && (
        <NumberLabel
          x={left + length}
          y={thinAt - 42}
          anchor="end"
          value={thin}
          kind="length"
          as="exact"
          before="gives "
        />
      )}
      <path class={open ? 'wood arrives' : 'wood'} d={bent(thinAt, open ? units(thin) : 0, v.wall / 2)} />
      <path class="hidden-line" d={`M${left} ${thinAt}h${length}`} />
      {arrow(thinAt - (v.wall / 2) * scale)}
      {mark !== undefined && (
        <path class="ghost bare" d={bendingLine(free, left, thinAt, length, units(mark))} />
      )}
      <RuleScale
        from={[left + length + 10, thinAt]}
        to={[left + length + 10, place(giveRange.high)]}
        length={giveRange.high}
        system={system}
      />
      <Label x={left} y={giveFrame.height - 10} anchor="start">
        {`bend drawn ${times} times larger`}
      </Label>
    </Drawing>
  );
}

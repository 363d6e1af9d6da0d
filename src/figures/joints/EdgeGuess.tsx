/** A corner seen from outside with its first two fingers cut: how much the whole ones leave at the far edge is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { fingerLayout } from '../../calc/joints/finger-layout.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** What can be marked as left at the edge, mm: about a finger. */
export const leftRange = { low: 0, high: 10 } as const;
const [left, top, foot, right] = [96, 34, 320, 250] as const;
/** The wall this drawing is laid out for, mm: a mark is as long as what it stands for. */
const highest = 51;
const scale = (foot - top) / highest;
export const leftFrame: GuessFrame = {
  width: 350,
  height: 336,
  from: [left + 36, top],
  to: [left + 36, top + leftRange.high * scale],
};

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function EdgeGuess({ values: v, system, mark, open }: Props) {
  const { outsideHeight: height, wall, fingerWidth } = v;
  const bottom = top + height * scale;
  const fingers = fingerLayout(height, fingerWidth);
  const cut = open ? fingers : fingers.slice(0, 2);
  const deep = wall * scale;
  const spare = open && v.edgeSliver > 0;
  return (
    <Drawing
      view={[0, 0, leftFrame.width, leftFrame.height]}
      title="A corner seen from outside, counted from its lower edge"
      description={`The walls are ${said(height, 'length')} high, the fingers ${said(fingerWidth, 'length')} wide. ${
        open
          ? spare
            ? `${said(v.edgeSliver, 'length')} is left at the upper edge.`
            : 'Whole fingers fill the height.'
          : 'Two fingers are cut; what is left at the upper edge is not drawn yet.'
      }`}
    >
      <rect class="wood" x={left} y={top} width={right - left} height={bottom - top} />
      <g class={open ? 'arrives' : undefined}>
        {cut.map(({ from, to, wall: of, whole }) => (
          <rect
            key={from}
            class={of === 'first' ? 'wood' : 'wood-end'}
            x={left}
            y={bottom - to * scale}
            width={deep}
            height={(to - from) * scale}
            {...(!whole && { fill: 'url(#jam)', class: 'part-finger' })}
          />
        ))}
        {spare && (
          <NumberLabel
            x={left}
            y={top - 16}
            anchor="start"
            value={v.edgeSliver}
            kind="length"
            before="left over: "
          />
        )}
      </g>
      {!open && <path class="hidden-line" d={`M${left + deep} ${top}V${bottom - 2 * fingerWidth * scale}`} />}
      {mark !== undefined && <path class="ghost" d={`M${left} ${top}h${deep}v${mark * scale}h${-deep}z`} />}
      <NumberLabel
        class="on-lid"
        x={left + deep + 8}
        y={bottom - 0.5 * fingerWidth * scale}
        anchor="start"
        value={fingerWidth}
        kind="length"
        after=" finger"
      />
      <Label x={left} y={bottom + 18} anchor="start">
        counted from here
      </Label>
      <Dimension from={[left - 20, top]} to={[left - 20, bottom]} value={height} text={13} />
      <RuleScale
        from={[right + 22, top]}
        to={[right + 22, top + leftRange.high * scale]}
        length={leftRange.high}
        system={system}
      />
    </Drawing>
  );
}

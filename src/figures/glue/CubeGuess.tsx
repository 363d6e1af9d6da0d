/** A finger-jointed corner from outside; beside it the glue of all four corners as a cube, whose edge is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { fingerLayout } from '../../calc/joints/finger-layout.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** Edges that can be marked, mm. */
export const cubeRange = { low: 0, high: 40 } as const;
/** User units to a mm: corner and cube are drawn at one scale. */
const scale = 3.4;
const [foot, left, cube] = [216, 60, 194] as const;
export const cubeFrame: GuessFrame = {
  width: 350,
  height: 262,
  from: [cube, foot],
  to: [cube + cubeRange.high * scale, foot],
};
/** Of the wall as much is drawn as fits, mm. */
const shown = 27;

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function CubeGuess({ values: v, system, mark, open }: Props) {
  const { jointedHeight: height, wall, glueCube: edge } = v;
  const side = edge * scale;
  /** How far the cube's other faces are drawn back. */
  const deep = side * 0.35;
  const square = (side: number) => ({
    x: cube,
    y: foot - side * scale,
    width: side * scale,
    height: side * scale,
  });
  return (
    <Drawing
      view={[0, 0, cubeFrame.width, cubeFrame.height]}
      title="A corner, and the glue of all four as a cube"
      description={`The walls are ${said(height, 'length')} high and ${said(wall, 'length')} thick. ${
        open
          ? `All the glue fits a cube with an edge of ${said(edge, 'length')}.`
          : 'The cube is not drawn yet.'
      }`}
    >
      <rect class="wood" x={left} y={foot - height * scale} width={shown * scale} height={height * scale} />
      {fingerLayout(height, v.fingerWidth).map(({ from, to, wall: of }) => (
        <rect
          key={from}
          class={of === 'first' ? 'wood' : 'wood-end'}
          x={left}
          y={foot - to * scale}
          width={wall * scale}
          height={(to - from) * scale}
        />
      ))}
      <Dimension from={[left - 14, foot - height * scale]} to={[left - 14, foot]} value={height} text={13} />
      <path class="thin" d={`M${left} ${foot}H340`} />
      {open ? (
        <g class="arrives">
          <rect class="thing" {...square(edge)} />
          <path
            class="thing"
            d={`M${cube} ${foot - side}l${deep} ${-deep}h${side}v${side}l${-deep} ${deep}v${-side}zM${cube + side} ${foot - side}l${deep} ${-deep}`}
          />
          <NumberLabel
            class="on-lines"
            x={cube + side + deep + 8}
            y={foot - side / 2 - 6}
            anchor="start"
            value={edge}
            kind="length"
          />
        </g>
      ) : (
        <Label x={cube} y={foot - cubeRange.high * scale - 18} anchor="start">
          glue, same scale
        </Label>
      )}
      {mark !== undefined && (
        <path class="ghost" d={`M${cube} ${foot}h${mark * scale}v${-mark * scale}h${-mark * scale}z`} />
      )}
      <RuleScale
        from={[cube, foot + 14]}
        to={[cube + cubeRange.high * scale, foot + 14]}
        length={cubeRange.high}
        system={system}
      />
    </Drawing>
  );
}

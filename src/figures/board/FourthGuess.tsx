/** A line begins low on the first wall of a strip; where it stands at the end of the last, beside its beginning, is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { stepAtFourth } from '../../calc/board/grain-round.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** Slope of the line to the edge of the board, degrees. Ours. */
export const climb = 2;
/** How far above its beginning the line may be marked, mm. */
export const climbRange = { low: 0, high: 40 } as const;
/** Where the line begins, mm above the lower edge. */
const begins = 6;
/** Of the walls at the corner, user units per mm. */
const scale = 3.4;
const [left, corner, right, foot] = [14, 142, 262, 300] as const;
const zero = foot - begins * scale;
export const climbFrame: GuessFrame = {
  width: 350,
  height: foot + 30,
  from: [corner - 60, zero],
  to: [corner - 60, zero - climbRange.high * scale],
};
const place = (mm: number) => placeIn(climbFrame, climbRange, mm)[1];

/** How far above its beginning the line ends, mm. */
export const climbOf = (v: Values): number =>
  stepAtFourth.compute({ L: v.outsideLength, W: v.outsideWidth, k: v.kerf, a: climb });

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function FourthGuess({ values: v, system, mark, open }: Props) {
  const high = v.outsideHeight;
  const top = foot - high * scale;
  const rise = Math.tan((climb * Math.PI) / 180);
  const walls = [v.outsideWidth, v.outsideLength, v.outsideWidth, v.outsideLength];
  const whole = walls.reduce((sum, one) => sum + one, 0) + 3 * v.kerf;
  const small = 322 / whole;
  const strip = [18, 18 + high * small] as const;
  let x = left;
  const step = climbOf(v);
  const line = (length: number) =>
    `M${left} ${strip[1] - begins * small}L${left + length * small} ${strip[1] - (begins + length * rise) * small}`;
  return (
    <Drawing
      view={[0, 0, climbFrame.width, climbFrame.height]}
      title="A strip of four walls, and the corner where its end meets its beginning"
      description={`The strip is ${said(whole, 'length')} long. A line climbs ${climb}° along it. ${
        open
          ? `At the fourth corner it stands ${said(step, 'length', { as: 'exact' })} above its beginning.`
          : 'It is drawn on the first wall alone.'
      }`}
    >
      {walls.map((length, i) => {
        const at = x;
        x += (length + v.kerf) * small;
        return (
          <rect
            key={i}
            class="wood"
            x={at}
            y={strip[0]}
            width={length * small}
            height={strip[1] - strip[0]}
          />
        );
      })}
      <path class="curve" d={line(walls[0]!)} />
      {open && <path class="curve arrives" d={line(whole)} />}
      <Label x={left} y={strip[1] + 16} anchor="start">
        the strip: front, side, back, side
      </Label>
      <rect class="wood" x={left} y={top} width={corner - left} height={foot - top} />
      <rect class="wood-end" x={corner} y={top} width={right - corner} height={foot - top} />
      <path
        class="curve"
        d={`M${corner} ${zero}L${right} ${zero - ((right - corner) / scale) * rise * scale}`}
      />
      {open && (
        <g class="arrives">
          <path
            class="curve"
            d={`M${left} ${place(step) + (corner - left) * rise}L${corner} ${place(step)}`}
          />
          <path class="error-bar binds" stroke-width={4} d={`M${corner} ${zero}V${place(step)}`} />
        </g>
      )}
      {mark !== undefined && <path class="ghost bare" d={`M${left} ${place(mark)}H${corner}`} />}
      <Label x={left} y={foot + 16} anchor="start">
        end of the last wall
      </Label>
      <Label x={right} y={foot + 16} anchor="end">
        the first
      </Label>
      <RuleScale
        from={[right + 24, zero]}
        to={[right + 24, zero - climbRange.high * scale]}
        length={climbRange.high}
        system={system}
      />
    </Drawing>
  );
}

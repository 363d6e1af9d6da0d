/**
 * A sliding-lid box cut across, mm, its upper left corner at 0: side walls, bottom, and the lid pushed into the left
 * groove, its ring figure by the box's own ring angle. `grown` is what the lid has become wider; it stops at the groove's end.
 */
import type { Values } from '../../../box/whole/index.ts';
import { stripRings } from './strip-rings.ts';

/** Rings of `RingStrips` are so many units apart; here they stand closer, mm. */
const [unit, apart] = [6, 1.8] as const;
const shrink = apart / unit;

interface Props {
  values: Values;
  grown: number;
}

/** Rings of a flat-sawn wall, upright. */
const wallRings = (left: number, wall: number, height: number) =>
  Array.from(
    { length: Math.floor(wall / apart) },
    (_, i) => `M${left + (i + 0.75) * apart} 0q1 ${height / 2} 0 ${height}`,
  ).join('');

/** A piece across the box with its rings. */
function Piece({
  x,
  y,
  width,
  high,
  angle,
}: {
  x: number;
  y: number;
  width: number;
  high: number;
  angle: number;
}) {
  return (
    <>
      <rect class="wood" x={x} y={y} width={width} height={high} />
      <path
        class="ring"
        transform={`translate(${x} ${y}) scale(${shrink})`}
        d={stripRings(angle, 0, high / shrink, 0, width / shrink)}
      />
    </>
  );
}

export function EndOfBox({ values: v, grown }: Props) {
  const { outsideWidth: across, outsideHeight: height, wall, lidGrooveDepth: deep, grooveDepth } = v;
  const inside = across - 2 * wall;
  const bottom = height - v.bottomLip - v.bottomTongue;
  return (
    <>
      {[0, across - wall].map((x) => (
        <g key={x}>
          <rect class="wood-end" x={x} y={0} width={wall} height={height} />
          <path class="ring" d={wallRings(x, wall, height)} />
        </g>
      ))}
      <rect class="inside" x={wall - deep} y={v.lidLip} width={inside + 2 * deep} height={v.lidThickness} />
      <Piece
        x={wall - deep}
        y={v.lidLip + v.lidThickness - v.lidTongue}
        width={v.lidWidth + Math.min(grown, v.lidPlay)}
        high={v.lidTongue}
        angle={v.ringAngle}
      />
      <rect
        class="inside"
        x={wall - grooveDepth}
        y={bottom}
        width={inside + 2 * grooveDepth}
        height={v.bottomTongue}
      />
      <Piece
        x={wall - grooveDepth + v.bottomGap}
        y={bottom}
        width={v.bottomWidth}
        high={v.bottomTongue}
        angle={v.ringAngle}
      />
    </>
  );
}

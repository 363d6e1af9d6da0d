/** The box cut through lengthwise, mm, its upper left corner at 0: end walls hatched, bottom and sliding lid between them. */
import type { Values } from '../../box/whole/index.ts';

export function Section({ values: v }: { values: Values }) {
  const { outsideLength: length, outsideHeight: height, wall } = v;
  const bottomTop = height - v.bottomLip - v.bottomTongue;
  const body = Math.min(v.bottomThickness, v.bottomLip + v.bottomTongue);
  const inside = Math.max(0, length - 2 * wall);
  const shown = Math.min(wall, length / 2);
  const hollow = inside > 0 && v.insideHeight > 0;
  const depth = Math.min(v.grooveDepth, wall);
  const lidDepth = Math.min(v.lidGrooveDepth, wall);
  return (
    <>
      {hollow && <rect class="inside" x={wall} y="0" width={inside} height={height} />}
      <rect class="end" x="0" y="0" width={shown} height={height} />
      <rect class="end" x={length - shown} y="0" width={shown} height={height} />
      {hollow && (
        <path
          class="wood"
          d={`M${wall - depth} ${bottomTop}h${inside + 2 * depth}v${v.bottomTongue}h${-depth}v${body - v.bottomTongue}h${-inside}v${v.bottomTongue - body}h${-depth}z`}
        />
      )}
      {hollow && v.kind === 'sliding' && (
        <rect
          class="wood"
          x={wall - lidDepth}
          y={v.lidLip}
          width={inside + 2 * lidDepth}
          height={v.lidThickness}
        />
      )}
    </>
  );
}

/**
 * The end of one wall, drawn in oblique view: the end faces the reader in true shape, the length recedes to the upper
 * right at half its size. Shown are the faces that meet the other wall, by the kind of grain that meets there.
 */
import type { Values } from '../../box/whole/index.ts';
import { endOf, type Point } from './wall-faces.ts';

/** Share of the length that is drawn to the right and upward. */
const [aside, up] = [0.5, 0.38] as const;
/** How much of the wall is drawn, in thicknesses. */
const shown = 2.4;

/** Width and height of the drawing for a wall of this thickness and height, in mm. */
export const sizeOfEnd = (t: number, H: number): readonly [number, number] => [
  t + aside * shown * t,
  H + up * shown * t,
];

interface Props {
  values: Values;
  /** Lower left corner of the end, and user units per mm. */
  x: number;
  foot: number;
  scale: number;
  /** Whether the kinds of grain are told. */
  told: boolean;
}

export function WallEnd({ values: v, x, foot, scale, told }: Props) {
  const { wall: t, jointedHeight: H } = v;
  const path = (points: readonly Point[]) =>
    `M${points
      .map(
        ([along, y, z]) =>
          `${(x + (y + aside * along) * scale).toFixed(1)} ${(foot - (z + up * along) * scale).toFixed(1)}`,
      )
      .join('L')}Z`;
  const { faces, outer, inner } = endOf(v);
  const back = shown * t;
  const rabbet = v.joint === 'rabbet';
  return (
    <g>
      <path
        class="wood"
        d={path([
          [inner, t, 0],
          [back, t, 0],
          [back, t, H],
          [inner, t, H],
        ])}
      />
      <path
        class="wood"
        d={path(
          rabbet
            ? [
                [0, 0, H],
                [back, 0, H],
                [back, t, H],
                [t, t, H],
                [t, t / 2, H],
                [0, t / 2, H],
              ]
            : [
                [outer, 0, H],
                [back, 0, H],
                [back, t, H],
                [inner, t, H],
              ],
        )}
      />
      {faces.map(({ kind, points }, i) =>
        told && kind === 'long' ? (
          <path key={i} class="part-finger" fill="url(#band)" d={path(points)} />
        ) : (
          <path key={i} class={!told ? 'wood-end' : kind === 'cut' ? 'end' : 'wood'} d={path(points)} />
        ),
      )}
    </g>
  );
}

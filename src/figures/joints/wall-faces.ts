/** The faces at the end of one wall that meet the other wall, by the kind of grain that meets there, for each joint. */
import { practice } from '../../box/core/practice.ts';
import type { Values } from '../../box/whole/index.ts';
import { fingerLayout } from '../../calc/joints/finger-layout.ts';

/** x along the wall from its end, y from the outer face inward, z from the lower edge; mm. */
export type Point = readonly [x: number, y: number, z: number];

/** What a face meets: side grain with side grain, a face with cut fibers in it, or nothing. */
type Kind = 'long' | 'cut' | 'free';

interface Face {
  readonly kind: Kind;
  readonly points: readonly Point[];
}

const face = (kind: Kind, ...points: Point[]): Face => ({ kind, points });

/** Straight end: at `x`, from `y1` to `y2`, from `z1` to `z2`. */
const across = (kind: Kind, x: number, [y1, y2]: readonly number[], [z1, z2]: readonly number[]): Face =>
  face(kind, [x, y1!, z1!], [x, y2!, z1!], [x, y2!, z2!], [x, y1!, z2!]);

/** A piece of the wall that stands out at its end, with cheeks that slant by `e` toward its root. */
function tongue(t: number, [low, high]: readonly [number, number], H: number, e: number): Face[] {
  const [top, foot] = [high < H - 1e-6 ? high - e : high, low > 1e-6 ? low + e : low];
  return [
    face(high < H - 1e-6 ? 'long' : 'free', [0, 0, high], [0, t, high], [t, t, top], [t, 0, top]),
    face('cut', [0, t, low], [0, t, high], [t, t, top], [t, t, foot]),
    across('free', 0, [0, t], [low, high]),
  ];
}

/** Faces at the end of the wall, those in front last, and how far back its sides begin along the outer and inner face. */
export function endOf(v: Values): { faces: Face[]; outer: number; inner: number } {
  const { wall: t, jointedHeight: H } = v;
  const miter = (from: number, to: number, low: number, high: number, kind: Kind) =>
    face(kind, [from, from, low], [to, to, low], [to, to, high], [from, from, high]);
  switch (v.joint) {
    case 'finger':
      return {
        outer: t,
        inner: t,
        faces: [
          across('cut', t, [0, t], [0, H]),
          ...fingerLayout(H, v.fingerWidth)
            .filter(({ wall }) => wall === 'first')
            .flatMap(({ from, to }) => tongue(t, [from, to], H, 0)),
        ],
      };
    case 'dovetail': {
      const pitch = H / v.tailCount;
      return {
        outer: t,
        inner: t,
        faces: [
          across('cut', t, [0, t], [0, H]),
          ...Array.from({ length: v.tailCount }, (_, i) =>
            tongue(t, [i * pitch + v.pinWidth / 2, (i + 1) * pitch - v.pinWidth / 2], H, t / v.dovetailSlope),
          ).flat(),
        ],
      };
    }
    case 'rabbet':
      return {
        outer: 0,
        inner: t,
        faces: [
          across('cut', t, [t / 2, t], [0, H]),
          face('cut', [0, t / 2, 0], [t, t / 2, 0], [t, t / 2, H], [0, t / 2, H]),
          across('free', 0, [0, t / 2], [0, H]),
        ],
      };
    case 'butt':
      return { outer: 0, inner: 0, faces: [across('cut', 0, [0, t], [0, H])] };
    default: {
      const faces = [miter(0, t, 0, H, 'cut')];
      if (v.joint === 'keyed-mitre')
        for (let key = 0; key < v.keyCount; key++) {
          const middle = (H * (key + 0.5)) / v.keyCount;
          const [low, high] = [middle - v.keyThickness / 2, middle + v.keyThickness / 2];
          faces.push(miter(0, t / Math.SQRT2, low, high, 'long'));
        }
      if (v.joint === 'splined-mitre') {
        const to = v.wall - v.grooveDepth - practice.rabbetBeyondGroove / Math.SQRT2;
        faces.push(miter(Math.max(0, to - v.keyThickness / Math.SQRT2), to, 0, H, 'free'));
      }
      return { faces, outer: 0, inner: t };
    }
  }
}

/**
 * The growth rings on the box: worked out a little at a time once it stands still, and never before what works them out is
 * fetched; so a box that is turned, or seen for the first time, does not wait for them.
 */
import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import type { Part } from '../../box/design/part.ts';
import type { BenchPicture } from '../../figures/box/bench-picture.ts';
import type { Polygon } from '../../geometry/convex.ts';
import type { SeenFace } from '../../geometry/visible.ts';
import { useLate } from './Late.tsx';

/** How long the box must stand as it is before its growth rings are drawn, ms. */
const still = 250;
/** So long it is worked on them without a pause, ms. */
const slice = 4;
/** Millimeters on the sheet are the units of the drawing. */
const asItIs = { scale: 1, x: 0, y: 0 };

/** Path data of the rings on some faces; empty until they are known. */
export type RingsOn = (faces: readonly SeenFace<Part>[]) => string;

interface Known {
  readonly picture: BenchPicture;
  readonly rings: ReadonlyMap<Polygon, string>;
}

export function useRings(
  design: ReadonlySignal<Design>,
  picture: BenchPicture | undefined,
): RingsOn | undefined {
  const late = useLate(false);
  const known = useSignal<Known | undefined>(undefined);
  useEffect(() => {
    if (typeof late !== 'object' || !picture) return undefined;
    const rings = new Map<Polygon, string>();
    const { view } = picture;
    // Faces in one piece, and divided where corners or the inside are looked at.
    const faces = [
      ...picture.seen.flatMap((face) => face.polygons.map((polygon) => ({ face, polygon }))),
      ...picture.regions,
    ];
    let timer: ReturnType<typeof setTimeout>;
    const work = (from: number) => {
      const start = performance.now();
      for (let index = from; index < faces.length; index++) {
        const { face, polygon } = faces[index]!;
        if (!rings.has(polygon))
          rings.set(
            polygon,
            late.faceGrain(design.peek(), [{ ...face, polygons: [polygon] }], view, asItIs, true),
          );
        if (performance.now() - start > slice) {
          timer = setTimeout(work, 0, index + 1);
          return;
        }
      }
      known.value = { picture, rings };
    };
    timer = setTimeout(work, still, 0);
    return () => clearTimeout(timer);
  }, [picture, late]);
  const now = known.value;
  return useMemo(() => {
    if (!now || now.picture !== picture) return undefined;
    return (of) => of.flatMap(({ polygons }) => polygons.map((one) => now.rings.get(one) ?? '')).join('');
  }, [now, picture]);
}

/**
 * Through dovetail: tails on the sides, pins on the ends, half a pin at each edge.
 * On the end's outer face a tail is `height / tails − pin` wide and a full pin `pin`, its narrow side; at the root of the
 * tails, one wall further in, each tail is narrower by `wall / slope` on either side.
 */
import type { Prism } from '../../../geometry/solid.ts';
import { type Corner, type Joint, overlap, plain, type Segment } from './joint.ts';

/** More than this many are refused. */
export const mostTails = 50;

/** What each wall gets, on the end's outer face; no segments where the tails would have no root left. */
function dovetailLayout(height: number, tails: number, pin: number, slope: number, wall: number) {
  const count = Math.round(tails);
  const taper = wall / slope;
  const pitch = height / count;
  const fits = count >= 1 && count <= mostTails && pin > 0 && slope > 0 && pitch - pin - 2 * taper > 0;
  if (!fits) return { segments: [], taper: 0 };
  const segments: Segment[] = [{ from: 0, to: pin / 2, owner: 'end' }];
  for (let index = 0; index < count; index++) {
    const from = index * pitch + pin / 2;
    const to = (index + 1) * pitch - pin / 2;
    segments.push({ from, to, owner: 'side' });
    segments.push({ from: to, to: index + 1 < count ? to + pin : height, owner: 'end' });
  }
  return { segments, taper };
}

export const dovetail: Joint = {
  inset: () => 0,
  // An end lower than its sides gets its own spacing, so that half a pin still holds its upper edge.
  layout: ({ height, endHeight }, { values, wall }) => {
    const { segments, taper } = dovetailLayout(
      endHeight,
      values.tailCount,
      values.pinWidth,
      values.dovetailSlope,
      wall,
    );
    if (segments.length === 0) return { ...plain, segments: [{ from: 0, to: height, owner: 'side' }] };
    const above: Segment[] = endHeight < height ? [{ from: endHeight, to: height, owner: 'side' }] : [];
    return { ...plain, segments: [...segments, ...above], taper };
  },
  sideCuts: (corner, { wall }) => tapered(corner, wall, 'end', corner.taper),
  endCuts: (corner, { wall }) => tapered(corner, wall, 'side', -corner.taper),
  shows: (owner, corner, { wall }, low, high, depth) => {
    // On the end's face the tails show as drawn; on the side's face the pins, wider the further in the groove lies.
    const wider = owner === 'end' ? corner.taper : 0;
    return depth > 0 && wall > 0
      ? corner.segments.some(
          (segment) =>
            segment.owner === owner && overlap(low, high, segment.from - wider, segment.to + wider),
        )
      : false;
  },
};

/** Sockets for what the other wall owns, `spread` wider on either side at the root than on the outer face. */
function tapered(
  { segments, endHeight, height }: Corner,
  wall: number,
  other: 'side' | 'end',
  spread: number,
) {
  return segments
    .filter(({ owner, from }) => owner === other && from < endHeight)
    .map(({ from, to }): Prism => {
      const low = from > 0 ? from - spread : from;
      const edge = to >= Math.min(endHeight, height);
      const high = edge ? to : to + spread;
      return {
        axis: 'y',
        from: 0,
        to: wall,
        outline: [
          [0, from],
          [wall, low],
          [wall, high],
          [0, to],
        ],
      };
    });
}

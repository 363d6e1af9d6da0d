/** Finger joint: straight fingers of one width from the lower edge up, the first on the side. */
import { fingerLayout } from '../../../calc/joints/finger-layout.ts';
import { slot } from '../../../geometry/solid.ts';
import { type Joint, noise, overlap, plain, type Segment } from './joint.ts';

/** More than this many are refused: no setting out of small boxes comes near it. */
export const mostFingers = 200;

/** What a finger joint of that height gives each wall; an end that is lower than its sides loses what lies above it. */
function fingerSegments(height: number, width: number, endHeight = height) {
  if (!(width > 0 && height / width <= mostFingers)) return { segments: [], sliver: undefined };
  const segments: Segment[] = [];
  let sliver: number | undefined;
  for (const { from, to, wall } of fingerLayout(height, width)) {
    if (from >= endHeight - noise) break;
    const owner = wall === 'first' ? 'side' : 'end';
    const upper = owner === 'end' ? Math.min(to, endHeight) : to;
    if (width - (upper - from) > noise) sliver = Math.min(sliver ?? width, upper - from);
    // The socket in the side is as high as any other, whatever is cut off the front later.
    const opens = endHeight < height - noise && upper < Math.min(to, height) - noise;
    segments.push({ from, to: upper, owner, ...(opens && { socketTo: Math.min(to, height) }) });
  }
  // Above a lower end the side is left whole.
  const last = segments.at(-1);
  if (last && last.to < height - noise) {
    if (last.owner === 'side') segments[segments.length - 1] = { ...last, to: height };
    else segments.push({ from: last.socketTo ?? last.to, to: height, owner: 'side' });
  }
  return { segments, sliver };
}

/** Half of slot minus finger is lost at each border, a quarter on either side of it. */
const quarter = (fit: number, finger: number) => Math.min(Math.max(fit, 0), finger) / 4;

export const finger: Joint = {
  inset: () => 0,
  layout: ({ height, endHeight }, { values }) => {
    const { segments, sliver } = fingerSegments(height, values.fingerWidth, endHeight);
    return segments.length > 0
      ? { ...plain, segments, sliver }
      : { ...plain, segments: [{ from: 0, to: height, owner: 'side' }] };
  },
  sideCuts: ({ segments, height }, { wall, values }) => cuts('end', segments, height, wall, values),
  endCuts: ({ segments, height }, { wall, values }) => cuts('side', segments, height, wall, values),
  shows: (owner, { segments }, _plan, low, high) =>
    segments.some((segment) => segment.owner === owner && overlap(low, high, segment.from, segment.to)),
};

/** The sockets for the other wall's fingers. */
function cuts(
  other: 'side' | 'end',
  segments: readonly Segment[],
  height: number,
  wall: number,
  { fingerFit, fingerWidth }: { fingerFit: number; fingerWidth: number },
) {
  const room = quarter(fingerFit, fingerWidth);
  return segments
    .filter(({ owner }) => owner === other)
    .map(({ from, to: end, socketTo }) => {
      const to = other === 'end' ? (socketTo ?? end) : end;
      return slot({
        x: [0, wall],
        y: [0, wall],
        z: [from > noise ? from - room : from, to < height - noise ? to + room : to],
      });
    });
}

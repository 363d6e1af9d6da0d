/** Finger joint: straight fingers of one width from the lower edge up, the first on the side. */
import { slot } from '../solid.ts';
import { type Joint, noise, overlap, plain, type Segment } from './joint.ts';

/** More than this many are refused: no setting out of small boxes comes near it. */
export const mostFingers = 200;

/** What a finger joint of that height gives each wall; an end that is lower than its sides loses what lies above it. */
export function fingerLayout(height: number, finger: number, endHeight = height) {
  const count = height / finger;
  if (!(finger > 0 && count <= mostFingers)) return { segments: [], sliver: undefined };
  const segments: Segment[] = [];
  const part: number[] = [];
  for (let index = 0; index < count - noise; index++) {
    const from = index * finger;
    if (from >= endHeight - noise) break;
    const whole = from + finger;
    const to = Math.min(whole, index % 2 ? endHeight : height);
    if (whole - to > noise) part.push(to - from);
    segments.push({ from, to, owner: index % 2 ? 'end' : 'side' });
  }
  const last = segments.at(-1);
  if (last && last.to < height - noise) {
    if (last.owner === 'side') segments[segments.length - 1] = { ...last, to: height };
    else segments.push({ from: last.to, to: height, owner: 'side' });
  }
  return { segments, sliver: part.length > 0 ? Math.min(...part) : undefined };
}

/** Half of slot minus finger is lost at each border, a quarter on either side of it. */
const quarter = (fit: number, finger: number) => Math.min(Math.max(fit, 0), finger) / 4;

export const finger: Joint = {
  inset: () => 0,
  layout: ({ height, endHeight }, { values }) => {
    const { segments, sliver } = fingerLayout(height, values.fingerWidth, endHeight);
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
    .map(({ from, to }) =>
      slot({
        x: [0, wall],
        y: [0, wall],
        z: [from > noise ? from - room : from, to < height - noise ? to + room : to],
      }),
    );
}

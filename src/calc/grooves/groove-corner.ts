/**
 * Where a groove meets a corner of fingers: which ends it shows on, where a stopped groove stops.
 *
 *   seen from outside, the corner unfolded        Finger 1 stands at the lower edge and belongs to the first
 *                                                 pair of walls, finger 2 to the second pair, and so on.
 *    first pair    │ second pair
 *   ───────┐  · · · ┌──────────  3                A finger carries its wall's groove right to the end of the box:
 *   ┄┄┄┄┄┄┄┄┄┄┄┄┄□ ┄┄┄┄┄┄┄┄┄┄┄   2  ← groove       there a through groove shows as a hole. The other pair has a
 *   ───────┘  · · · └──────────  1                socket at that height; its groove runs out into it, unseen.
 *
 * Symbols: m height of the groove above the lower edge, b its width, f finger width, t wall, g depth (all mm).
 * Held fixed: fingers of one width, the first at the lower edge, both pairs of walls one thickness.
 * Source: geometry.
 */
import { relation } from '../core/relation.ts';

const part = { unit: 'mm', range: [0, 50] } as const;

/** Which pair of walls has the finger: the first has one at the lower edge, the second a socket there. */
export type Pair = 'first' | 'second';

/** One hole that a through groove leaves at a corner. Heights above the lower edge, mm. */
export interface Hole {
  /** The pair whose finger shows it. */
  readonly pair: Pair;
  readonly from: number;
  readonly to: number;
}

/** Room for arithmetic noise: a groove that starts on a boundary belongs to the finger above it. */
const noise = 1e-9;

/**
 * The holes that a through groove leaves at a corner, from below: one for each finger it crosses.
 * One hole means that stopping one pair hides it.
 * @param bottom height of the groove's lower side above the edge, mm, 0 or more
 * @param width of the groove, mm, more than 0
 * @param finger width of a finger, mm, more than 0
 */
export function cornerHoles(bottom: number, width: number, finger: number): Hole[] {
  const top = bottom + width;
  const holes: Hole[] = [];
  for (let n = Math.floor(bottom / finger + noise); n * finger < top - noise; n++)
    holes.push({
      pair: n % 2 === 0 ? 'first' : 'second',
      from: Math.max(bottom, n * finger),
      to: Math.min(top, (n + 1) * finger),
    });
  return holes;
}

/** Wood of the finger left above the groove that starts in it; negative by as much as the groove runs into the next finger. */
export const fingerAboveGroove = relation({
  id: 'finger-above-groove',
  title: 'Finger left above the groove',
  result: { symbol: 'r', name: 'finger left', unit: 'mm' },
  inputs: {
    m: { ...part, name: 'wood below the groove' },
    b: { ...part, name: 'width of the groove' },
    f: { name: 'finger width', unit: 'mm', range: [1, 50] },
  },
  expression: '(floor(m / f) + 1) f - m - b',
  compute: ({ m, b, f }) => (Math.floor(m / f + noise) + 1) * f - m - b,
  evidence: 'geometry',
  source: 'The upper end of the finger in which the groove starts, less the upper side of the groove.',
  limits: 'The first finger stands at the lower edge.',
});

/** Distance from the end of a wall at which its stopped groove ends, to hold a panel whose other edges lie in grooves as deep. */
export const grooveStop = relation({
  id: 'groove-stop',
  title: 'Where the stopped groove stops',
  result: { symbol: 'e', name: 'distance from the end', unit: 'mm' },
  inputs: { t: { ...part, name: 'wall thickness' }, g: { ...part, name: 'depth of the groove' } },
  expression: 't - g',
  compute: ({ t, g }) => t - g,
  evidence: 'geometry',
  source: 'The end of the wall lies under the neighbor, t thick; the panel reaches g into that neighbor.',
});

/** Width to cut a groove for the panel as measured. */
export const grooveWidth = relation({
  id: 'groove-width',
  title: 'Width of the groove for the panel',
  result: { symbol: 'b', name: 'width of the groove', unit: 'mm' },
  inputs: {
    p: { ...part, name: 'measured thickness of the panel’s edge' },
    s: { name: 'slip', unit: 'mm', range: [0, 2] },
  },
  expression: 'p + s',
  compute: ({ p, s }) => p + s,
  evidence: 'common practice',
  source: 'A slip of 0.2 to 0.3 mm, 0.010 in: common practice, no source.',
});

/** Step of a groove at a corner when both walls lie with the far edge on the fence: the difference of their heights. */
export const grooveStep = relation({
  id: 'groove-step',
  title: 'Step of the groove at the corner',
  result: { symbol: 's', name: 'step', unit: 'mm' },
  inputs: {
    h_1: { name: 'height of one wall', unit: 'mm', range: [1, 500] },
    h_2: { name: 'height of its neighbor', unit: 'mm', range: [1, 500] },
  },
  expression: 'h_1 - h_2',
  compute: ({ h_1, h_2 }) => h_1 - h_2,
  evidence: 'geometry',
  source: 'The lower edges stand level on the table, and the fence measured from the other edge.',
});

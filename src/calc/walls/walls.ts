/**
 * Wall thickness and size: what share of a box its walls are, the thickness most makers use, and what
 * working the wall asks of the maker.
 *
 *   p = 100 t / L                    share of a side taken by one wall
 *   t = min(max(L / n, a), b)        an end of the usual band, from the longest side
 *   v = 100 (1 - l w h / (L W H))    share of the outside volume that is not inside
 *   r = min(l - c_l, w - c_w, h - c_h)   room around the contents where it is tightest
 *
 * Symbols: L, W, H outside length, width, height; l, w, h inside; c contents, along l, w and h; t wall thickness; a, b least and most
 * wall that is used at all (all mm); n how many walls go into the longest side; p, v percent.
 * Held fixed: the outside sizes, when the wall moves.
 *
 * How the band is made (common practice, no published source): makers' accounts agree on about 1/25 of the
 * longest side. Taking 1/30 to 1/20 of it covers the sizes they name. No usual wall is thinner than 6 mm
 * (1/4 in) or thicker than 13 mm (1/2 in); 8 mm (5/16 in) still counts as usual on the smallest box, and
 * 9.5 mm (3/8 in) on the largest, since hands and cutters do not grow with the box.
 */
import { relation } from '../core/relation.ts';

const outside = { unit: 'mm', range: [20, 1000] } as const;
const inside = { unit: 'mm', range: [1, 1000] } as const;
const part = { unit: 'mm', range: [1, 50] } as const;
const clear = { unit: 'mm', range: [1, 2000] } as const;
const contents = { unit: 'mm', range: [0, 2000] } as const;

/** One wall as a share of a side, %. */
export const wallShare = relation({
  id: 'wall-share',
  title: 'One wall as a share of a side',
  result: { symbol: 'p', name: 'share of the side', unit: '%' },
  inputs: {
    t: { ...part, name: 'wall thickness' },
    L: { ...outside, name: 'outside length or width' },
  },
  expression: '100 t / L',
  compute: ({ t, L }) => (100 * t) / L,
  evidence: 'geometry',
  source: 'The wall against the side it stands in.',
});

/** The numbers that make the band: walls in the longest side, and the least and most wall used, mm. */
export const thinnestBand = { n: 30, a: 6, b: 9.5 } as const;
export const thickestBand = { n: 20, a: 8, b: 13 } as const;

/** One end of the usual band of wall thickness, mm. */
export const usualWall = relation({
  id: 'usual-wall',
  title: 'Usual wall for a box so long',
  result: { symbol: 't', name: 'wall thickness', unit: 'mm' },
  inputs: {
    L: { ...outside, name: 'longest outside side' },
    n: { name: 'walls that go into that side', unit: '1', range: [10, 50] },
    a: { ...part, name: 'never less than' },
    b: { ...part, name: 'never more than' },
  },
  expression: 'min(max(L / n, a), b)',
  compute: ({ L, n, a, b }) => Math.min(Math.max(L / n, a), b),
  evidence: 'common practice',
  source: 'The sizes makers name, from 1/30 to 1/20 of the longest side: no published source.',
  limits: 'For boxes of about 100 to 400 mm (4 to 16 in) with plain flat walls.',
});

/** What the walls, bottom, lid and the wood above and below them take of the outside volume, %. */
export const shareNotInside = relation({
  id: 'share-not-inside',
  title: 'Share of the outside that is not inside',
  result: { symbol: 'v', name: 'share of the outside volume', unit: '%' },
  inputs: {
    l: { ...inside, name: 'inside length' },
    w: { ...inside, name: 'inside width' },
    h: { ...inside, name: 'inside height' },
    L: { ...outside, name: 'outside length' },
    W: { ...outside, name: 'outside width' },
    H: { ...outside, name: 'outside height' },
  },
  expression: '100 (1 - l w h / (L W H))',
  compute: ({ l, w, h, L, W, H }) => 100 * (1 - (l * w * h) / (L * W * H)),
  evidence: 'geometry',
  source: 'Inside volume against outside volume.',
  limits: 'The air above a sliding lid and below the bottom counts as lost, for nothing fits there.',
});

/** What stands proud at a corner cut for a wall of another thickness, mm. */
export const stepAtCorner = relation({
  id: 'step-at-corner',
  title: 'Step at a corner of unequal walls',
  result: { symbol: 's', name: 'step', unit: 'mm' },
  inputs: {
    t_c: { ...part, name: 'thickness the joint was cut for' },
    t_a: { ...part, name: 'thickness of the wall that arrives' },
  },
  expression: 't_c - t_a',
  compute: ({ t_c, t_a }) => t_c - t_a,
  evidence: 'geometry',
  source: 'Fingers are cut as deep as the other wall is thick.',
});

/** Room around the contents of a bare box where it is tightest, mm. */
export const tightestRoom = relation({
  id: 'tightest-room',
  title: 'Room around the contents where it is tightest',
  result: { symbol: 'r', name: 'room left', unit: 'mm' },
  inputs: {
    l: { ...clear, name: 'clear inside length' },
    w: { ...clear, name: 'clear inside width' },
    h: { ...clear, name: 'inside height' },
    c_l: { ...contents, name: 'length of the contents' },
    c_w: { ...contents, name: 'width of the contents' },
    c_h: { ...contents, name: 'height of the contents' },
  },
  expression: 'min(l - c_l, w - c_w, h - c_h)',
  compute: ({ l, w, h, c_l, c_w, c_h }) => Math.min(l - c_l, w - c_w, h - c_h),
  evidence: 'geometry',
  source: 'What is left of the inside.',
});

/**
 * Sizes of a box with four walls of one thickness and panels in grooves.
 *
 *   inside = contents + room on both sides          outside = inside + two walls
 *   height = lip + tongue + inside + lid + lip      (a stack, from the table up)
 */
import { relation } from './relation.ts';

const size = { unit: 'mm', range: [1, 2000] } as const;
const part = { unit: 'mm', range: [0, 100] } as const;

/** Inside length or width around a block of contents. */
export const roomAround = relation({
  id: 'room-around',
  title: 'Inside from the contents',
  result: { symbol: 'l', name: 'inside size', unit: 'mm' },
  inputs: { c: { ...size, name: 'size of the contents' }, r: { ...part, name: 'room on each side' } },
  expression: 'c + 2 r',
  compute: ({ c, r }) => c + 2 * r,
  evidence: 'geometry',
  source: 'The room stands on both sides of the contents.',
});

/** Inside length or width around contents with all that may stand beside them. */
export const roomForFittings = relation({
  id: 'room-for-fittings',
  title: 'Inside from the contents, with lining and dividers',
  result: { symbol: 'l', name: 'inside size', unit: 'mm' },
  inputs: {
    c: { ...size, name: 'size of the contents' },
    r: { ...part, name: 'room on each side' },
    p: { ...part, name: 'room for fingers' },
    f: { name: 'lining on each face', unit: 'mm', range: [0, 10] },
    n: { name: 'number of dividers', unit: '1', range: [0, 20], whole: true },
    d: { name: 'divider thickness', unit: 'mm', range: [0, 20] },
    s: { name: 'slip of each divider', unit: 'mm', range: [0, 1] },
  },
  expression: 'c + 2 r + p + 2 f + n * (d + s)',
  compute: ({ c, r, p, f, n, d, s }) => c + 2 * r + p + 2 * f + n * (d + s),
  evidence: 'geometry',
  source: 'Everything that stands between the two walls, added up.',
});

/** Slip of a divider in its slot: common practice, 0.2 to 0.3 mm (0.010 in). */
export const dividerSlip = 0.25;

/** Inside height above a block of contents: room on one side only. */
export const roomAbove = relation({
  id: 'room-above',
  title: 'Inside height from the contents',
  result: { symbol: 'h', name: 'inside height', unit: 'mm' },
  inputs: { c: { ...size, name: 'height of the contents' }, r: { ...part, name: 'room above them' } },
  expression: 'c + r',
  compute: ({ c, r }) => c + r,
  evidence: 'geometry',
  source: 'The contents stand on the bottom, so the room is only above.',
});

/** Inside height over a lined floor. */
export const roomAboveLining = relation({
  id: 'room-above-lining',
  title: 'Inside height from the contents, with a lining',
  result: { symbol: 'h', name: 'inside height', unit: 'mm' },
  inputs: { ...roomAbove.inputs, f: { name: 'lining on the floor', unit: 'mm', range: [0, 10] } },
  expression: 'c + r + f',
  compute: ({ c, r, f }) => c + r + f,
  evidence: 'geometry',
  source: 'The contents stand on the lining, the lining on the bottom.',
});

/** A size that the reader gives directly. */
export const asGiven = relation({
  id: 'as-given',
  title: 'A size as you gave it',
  result: { symbol: 'l', name: 'inside size', unit: 'mm' },
  inputs: { x: { ...size, name: 'wanted inside size' } },
  expression: 'x',
  compute: ({ x }) => x,
  evidence: 'geometry',
  source: 'You chose this size; the others follow from it.',
});

/** Inside length or width from the outside. */
export const insideFromOutside = relation({
  id: 'inside-from-outside',
  title: 'Inside from the outside',
  result: { symbol: 'l', name: 'inside size', unit: 'mm' },
  inputs: { L: { ...size, name: 'outside size' }, t: { ...part, name: 'wall thickness' } },
  expression: 'L - 2 t',
  compute: ({ L, t }) => L - 2 * t,
  evidence: 'geometry',
  source: 'Each corner takes one wall, and there are two.',
});

/** Outside length or width from the inside. */
export const outsideFromInside = relation({
  id: 'outside-from-inside',
  title: 'Outside from the inside',
  result: { symbol: 'L', name: 'outside size', unit: 'mm' },
  inputs: { l: { ...size, name: 'inside size' }, t: { ...part, name: 'wall thickness' } },
  expression: 'l + 2 t',
  compute: ({ l, t }) => l + 2 * t,
  evidence: 'geometry',
  source: 'Each corner adds one wall, and there are two.',
});

const stackParts = {
  m_b: { ...part, name: 'wood below the bottom groove', tex: 'm_b' },
  b: { ...part, name: 'edge of the bottom' },
  d: { ...part, name: 'lid thickness' },
  m_d: { ...part, name: 'wood above the lid groove', tex: 'm_d' },
} as const;

/** Outside height of a sliding-lid box: a stack of five. */
export const heightStack = relation({
  id: 'height-stack',
  title: 'Outside height, a stack of five',
  result: { symbol: 'H', name: 'outside height', unit: 'mm' },
  inputs: { ...stackParts, h: { ...size, name: 'inside height' } },
  expression: 'm_b + b + h + d + m_d',
  compute: ({ m_b, b, h, d, m_d }) => m_b + b + h + d + m_d,
  evidence: 'geometry',
  source: 'Everything between the table and the top edge, added up.',
});

/** Inside height left of a given outside height. */
export const insideHeight = relation({
  id: 'inside-height',
  title: 'Inside height from the outside',
  result: { symbol: 'h', name: 'inside height', unit: 'mm' },
  inputs: { H: { ...size, name: 'outside height' }, ...stackParts },
  expression: 'H - m_b - b - d - m_d',
  compute: ({ H, m_b, b, d, m_d }) => H - m_b - b - d - m_d,
  evidence: 'geometry',
  source: 'The outside height less the four thicknesses that stand in it.',
});

/**
 * Sizes of a box with four walls of one thickness and panels in grooves.
 *
 *   inside = contents + room on both sides          outside = inside + two walls
 */
import { relation } from '../core/relation.ts';

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
    f: { name: 'lining on each face, and the liner of a lift-off lid', unit: 'mm', range: [0, 20] },
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

const liner = { name: 'thickness of the lid’s liner', unit: 'mm', range: [0, 20] } as const;

/** Inside length or width from wall to wall around a liner, for the room wanted within it. */
export const aroundLiner = relation({
  id: 'around-liner',
  title: 'Wall to wall around a liner',
  result: { symbol: 'l', name: 'inside size, wall to wall', unit: 'mm' },
  inputs: { x: { ...size, name: 'wanted inside size' }, q: liner },
  expression: 'x + 2 q',
  compute: ({ x, q }) => x + 2 * q,
  evidence: 'geometry',
  source: 'The liner of a lift-off lid stands along all four walls.',
});

/** Clear inside length or width, within the liner of a lift-off lid; without one, from wall to wall. */
export const withinLiner = relation({
  id: 'within-liner',
  title: 'Clear room within the liner',
  result: { symbol: 'l_c', name: 'clear inside size', unit: 'mm' },
  inputs: { l: { ...size, name: 'inside size, wall to wall' }, q: liner },
  expression: 'l - 2 q',
  compute: ({ l, q }) => l - 2 * q,
  evidence: 'geometry',
  source: 'The liner of a lift-off lid stands along all four walls.',
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

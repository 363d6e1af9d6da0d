/**
 * The room that a box leaves around its contents.
 *
 *   r = l - c - 2 f - n (d + s)      beside them, both sides together; half of it on each side
 *   r = h - c - f                    above them
 *
 * Symbols, all in mm: l, w, h inside; c contents, along the same direction; f lining on each face, d thickness of a
 * divider, s slip in its slot; n number of dividers. Below zero the contents do not go in.
 */
import { relation } from '../core/relation.ts';
import { roomForFittings } from '../size/sizes.ts';

const { f, n, d, s } = roomForFittings.inputs;
const inside = { unit: 'mm', range: [1, 2000] } as const;
const l = { ...inside, name: 'clear inside length' } as const;
const w = { ...inside, name: 'clear inside width' } as const;
const h = { ...inside, name: 'inside height' } as const;
const size = { unit: 'mm', range: [0, 2000] } as const;
const c = { ...size, name: 'size of the contents' } as const;
const leftOver = { evidence: 'geometry', source: 'What is left of the inside.' } as const;

/** Room beside the contents, both sides together, mm. */
export const roomBeside = relation({
  id: 'room-beside',
  title: 'Room beside the contents',
  result: { symbol: 'r', name: 'room, both sides together', unit: 'mm' },
  inputs: { l: { ...inside, name: 'clear inside size' }, c, f, n, d, s },
  expression: 'l - c - 2 f - n * (d + s)',
  compute: ({ l, c, f, n, d, s }) => l - c - 2 * f - n * (d + s),
  ...leftOver,
});

/** Room on each side of the contents, mm, held in the middle. */
export const roomEachSide = relation({
  id: 'room-each-side',
  title: 'Room on each side of the contents',
  result: { symbol: 'r', name: 'room on each side', unit: 'mm' },
  inputs: roomBeside.inputs,
  expression: '(l - c - 2 f - n * (d + s)) / 2',
  compute: (given) => roomBeside.compute(given) / 2,
  ...leftOver,
});

/** Room above the contents, mm. */
export const roomOver = relation({
  id: 'room-over',
  title: 'Room above the contents',
  result: { symbol: 'r', name: 'room above', unit: 'mm' },
  inputs: { h, c: { ...size, name: 'height of the contents' }, f },
  expression: 'h - c - f',
  compute: ({ h, c, f }) => h - c - f,
  ...leftOver,
});

/** Smallest of the three inside sizes, mm. */
export const smallestInside = relation({
  id: 'smallest-inside',
  title: 'Smallest inside size',
  result: { symbol: 'x', name: 'smallest inside size', unit: 'mm' },
  inputs: { l, w, h },
  expression: 'min(l, w, h)',
  compute: ({ l, w, h }) => Math.min(l, w, h),
  evidence: 'geometry',
  source: 'Length, width and height of the inside.',
});

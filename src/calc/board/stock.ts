/**
 * From a rough board to slices and strips.
 *
 *   n = floor((T + k) / (t + 2 p + k))    slices by resawing, both faces of each planed afterward
 *   S = 2 (L + W) + 3 k + m               strip for four walls in walk-round order
 *   S = L + W + k + m                     each half of a pair opened like a book
 *   T = 2 t + 4 p + k                     rough thickness of such a pair
 *
 * Symbols: T rough thickness, t finished thickness, p planed off each face, k kerf, L and W outside length and width,
 * m spare for trimming the two ends; all mm. n number of slices.
 * Held fixed: walls cut square or mitered have their outside length; nothing is lost to knots.
 */
import { relation } from '../core/relation.ts';

const size = { unit: 'mm', range: [20, 2000] } as const;
const thickness = { unit: 'mm', range: [1, 100] } as const;
const kerf = { name: 'kerf', unit: 'mm', range: [0.2, 10] } as const;
const planing = { name: 'planed off each face', unit: 'mm', range: [0, 10] } as const;
const spare = { name: 'spare for trimming', unit: 'mm', range: [0, 100] } as const;
const walls = { L: { ...size, name: 'outside length' }, W: { ...size, name: 'outside width' } } as const;

/** Spare length on a strip: common practice, half an inch; less has been called too hard to work with. */
export const trimSpare = 12;
/** Shortest piece for jointer, planer or a free rip: common practice, 12 in; the machine's manual may ask for more. */
export const shortestMachineLength = 304.8;

/** Whole slices that a rough thickness gives, each planed on both faces after sawing. */
export const slicesByResawing = relation({
  id: 'slices-by-resawing',
  title: 'Slices by resawing',
  result: { symbol: 'n', name: 'slices', unit: '1' },
  inputs: {
    T: { ...thickness, name: 'rough thickness' },
    t: { ...thickness, name: 'finished thickness', range: [1, 50] },
    p: planing,
    k: kerf,
  },
  expression: 'floor((T + k) / (t + 2 p + k))',
  // A board exactly thick enough gives its last slice, whatever the arithmetic's last digit says.
  compute: ({ T, t, p, k }) => Math.floor(((T + k) / (t + 2 * p + k)) * (1 + 1e-12)),
  evidence: 'geometry',
  source: 'Each slice takes its thickness, two planed faces and one saw cut; the last slice needs no cut.',
});

/** Length of strip for four walls cut in the order in which one walks round the box. */
export const stripForWalls = relation({
  id: 'strip-for-walls',
  title: 'One strip for all four walls',
  result: { symbol: 'S', name: 'length of strip', unit: 'mm' },
  inputs: { ...walls, k: kerf, m: spare },
  expression: '2 (L + W) + 3 k + m',
  compute: ({ L, W, k, m }) => 2 * (L + W) + 3 * k + m,
  evidence: 'geometry',
  source: 'Four parts have three cuts between them.',
});

/** Length of each half of a resawn pair that gives one side and one end. */
export const pairForWalls = relation({
  id: 'pair-for-walls',
  title: 'Each half of a pair opened like a book',
  result: { symbol: 'S', name: 'length of each half', unit: 'mm' },
  inputs: { ...walls, k: kerf, m: spare },
  expression: 'L + W + k + m',
  compute: ({ L, W, k, m }) => L + W + k + m,
  evidence: 'geometry',
  source: 'Each half gives one side and one end, with one cut between them.',
});

/** Rough thickness that two matching slices need. */
export const thicknessForPair = relation({
  id: 'thickness-for-pair',
  title: 'Rough thickness for a pair',
  result: { symbol: 'T', name: 'rough thickness', unit: 'mm' },
  inputs: { t: { ...thickness, name: 'finished thickness' }, p: planing, k: kerf },
  expression: '2 t + 4 p + k',
  compute: ({ t, p, k }) => 2 * t + 4 * p + k,
  evidence: 'geometry',
  source: 'Two slices, four faces to plane, one saw cut.',
});

/**
 * From a rough board to slices; how long a strip must be stands in `strip-length.ts`.
 *
 *   n = floor((T + k) / (t + 2 p + k))    slices by resawing, both faces of each planed afterward
 *   T = 2 t + 4 p + k                     rough thickness of such a pair
 *
 * Symbols: T rough thickness, t finished thickness, p planed off each face, k kerf; all mm. n number of slices.
 */
import { relation } from '../core/relation.ts';

const thickness = { unit: 'mm', range: [1, 100] } as const;
const kerf = { name: 'kerf', unit: 'mm', range: [0.2, 10] } as const;
const planing = { name: 'planed off each face', unit: 'mm', range: [0, 10] } as const;

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

/** How many parts must stay in one strip so that the strip is long enough for a machine. */
export const partsKeptJoined = relation({
  id: 'parts-kept-joined',
  title: 'Parts to keep in one strip',
  result: { symbol: 'n', name: 'number of parts', unit: '1' },
  inputs: {
    s: { name: 'shortest safe length', unit: 'mm', range: [100, 1000] },
    p: { name: 'length of one part', unit: 'mm', range: [20, 600] },
    k: { name: 'saw cut between parts', unit: 'mm', range: [0, 6] },
  },
  expression: 'ceil((s + k) / (p + k))',
  // The last digits of a division must not ask for one part more.
  compute: ({ s, p, k }) => Math.ceil((s + k) / (p + k) - 1e-9),
  evidence: 'geometry',
  source: 'A strip of n parts is n parts and n − 1 saw cuts long.',
  limits: 'What is safe says the manual of the machine, and the longest figure counts.',
});

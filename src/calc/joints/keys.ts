/**
 * Keys and splines in a miter.
 *
 * A key is a slip let in across the corner from outside. Its slot is a level triangle: seen from above, its floor stands
 * square to the diagonal of the corner, d in from the outer edge.
 *
 *   diagonal of the corner           t √2
 *   wood left behind the slot        w = t √2 − d              0.41 t for a slot as deep as the wall is thick
 *   faces of N keys on each wall     A = N d²                  two faces a key, a triangle of d²/2 in either wall
 *   height of wall for one key       h = H / N
 *
 * A slot for a key lies level, along the grain of both walls, so its faces are side grain. A spline lies the other way:
 * its grooves stand square to the miter, and cut the fibers of both walls at 45° as the miter itself does.
 *
 *   faces of a spline on each wall   A = 2 g H
 *
 * Symbols: t thickness of both walls, d depth of the slot along the diagonal, w wood left, H height of the corner,
 * g depth of the spline's groove into each miter face; mm. N keys in the corner.
 * Held fixed: both walls are equally thick and their grain runs along them; the floors of the slots are not counted.
 */
import { relation } from '../core/relation.ts';

const t = { name: 'wall thickness', unit: 'mm', range: [1, 30] } as const;
const d = { name: 'depth of the slot along the diagonal', unit: 'mm', range: [0.5, 40] } as const;
const H = { name: 'height of the corner', unit: 'mm', range: [5, 600] } as const;
const N = { name: 'keys in the corner', unit: '1', range: [1, 50], whole: true } as const;

/** Depth of a key’s slot from the outer edge along the diagonal, mm: as deep as the wall is thick. */
export const keyDepth = relation({
  id: 'key-depth',
  title: 'Depth of the slot for a key',
  result: { symbol: 'd', name: 'depth along the diagonal', unit: 'mm' },
  inputs: { t },
  expression: 't',
  compute: (v) => v.t,
  evidence: 'common practice',
  source: 'As deep as the wall is thick, measured in from the corner’s edge.',
});

/** Wood between the floor of a key’s slot and the inside of the box, mm; below zero the slot breaks through. */
export const keyLeft = relation({
  id: 'key-left',
  title: 'Wood left behind a key',
  result: { symbol: 'w', name: 'wood left along the diagonal', unit: 'mm' },
  inputs: { t, d },
  expression: 't sqrt(2) - d',
  compute: (v) => v.t * Math.SQRT2 - v.d,
  evidence: 'geometry',
  source: 'The diagonal of a square corner is √2 times as long as its walls are thick.',
});

/** Long grain on long grain of all keys of a corner, on each of the two walls, mm². */
export const keyGlueArea = relation({
  id: 'key-glue-area',
  title: 'Long-grain glue area of the keys on each wall',
  result: { symbol: 'A', name: 'long-grain glue area on each wall', unit: 'mm^2' },
  inputs: { N, d },
  expression: 'N d^2',
  compute: (v) => v.N * v.d ** 2,
  evidence: 'geometry',
  source: 'Half of a key lies in each wall: a triangle of d²/2, glued above and below.',
  limits: 'Counts area only. The key’s grain crosses that of the walls at 45°.',
});

/** Height of the corner that falls to one key, mm. */
export const keySpacing = relation({
  id: 'key-spacing',
  title: 'Height of the corner for one key',
  result: { symbol: 'h', name: 'height for one key', unit: 'mm' },
  inputs: { H, N },
  expression: 'H / N',
  compute: (v) => v.H / v.N,
  evidence: 'geometry',
  source: 'The height shared out among the keys.',
});

/** Faces of a spline on each of the two walls, mm²; the fibers of the walls are cut at 45° there. */
export const splineGlueArea = relation({
  id: 'spline-glue-area',
  title: 'Glue area of a spline on each wall',
  result: { symbol: 'A', name: 'glue area on each wall', unit: 'mm^2' },
  inputs: { H, g: { name: 'depth of the groove in each miter face', unit: 'mm', range: [0.5, 20] } },
  expression: '2 g H',
  compute: ({ H: height, g }) => 2 * g * height,
  evidence: 'geometry',
  source: 'Two faces of the groove, over the whole height.',
  limits: 'The groove cuts the wall’s fibers at 45°, as the miter does.',
});

/**
 * The run of a sliding lid in its two side grooves: when a pull off the middle jams it.
 *
 *      ┌───────────────┐
 *      │               │← N       pull F, parallel to the grooves, at e off the middle
 *      │       ·       │          twist  F e = N L,  N the side forces at two opposite corners
 *   N →│               │          rubbing there  2 mu N = (2 mu e / L) F
 *      └──────────┬────┘          it moves while F (1 - 2 mu e / L) is more than the ordinary drag
 *                 ↓ F
 *
 *   jams at or below  L = 2 mu e      pull at the very edge, e = W/2:  L = mu W
 *   drag factor  1 / (1 - 2 mu e / L)      rattle angle  asin((W + c)/√(W² + L²)) − atan(W/L), nearly c/L
 *
 * Symbols: L length of lid still in the grooves, e distance of the pull from the middle, W width of the lid, c play
 * across, both sides together (mm); mu friction of lid on groove (a pure number). F cancels: no pull, however hard,
 * moves a jammed lid, and c is not in the condition.
 * Friction of wood on wood at rest: chestnut 0.46, from 0.36 to 0.55 by direction (Villar-García and others 2020, seen in
 * the abstract). Waxed wood: about 0.2, from memory.
 * Held fixed: mu, the same at both rubbing places; the lid stiff, its grooves straight; the pull parallel to them.
 */
import { relation } from '../core/relation.ts';

const mu = { name: 'friction of lid on groove', unit: '1', range: [0.05, 1] } as const;
const e = { name: 'distance of the pull from the middle', unit: 'mm', range: [0, 300] } as const;
const L = { name: 'length of lid in the grooves', unit: 'mm', range: [5, 1000] } as const;
const derived = {
  evidence: 'derived',
  source: 'Balance of forces and moments on a stiff lid; friction at two opposite corners.',
  limits:
    'The pull is parallel to the grooves. A lid that bows, a crooked groove or grit holds it sooner. Friction differs with wood, direction and damp.',
} as const;

/** Length of lid in the grooves, mm, at and below which a pull off the middle jams it, however hard the pull. */
export const jamLength = relation({
  id: 'jam-length',
  title: 'Length in the grooves below which the lid jams',
  result: { symbol: 'L_j', name: 'jam length', unit: 'mm' },
  inputs: { mu, e },
  expression: '2 * mu * e',
  compute: ({ mu, e }) => 2 * mu * e,
  ...derived,
});

/** The same for a pull at the very edge of the lid, mm: the worst there is. */
export const jamLengthAtEdge = relation({
  id: 'jam-length-at-edge',
  title: 'Jam length for a pull at the edge of the lid',
  result: { symbol: 'L_e', name: 'jam length at the edge', unit: 'mm' },
  inputs: { mu, W: { name: 'width of the lid', unit: 'mm', range: [10, 600] } },
  expression: 'mu * W',
  compute: ({ mu, W }) => mu * W,
  ...derived,
});

/** How many times the ordinary drag a pull off the middle needs; NaN for a lid that jams. */
export const dragFactor = relation({
  id: 'drag-factor',
  title: 'Drag of a pull off the middle',
  result: { symbol: 'k', name: 'times the ordinary drag', unit: '1' },
  inputs: { mu, e, L },
  // A hair above the jam length, where the factor has no end.
  rangesGiven: ({ mu, e }) => ({ L: [2.001 * mu * e, L.range[1]] }),
  expression: '1 / (1 - 2 * mu * e / L)',
  compute: ({ mu, e, L }) => (L > 2 * mu * e ? 1 / (1 - (2 * mu * e) / L) : Number.NaN),
  ...derived,
});

/** Length of a sliding lid still in its side grooves when it is half open, mm; closed, it reaches from the front of the box into the groove of the back. */
export const heldHalfOpen = relation({
  id: 'lid-held-half-open',
  title: 'Length of lid in the grooves, half open',
  result: { symbol: 'L_h', name: 'length in the grooves, half open', unit: 'mm' },
  inputs: {
    l: { name: 'inside length', unit: 'mm', range: [20, 1000] },
    t: { name: 'wall thickness', unit: 'mm', range: [2, 30] },
    g: { name: 'groove depth', unit: 'mm', range: [1, 20] },
  },
  expression: '(l + t + g) / 2',
  compute: ({ l, t, g }) => (l + t + g) / 2,
  evidence: 'geometry',
  source: 'The lid is as long as the inside, the front wall and the depth of the back’s groove.',
});

/** By how far the lid can turn between its grooves before two opposite corners touch, deg. */
export const rattleAngle = relation({
  id: 'rattle-angle',
  title: 'Turn that the play allows',
  result: { symbol: 'alpha', name: 'rattle angle', unit: 'deg' },
  inputs: {
    c: { name: 'play across, both sides together', unit: 'mm', range: [0, 10] },
    W: { name: 'width of the lid', unit: 'mm', range: [10, 600] },
    L,
  },
  // With more play than the lid is longer across its corners than wide, it turns freely.
  rangesGiven: ({ W, L }) => ({ c: [0, 0.999 * (Math.hypot(W, L) - W)] }),
  expression: 'asin((W + c) / sqrt(W^2 + L^2)) - atan(W / L)',
  compute: ({ c, W, L }) => ((Math.asin((W + c) / Math.hypot(W, L)) - Math.atan(W / L)) * 180) / Math.PI,
  evidence: 'geometry',
  source: 'The turned lid is W cos a + L sin a wide, and touches where that is W + c.',
});

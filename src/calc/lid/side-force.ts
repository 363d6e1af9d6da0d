/**
 * What a pull off the middle does at the two corners of a sliding lid that stands askew between its grooves.
 *
 *      │ ┌──────────┐ │
 *   N →│╱          ╱  │      the corners touch W + c apart across the box, and the rest of the diagonal apart along it:
 *      │          ╱   │      lever  a = √(W² + L² − (W + c)²), nearly L
 *      │ └──────────┘ │← N   twist  F e = N a,  rubbing  2 mu N
 *                 ↓ F
 *
 * Symbols: F pull (N), e its distance from the middle, W width of the lid, L length of it still in the grooves, c play
 * across, both sides together (mm); mu friction, a pure number.
 * Rubbing does not change N: both corners rub the same way, as far to the right of the middle as to the left.
 * Held fixed: the lid stiff, its grooves straight, the pull parallel to them; the ordinary drag acts in the middle.
 */
import { relation } from '../core/relation.ts';

const derived = {
  evidence: 'derived',
  source: 'Balance of forces and moments on a stiff lid that touches its grooves at two opposite corners.',
  limits: 'The pull is parallel to the grooves. A lid that bows, or a crooked groove, touches elsewhere.',
} as const;

/** Force, N, with which each of the two corners presses on its groove; half of it at half the pull. */
export const sideForce = relation({
  id: 'side-force',
  title: 'Force at each corner of a lid pulled off its middle',
  result: { symbol: 'N', name: 'force at each corner', unit: 'N' },
  inputs: {
    F: { name: 'pull', unit: 'N', range: [0, 200] },
    e: { name: 'distance of the pull from the middle', unit: 'mm', range: [0, 300] },
    W: { name: 'width of the lid', unit: 'mm', range: [10, 600] },
    L: { name: 'length of lid in the grooves', unit: 'mm', range: [5, 1000] },
    c: { name: 'play across, both sides together', unit: 'mm', range: [0, 10] },
  },
  // With more play than the lid is longer across its corners than wide, it turns freely.
  rangesGiven: ({ W, L }) => ({ c: [0, 0.95 * (Math.hypot(W, L) - W)] }),
  expression: 'F * e / sqrt(W^2 + L^2 - (W + c)^2)',
  compute: ({ F, e, W, L, c }) => (F * e) / Math.sqrt(W ** 2 + L ** 2 - (W + c) ** 2),
  ...derived,
});

/** Rubbing of both corners together, N; as much as the pull, or more, and the lid stands still. */
export const cornerRubbing = relation({
  id: 'corner-rubbing',
  title: 'Rubbing of both corners',
  result: { symbol: 'R', name: 'rubbing of both corners', unit: 'N' },
  inputs: {
    mu: { name: 'friction of lid on groove', unit: '1', range: [0.05, 1] },
    N: { name: 'force at each corner', unit: 'N', range: [0, 1000] },
  },
  expression: '2 * mu * N',
  compute: ({ mu, N }) => 2 * mu * N,
  ...derived,
});

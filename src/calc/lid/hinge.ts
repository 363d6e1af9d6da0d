/**
 * A hinge let in along the back: what too deep and too shallow do, and its screws.
 *
 *   gap  g = k − d_b − d_l       k knuckle, d_b and d_l depths let into box and lid (mm); below zero the wood meets first
 *   front stands open by  s = 2 W sin(atan(o / (2 a))),  nearly  W o / a
 *
 * Where the leaves are let in too deep by o = −g in all, box and lid would have to lie o into each other. They meet at
 * their back edges, a in front of the pin: the lid turns on them until a corner o/2 past the pin’s level clears the other.
 * Held fixed: a stiff pin and hard edges. Real wood crushes and screws give, so a real lid stands open less.
 */
import { relation } from '../core/relation.ts';

const depth = { unit: 'mm', range: [0, 15] } as const;

/** Gap along the back of the shut lid, mm; below zero the lid is bound and springs open. */
export const hingeGap = relation({
  id: 'hinge-gap',
  title: 'Gap along the back of a hinged lid',
  result: { symbol: 'g', name: 'gap along the back', unit: 'mm' },
  inputs: {
    k: { name: 'thickness of the knuckle', unit: 'mm', range: [1, 20] },
    d_b: { ...depth, name: 'depth let into the box' },
    d_l: { ...depth, name: 'depth let into the lid' },
  },
  expression: 'k - d_b - d_l',
  compute: ({ k, d_b, d_l }) => k - d_b - d_l,
  evidence: 'geometry',
  source: 'The shut hinge is as thick as its knuckle; what is not let in stays between box and lid.',
  limits: 'For hinges whose leaves lie side by side when shut and are as thick together as the knuckle.',
});

/** How far the front of the lid stands open, mm, where the hinges are let in too deep. */
export const springOpen = relation({
  id: 'spring-open',
  title: 'Opening at the front, hinges too deep',
  result: { symbol: 's', name: 'opening at the front', unit: 'mm' },
  inputs: {
    W: { name: 'from the pin to the front', unit: 'mm', range: [20, 600] },
    o: { name: 'too deep, both leaves together', unit: 'mm', range: [0, 2] },
    a: { name: 'from the back of the box to the pin', unit: 'mm', range: [1, 15] },
  },
  expression: '2 * W * sin(atan(o / (2 * a)))',
  compute: ({ W, o, a }) => 2 * W * Math.sin(Math.atan(o / (2 * a))),
  evidence: 'derived',
  source: 'The lid turns about the pin until the back edges of lid and box clear each other.',
  limits: 'Edges crush and screws give, so a real lid stands open less.',
});

/** Longest screw, mm, that does not come through. */
export const longestScrew = relation({
  id: 'longest-screw',
  title: 'Longest screw',
  result: { symbol: 'l_s', name: 'longest screw', unit: 'mm' },
  inputs: {
    T: { name: 'wood along the screw', unit: 'mm', range: [2, 100] },
    m: { name: 'wood left before its point', unit: 'mm', range: [0, 5] },
  },
  rangesGiven: ({ T }) => ({ m: [0, T] }),
  expression: 'T - m',
  compute: ({ T, m }) => T - m,
  evidence: 'common practice',
  source: 'A point nearer than about 1 mm shows on the other side or lifts the surface: common practice.',
});

/** Diameter of a pilot hole, mm: a share of the screw’s core. */
export const pilotHole = relation({
  id: 'pilot-hole',
  title: 'Pilot hole of a screw',
  result: { symbol: 'b', name: 'pilot hole', unit: 'mm' },
  inputs: {
    c: { name: 'core of the screw, without its thread', unit: 'mm', range: [0.5, 10] },
    s: { name: 'share of the core', unit: '1', range: [0.5, 1] },
  },
  expression: 's * c',
  compute: ({ s, c }) => s * c,
  evidence: 'from memory',
  source: 'About 0.7 of the core in softwoods and 0.9 in hardwoods, as remembered from handbooks.',
});

/**
 * The web: the wood left behind a groove.
 *
 *   w = t - g            strength left (w/t)²            stiffness left (w/t)³
 *
 * Symbols: t wall thickness, g groove depth, w web (mm).
 * Held fixed: grain along the wall, so the wall bends across its grain at the groove.
 * Source: beam theory, as in `grooves.ts`; a rectangle's strength goes with its thickness squared, its stiffness cubed.
 */
import { relation } from '../core/relation.ts';

const depth = { name: 'depth of the groove', unit: 'mm', range: [0, 15] } as const;
const wall = { name: 'wall thickness', unit: 'mm', range: [3, 50] } as const;

/** Share of the wall that a groove takes. */
export const grooveShare = relation({
  id: 'groove-share',
  title: 'Depth of the groove as a share of the wall',
  result: { symbol: 's', name: 'share of the wall', unit: '%' },
  inputs: { g: depth, t: wall },
  expression: '100 g / t',
  compute: ({ g, t }) => (100 * g) / t,
  evidence: 'geometry',
  source: 'One length over another.',
});

/** Wood left behind the groove. Negative where the groove is deeper than the wall. */
export const web = relation({
  id: 'web',
  title: 'Wood left behind the groove',
  result: { symbol: 'w', name: 'web', unit: 'mm' },
  inputs: { t: wall, g: depth },
  expression: 't - g',
  compute: ({ t, g }) => t - g,
  evidence: 'geometry',
  source: 'The wall less the groove.',
});

const webParts = { w: { name: 'web', unit: 'mm', range: [0, 50] }, t: wall } as const;

/** Bending strength across the grain left in the web, as a share of the plain wall's. */
export const webStrength = relation({
  id: 'web-strength',
  title: 'Strength left behind the groove',
  result: { symbol: 'S', name: 'strength left', unit: '%' },
  inputs: webParts,
  expression: '100 (w / t)^2',
  compute: ({ w, t }) => 100 * (w / t) ** 2,
  evidence: 'derived',
  source: 'Beam theory: bending strength goes with the square of the thickness.',
  limits: 'The sharp corner of the groove, which weakens it further, is not in it.',
});

/** Bending stiffness across the grain left in the web, as a share of the plain wall's. */
export const webStiffness = relation({
  id: 'web-stiffness',
  title: 'Stiffness left behind the groove',
  result: { symbol: 'B', name: 'stiffness left', unit: '%' },
  inputs: webParts,
  expression: '100 (w / t)^3',
  compute: ({ w, t }) => 100 * (w / t) ** 3,
  evidence: 'derived',
  source: 'Beam theory: bending stiffness goes with the cube of the thickness.',
  limits: 'Of the strip at the groove alone; the rest of the wall keeps its own.',
});

/**
 * Cup: how deep a flat face goes hollow, from curved rings and from faces of unequal moisture.
 *
 *   rings     c = (1 − S_R) R [cos(k φ)/cos φ − 1],   φ = atan(w/2R),   k = (1 − S_T)/(1 − S_R)
 *             c ≈ (S_T − S_R) (w/2) atan(w/2R)         any width
 *             c ≈ w² (S_T − S_R)/(4R)                  narrow boards
 *   faces     c = C δM w²/(8T)
 *
 * Symbols: c depth of the hollow (mm), w width (mm), R distance from the pith to the face, square to it (mm),
 * S_R, S_T shrinkage of the change as fractions, C movement of the width per 1 % MC, δM moisture of one face minus
 * the other (%), T thickness (mm). Held fixed: the piece is free, and for the rings equally moist all through.
 * Drying hollows the bark side; the drier face is the hollow one.
 */
import { relation } from '../core/relation.ts';

const w = { name: 'width', unit: 'mm', range: [5, 400] } as const;
const R = { name: 'distance from the pith to the face', unit: 'mm', range: [10, 1000] } as const;
const S_R = { name: 'shrinkage across the rings', unit: '1', range: [-0.1, 0.1] } as const;
const S_T = { name: 'shrinkage along the rings', unit: '1', range: [-0.15, 0.15] } as const;
const result = { symbol: 'c', name: 'depth of the cup', unit: 'mm' } as const;
const fromMap = 'The stress-free map of log-shape, at the middle and the corners of the face.';

/** A board is narrow while its width is at most this share of R; there the narrow formula is within 5 % of the exact. */
export const NARROW = 0.75;

/** Cup of a face that lies square to the line from the pith through its middle. */
export const cupExact = relation({
  id: 'cup-exact',
  title: 'Cup of a flat-sawn board, exactly',
  result,
  inputs: { w, R, S_R, S_T },
  expression: '(1 - S_R) * R * (cos((1 - S_T) / (1 - S_R) * atan(w / (2 R))) / cos(atan(w / (2 R))) - 1)',
  compute: ({ w, R, S_R, S_T }) => {
    const corner = Math.atan(w / (2 * R));
    return (1 - S_R) * R * (Math.cos(((1 - S_T) / (1 - S_R)) * corner) / Math.cos(corner) - 1);
  },
  evidence: 'derived',
  source: fromMap,
  limits: 'Round rings, pith outside the piece and square below its middle, nothing holding it.',
});

/** The same to first order in the shrinkages. */
export const cupAnyWidth = relation({
  id: 'cup-any-width',
  title: 'Cup of a flat-sawn board of any width',
  result,
  inputs: { w, R, S_R, S_T },
  expression: '(S_T - S_R) * w / 2 * atan(w / (2 R))',
  compute: ({ w, R, S_R, S_T }) => ((S_T - S_R) * w * Math.atan(w / (2 * R))) / 2,
  evidence: 'derived',
  source: fromMap,
  limits: 'Shrinkages of a few percent at most.',
});

/** The same for boards narrow against their distance from the pith. */
export const cupNarrow = relation({
  id: 'cup-narrow',
  title: 'Cup of a narrow flat-sawn board',
  result,
  inputs: { w, R, S_R, S_T },
  rangesGiven: ({ R }) => ({ w: [w.range[0], NARROW * R] }),
  expression: 'w^2 * (S_T - S_R) / (4 R)',
  compute: ({ w, R, S_R, S_T }) => (w * w * (S_T - S_R)) / (4 * R),
  evidence: 'derived',
  source: fromMap,
  limits: 'Width at most three quarters of the distance from the pith; beyond that it says too much.',
});

/** The share of a full turn that a whole dried disk is short of. */
export const missingWedge = relation({
  id: 'missing-wedge',
  title: 'The wedge a drying log end has to open',
  result: { symbol: 'u', name: 'share of the full turn', unit: '1' },
  inputs: { S_R, S_T },
  expression: '1 - (1 - S_T) / (1 - S_R)',
  compute: ({ S_R, S_T }) => 1 - (1 - S_T) / (1 - S_R),
  evidence: 'derived',
  source: 'The stress-free map of log-shape: a full turn maps to less than one.',
});

export { cupFromFaces } from '../movement/cup-faces.ts';

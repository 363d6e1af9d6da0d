/**
 * Coats by the number: what a coat leaves, how many a fit bears, how much goes on a box, and a mix by its parts.
 *
 *   h = w s              n = (p − q) / (f h)
 *   A = 2 (L b + L H + b H)              V_i = V a / P
 *
 * Symbols: w wet film of a coat, h what it leaves dry (mm), s share of the volume that stays (solids); p play before the
 * finish, q play to keep (mm), f faces with a film, n coats; L, b, H outside of the box (mm), A its area (mm²);
 * V a batch and V_i one liquid in it (mm³), a parts of that liquid, P all parts together.
 * Held fixed: even coats; liquids whose volumes add up.
 */
import { relation } from '../core/relation.ts';
import { filmBuild } from './finish-film.ts';

/** Wet film of one brushed coat, mm: common practice. At three tenths of solids it leaves the usual 0.03 mm. */
export const BRUSHED_WET = 0.1;
/** Least play of a tongue in its thickness, mm: common practice, 0.2 to 0.4 mm. */
export const LEAST_SLIP = 0.2;
/** A sheet of office paper, mm: from memory. */
export const PAPER = 0.1;

/** What a wet coat leaves. */
export const dryFilm = relation({
  id: 'dry-film',
  title: 'What a wet coat leaves',
  result: { symbol: 'h', name: 'dry film of one coat', unit: 'mm' },
  inputs: {
    w: { name: 'wet film of one coat', unit: 'mm', range: [0.01, 0.3] },
    s: { name: 'share of the volume that does not evaporate', unit: '1', range: [0.01, 1] },
  },
  expression: 'w s',
  compute: ({ w, s }) => w * s,
  evidence: 'geometry',
  source: 'What evaporates leaves the rest on the same area.',
  limits: 'What soaks into the wood is lost to the film.',
});

/** Coats until only the least play is left; whole coats are the number below. */
export const coatsThatFit = relation({
  id: 'coats-that-fit',
  title: 'Coats that a fit bears',
  result: { symbol: 'n', name: 'coats', unit: '1' },
  inputs: {
    p: { name: 'play before the finish', unit: 'mm', range: [0, 10] },
    q: { name: 'play to keep', unit: 'mm', range: [0, 10] },
    f: filmBuild.inputs.f,
    h: filmBuild.inputs.h,
  },
  rangesGiven: ({ p }) => ({ q: [0, p] }),
  expression: '(p - q) / (f h)',
  compute: ({ p, q, f, h }) => (p - q) / (f * h),
  evidence: 'common practice',
  source: 'Geometry; the thickness of a coat is common practice and differs a lot between products.',
});

const side = { unit: 'mm', range: [5, 2000] } as const;

/** The six outer faces of a shut box, mm². */
export const outsideArea = relation({
  id: 'outside-area',
  title: 'Outer faces of a shut box',
  result: { symbol: 'A', name: 'area', unit: 'mm^2' },
  inputs: {
    L: { ...side, name: 'outside length' },
    b: { ...side, name: 'outside width' },
    H: { ...side, name: 'outside height' },
  },
  expression: '2 * (L * b + L * H + b * H)',
  compute: ({ L, b, H }) => 2 * (L * b + L * H + b * H),
  evidence: 'geometry',
  source: 'Six faces, equal in pairs.',
  limits: 'The top counts as one flat face.',
});

/** How much of one liquid goes into a batch, mm³. */
export const blendPart = relation({
  id: 'blend-part',
  title: 'One liquid of a batch',
  result: { symbol: 'V_i', tex: 'V_i', name: 'volume of this liquid', unit: 'mm^3' },
  inputs: {
    V: { name: 'volume of the batch', unit: 'mm^3', range: [1, 1e7] },
    a: { name: 'parts of this liquid', unit: '1', range: [0, 20] },
    P: { name: 'all parts together', unit: '1', range: [1, 60] },
  },
  rangesGiven: ({ P }) => ({ a: [0, P] }),
  expression: 'V * a / P',
  compute: ({ V, a, P }) => (V * a) / P,
  evidence: 'geometry',
  source: 'Each part is the same share of the whole.',
  limits: 'By volume. A label that gives parts by weight means weight.',
});

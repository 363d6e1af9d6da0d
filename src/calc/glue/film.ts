/**
 * Films of glue: how thick one is, what it comes to over an area, and what a joint leaves for it.
 *
 *   w = s / ρ           film of a spread
 *   V = A w             glue in a film
 *   a = ∛(A w)          edge of a cube of that glue
 *   w = c / 2           film beside a finger with play c, the same on both of its sides
 *   V = A (w_1 − w_2)   squeeze-out: what the clamp presses out of a film
 *
 * Symbols: w film (mm), s spread (g/m²), ρ density of the liquid glue (kg/m³), A area (mm²), V volume (mm³), c slot
 * minus finger (mm).
 */
import { relation } from '../core/relation.ts';

const A = { name: 'glued area', unit: 'mm^2', range: [1, 2e6] } as const;
const w = { name: 'thickness of the film', unit: 'mm', range: [0.01, 1] } as const;

/** Wet film of a spread, mm. */
export const filmOfSpread = relation({
  id: 'film-of-spread',
  title: 'Film of wet glue',
  result: { symbol: 'w', name: 'thickness of the film', unit: 'mm' },
  inputs: {
    s: { name: 'spread', unit: 'g/m^2', range: [50, 400] },
    rho: { name: 'density of the liquid glue', unit: 'kg/m^3', range: [900, 1400], tex: '\\rho' },
  },
  expression: 's / rho',
  compute: ({ s, rho }) => s / rho,
  evidence: 'geometry',
  source: 'A film is its volume over its area.',
  limits: 'As it is spread. The clamp presses part of it out, and the water in it leaves.',
});

/** Glue in a film over an area, mm³ (1000 mm³ = 1 ml). */
export const glueVolume = relation({
  id: 'glue-volume',
  title: 'Glue in a film',
  result: { symbol: 'V', name: 'volume of glue', unit: 'mm^3' },
  inputs: { A, w },
  expression: 'A * w',
  compute: ({ A, w }) => A * w,
  evidence: 'geometry',
  source: 'A film is an area times its thickness.',
  limits: 'End grain drinks more, and some stays on the brush.',
});

/** Edge of a cube that holds the glue of a film, mm: what it looks like on the bench. */
export const glueCube = relation({
  id: 'glue-cube',
  title: 'The glue of a film as a cube',
  result: { symbol: 'a', name: 'edge of the cube', unit: 'mm' },
  inputs: { A, w },
  expression: '(A * w)^(1/3)',
  compute: ({ A, w }) => Math.cbrt(A * w),
  evidence: 'geometry',
  source: 'The cube of its edge is its volume.',
});

/** Film that a finger’s play leaves beside it, mm. */
export const filmInFingers = relation({
  id: 'film-in-fingers',
  title: 'Room for glue beside a finger',
  result: { symbol: 'w', name: 'room for the film', unit: 'mm' },
  inputs: { c: { name: 'slot minus finger', unit: 'mm', range: [0, 1] } },
  expression: 'c / 2',
  compute: ({ c }) => c / 2,
  evidence: 'geometry',
  source: 'A finger in the middle of its slot has half the play on either side.',
  limits: 'Dry. The water of the glue swells the finger and takes most of it.',
});

/** Glue that the clamp presses out of a joint, mm³. */
export const squeezeOut = relation({
  id: 'squeeze-out',
  title: 'Squeeze-out of a joint',
  result: { symbol: 'V', name: 'glue pressed out', unit: 'mm^3' },
  inputs: {
    A,
    w_1: { ...w, name: 'film as it is spread' },
    w_2: { ...w, name: 'film that stays in the joint' },
  },
  rangesGiven: ({ w_1 }) => ({ w_2: [0.01, w_1] }),
  expression: 'A * (w_1 - w_2)',
  compute: ({ A, w_1, w_2 }) => A * (w_1 - w_2),
  evidence: 'geometry',
  source: 'What the thinner film no longer holds has to go somewhere.',
  limits: 'What soaks into the wood is counted as pressed out.',
});

/** Density of liquid white or yellow glue, kg/m³, and its share of water by mass: from memory, no source seen. */
export const liquidGlue = { density: 1100, water: 0.5 } as const;
/** Thickest film that is said to hold best, mm and in: from memory. */
export const thickestFilm = { mm: 0.15, inch: 0.006 } as const;

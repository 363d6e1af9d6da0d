/**
 * A side pushed at mid-span by a thumb: how far it gives, and the stress in it.
 *
 *   I = H t^3 / 12
 *   delta = P L^3 / (48 E I)  = P L^3 / (4 E H t^3)     ends free to turn: the most it can give
 *   delta = P L^3 / (192 E I) = P L^3 / (16 E H t^3)    ends held fast: the least
 *   sigma = (P L / 4) / (H t^2 / 6)                     ends free to turn
 *
 * Symbols: P push (N); L free length between the end walls, H height, t thickness of the side (mm); E stiffness
 * along the grain, sigma stress (MPa); delta how far it gives (mm).
 * Glued corners lie between the two ends, and a bottom in its groove holds the lower edge besides. Grooves are
 * not taken off, and shear is left out: at E/G = 16 it adds about 19 (t/L)^2. Beam theory: Timoshenko, Strength of Materials.
 */
import { relation } from '../core/relation.ts';

const side = {
  P: { name: 'push', unit: 'N', range: [1, 500] },
  L: { name: 'length between the end walls', unit: 'mm', range: [40, 1000] },
  E: { name: 'stiffness along the grain', unit: 'MPa', range: [2000, 30000] },
  H: { name: 'height of the side', unit: 'mm', range: [10, 400] },
  t: { name: 'wall thickness', unit: 'mm', range: [2, 30] },
} as const;
/** The least length of a side, in thicknesses, for which it is reckoned as a beam. */
const slender = 10;
/** Whether a side so long and thick (mm) bends as a beam, so that the relations below hold. */
export const bendsAsBeam = (length: number, thickness: number) => thickness <= length / slender;
const limits =
  'Shear adds a twentieth to the bend of a side twenty times as long as thick, and a fifth at ten times.';
const source = 'Beam theory (Timoshenko, Strength of Materials).';

/** Stiffness along the grain from the bending figure of the tables, MPa. */
export const stiffnessAlongGrain = relation({
  id: 'stiffness-along-grain',
  title: 'Stiffness along the grain',
  result: { symbol: 'E_L', name: 'stiffness along the grain', unit: 'MPa' },
  inputs: {
    E_b: { name: 'stiffness of the bending test', unit: 'MPa', range: [2000, 30000] },
  },
  expression: '1.1 E_b',
  compute: ({ E_b }) => 1.1 * E_b,
  evidence: 'published',
  source: 'Wood Handbook (2021), note to Table 5-1: the bending test also shears, which takes off a tenth.',
});

/** How far a side gives if its ends could turn freely, mm: the most. */
export const sidePushFree = relation({
  id: 'side-push-free',
  title: 'Side pushed at mid-span, ends free to turn',
  result: { symbol: 'delta', name: 'how far it gives', unit: 'mm' },
  inputs: side,
  rangesGiven: ({ L }) => ({ t: [0, L / slender] }),
  expression: 'P L^3 / (4 E H t^3)',
  compute: ({ P, L, E, H, t }) => (P * L ** 3) / (4 * E * H * t ** 3),
  evidence: 'derived',
  source,
  limits: `${limits} The bottom in its groove takes off more.`,
});

/** How far a side gives if its ends were held fast, mm: the least, were there no bottom. */
export const sidePushHeld = relation({
  id: 'side-push-held',
  title: 'Side pushed at mid-span, ends held fast',
  result: { symbol: 'delta', name: 'how far it gives', unit: 'mm' },
  inputs: side,
  rangesGiven: ({ L }) => ({ t: [0, L / slender] }),
  expression: 'P L^3 / (16 E H t^3)',
  compute: ({ P, L, E, H, t }) => (P * L ** 3) / (16 * E * H * t ** 3),
  evidence: 'derived',
  source,
  limits: `${limits} Glued corners turn a little, so they give more.`,
});

/** Greatest bending stress in the pushed side, along the grain, MPa. */
export const sidePushStress = relation({
  id: 'side-push-stress',
  title: 'Stress in the pushed side',
  result: { symbol: 'sigma', name: 'bending stress', unit: 'MPa' },
  inputs: { P: side.P, L: side.L, H: side.H, t: side.t },
  rangesGiven: ({ L }) => ({ t: [0, L / slender] }),
  expression: '3 P L / (2 H t^2)',
  compute: ({ P, L, H, t }) => (3 * P * L) / (2 * H * t ** 2),
  evidence: 'derived',
  source,
  limits:
    'Ends free to turn, which is the worst. Clear wood of the tables bears 45 MPa or more along the grain.',
});

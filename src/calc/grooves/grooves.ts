/**
 * Lips beside grooves: what the wood between a groove and the edge of its wall holds, and what is put on it.
 *
 *            t
 *        ┌────────┐ ─┐      q  = σ m² / (6 d)        load on each mm that splits the lip off, bending across the grain
 *        │   lip  │  m      τ / σ = m / (4 d)        shear beside bending, at the root
 *        │    ┌───┘ ─┘      F  = q (a + 2 d)         push on a width a, spread to both sides at 45°
 *        │web │ ← groove    q  = W / (2 (l + b))     weight of the contents, on all four lips
 *        │    └───┐         q  = W / (2 (l + b)) · (1 + h / s)   the same, stopped on the way s after a fall h
 *             |-d-|
 *
 * Symbols: m lip, d lever arm from the groove's root to the load (at worst the groove's depth), t wall, a width of a
 * thumb, l and b inside length and width, h fall, s stopping way (mm); σ strength pulled across the grain (MPa);
 * F, W forces (N); q load on each mm of lip (N/mm).
 * Held fixed: the grain runs along the wall, so the lip bends across its grain, its weak way.
 *
 * Beam theory holds while the arm is at least half the lip's thickness, d >= m / 2. A stubbier lip is counted as
 * if it were only 2 d thick: more wood cannot make it weaker, and beam theory would promise too much.
 *
 * Source: beam theory (Timoshenko, Strength of Materials, from memory), applied to a lip; no test of box lips was found.
 * Over 150 lines: the loads on a lip and the thickness they ask for are one derivation.
 */
import { relation } from '../core/relation.ts';

/** Width over which a thumb presses, mm. From memory: the flat of a thumb tip is some 10 to 15 mm wide. */
export const thumbWidth = 10;

const strength = {
  name: 'strength pulled across the grain',
  unit: 'MPa',
  range: [1, 15],
  tex: '\\sigma_t',
} as const;
const lip = { name: 'thickness of the lip', unit: 'mm', range: [0.5, 25] } as const;
const arm = { name: 'lever arm: depth of the groove', unit: 'mm', range: [0.5, 15] } as const;
const lineLoad = { name: 'load on each mm of lip', unit: 'N/mm', range: [0, 1000] } as const;
const inside = { unit: 'mm', range: [10, 2000] } as const;
const perimeterLoad = {
  W: { name: 'weight of the contents', unit: 'N', range: [0, 500] },
  l: { ...inside, name: 'inside length' },
  b: { ...inside, name: 'inside width' },
} as const;
const stubbyLimits =
  'Only for an arm of less than half the lip. Shear across the fibers, which grows in importance there, is not in it.';
const strengthLimits =
  'The strength is the mean of small clear pieces: expect half or a third of it from a real lip with a sharp groove corner.';

/** Whether beam theory speaks about a lip: its lever arm is at least half its thickness (both mm). */
export const isSlender = (thickness: number, leverArm: number): boolean => leverArm >= thickness / 2;

/** Load on each mm of a slender lip that splits it off. For `isSlender` lips; else use `stubbyLipLoad`. */
export const lipLoad = relation({
  id: 'lip-load',
  title: 'Load that splits off the lip',
  result: { symbol: 'q', name: 'load on each mm of lip', unit: 'N/mm' },
  inputs: { sigma_t: strength, m: { ...lip }, d: arm },
  expression: 'sigma_t m^2 / (6 d)',
  compute: ({ sigma_t, m, d }) => (sigma_t * m ** 2) / (6 * d),
  evidence: 'derived',
  source: 'Beam theory: a strip held at one edge and bent across the grain.',
  limits: `${strengthLimits} Valid while the arm is at least half the lip.`,
});

/** The same for a lip too stubby for beam theory: counted as 2 d thick. Meets `lipLoad` where m = 2 d. */
export const stubbyLipLoad = relation({
  id: 'stubby-lip-load',
  title: 'Load that a stubby lip takes, at least',
  result: { symbol: 'q', name: 'load on each mm of lip', unit: 'N/mm' },
  inputs: { sigma_t: strength, d: arm },
  expression: '2 sigma_t d / 3',
  compute: ({ sigma_t, d }) => (2 * sigma_t * d) / 3,
  evidence: 'derived',
  source: 'Beam theory for a lip twice as thick as the groove is deep; the wood beyond that is not counted.',
  limits: `${strengthLimits} ${stubbyLimits}`,
});

/** Peak shear as a share of the bending stress at the root of the lip; above one half beam theory no longer serves. */
export const lipShear = relation({
  id: 'lip-shear',
  title: 'Shear in the lip, beside bending',
  result: { symbol: 'r', name: 'shear over bending stress', unit: '1' },
  inputs: { m: lip, d: arm },
  expression: 'm / (4 d)',
  compute: ({ m, d }) => m / (4 * d),
  evidence: 'derived',
  source: 'Beam theory: shear 1.5 q / m over bending 6 q d / m².',
});

/** Push at one place that a lip takes: the load spreads from the thumb to both sides. */
export const lipPush = relation({
  id: 'lip-push',
  title: 'Push at one place that the lip takes',
  result: { symbol: 'F', name: 'push', unit: 'N' },
  inputs: { q: lineLoad, a: { name: 'width of a thumb', unit: 'mm', range: [0, 50] }, d: arm },
  expression: 'q * (a + 2 d)',
  compute: ({ q, a, d }) => q * (a + 2 * d),
  evidence: 'derived',
  source:
    'The push is taken to spread at 45° from its edges to the root of the groove: a usual assumption, not measured here.',
});

/** The thinnest lip, mm, that takes a push at one place: `lipLoad` and `lipPush` solved for m. For lips up to 2 d thick. */
export const lipForPush = relation({
  id: 'lip-for-push',
  title: 'Thinnest lip that takes a push',
  result: { symbol: 'm', name: lip.name, unit: 'mm' },
  inputs: {
    F: { name: 'push', unit: 'N', range: [0, 500] },
    sigma_t: strength,
    a: { name: 'width of a thumb', unit: 'mm', range: [0, 50] },
    d: arm,
  },
  expression: 'sqrt(6 d F / (sigma_t * (a + 2 d)))',
  compute: ({ F, sigma_t, a, d }) => Math.sqrt((6 * d * F) / (sigma_t * (a + 2 * d))),
  evidence: 'derived',
  source: 'The load that splits a lip, spread from the thumb, set equal to the push.',
  limits: `${strengthLimits} Valid while the arm is at least half the lip.`,
});

/** What contents at rest put on each mm of the four lips. */
export const contentsLoad = relation({
  id: 'contents-load',
  title: 'Contents at rest, on each mm of lip',
  result: { symbol: 'q', name: 'load on each mm of lip', unit: 'N/mm' },
  inputs: perimeterLoad,
  expression: 'W / (2 (l + b))',
  compute: ({ W, l, b }) => W / (2 * (l + b)),
  evidence: 'derived',
  source: 'The weight shared evenly by the four walls. 1 kg weighs 9.81 N.',
});

/** What the same contents put on the lips when the box falls and stops: the mean over the stopping way. */
export const dropLoad = relation({
  id: 'drop-load',
  title: 'Contents of a dropped box, on each mm of lip',
  result: { symbol: 'q', name: 'load on each mm of lip', unit: 'N/mm' },
  inputs: {
    ...perimeterLoad,
    h: { name: 'height of the fall', unit: 'mm', range: [0, 2000] },
    s: { name: 'way on which it stops', unit: 'mm', range: [1, 100] },
  },
  expression: 'W / (2 (l + b)) * (1 + h / s)',
  compute: ({ W, l, b, h, s }) => (W / (2 * (l + b))) * (1 + h / s),
  evidence: 'derived',
  source: 'Energy: the weight works over fall and stop, the lips over the stop alone.',
  limits: 'The mean force; the peak is higher. The stopping way is a guess: carpet more, tiles less.',
});

/**
 * Depth of a flaw at which the wood breaks before its table strength is reached: how sharp corners and saw marks count.
 * Toughness in MPa√m, so 1000 turns meters into mm; that is why it is marked as a fit.
 */
export const criticalFlaw = relation({
  id: 'critical-flaw',
  title: 'Flaw that brings the strength down to the table figure',
  result: { symbol: 'c', name: 'depth of the flaw', unit: 'mm' },
  inputs: { K: { name: 'toughness in MPa√m', unit: '1', range: [0.1, 1] }, sigma_t: strength },
  expression: '1000 / pi * (K / (1.12 sigma_t))^2',
  compute: ({ K, sigma_t }) => (1000 / Math.PI) * (K / (1.12 * sigma_t)) ** 2,
  evidence: 'from memory',
  fit: true,
  source: 'Fracture mechanics of an edge crack; toughness of wood about 0.2 to 0.5 MPa√m (Wood Handbook§).',
});

/**
 * Where the water of the glue goes: into the wood beside the line, which swells, and out through both faces.
 *
 *   ΔM = 100 k s r / (ρ √(4 π D t))    moisture that the glue has added at the line itself
 *   h = T C ΔM / 2                     what the wood stands up there, on each face
 *   x = √(2 D t)                       how far to each side most of it has got
 *   f = exp((38500 − 290 M)/R (1/Θ − 1/293.15))   how many times slower it goes at another temperature
 *
 * Symbols: s spread of the glue (g/m²), k its share of water (1), ρ oven-dry density of the wood (kg/m³), D diffusion
 * coefficient (mm²/day), t time since gluing (day), r share of the added water that has not left through the faces
 * (1), T thickness of the wall (mm), C movement for 1 % moisture (1), M moisture content (%), θ temperature (°C),
 * Θ = θ + 273.15, R = 8.314.
 *
 * Spreading along the face and leaving through the faces are two slabs at right angles, so their shares multiply:
 * along the face the water of a thin line lies as a bell that gets wider and lower, and r is what the series of
 * `air/diffusion-series.ts` leaves in a slab as thick as the wall.
 * Held fixed: a straight line of glue that goes through the wall, wood on both sides that reaches further than the
 * bell, one D in both directions, all the water in at the start.
 */
import { fractionDone } from '../air/diffusion-series.ts';
import { isRefused } from '../core/refusal.ts';
import { relation } from '../core/relation.ts';

const D = { name: 'diffusion coefficient', unit: 'mm^2/day', range: [0.5, 20] } as const;

/** Moisture that the glue has added at its line, % points. */
export const waterAtLine = relation({
  id: 'glue-water-at-line',
  title: 'Rise in moisture at the glue line',
  result: { symbol: 'dM', tex: '\\Delta M', name: 'rise in moisture at the line', unit: '%', points: true },
  inputs: {
    s: { name: 'spread', unit: 'g/m^2', range: [50, 400] },
    k: { name: 'share of water in the glue', unit: '1', range: [0, 0.7] },
    r: { name: 'share of it that has not left through the faces', unit: '1', range: [0, 1] },
    rho: { name: 'oven-dry density of the wood', unit: 'kg/m^3', range: [200, 1200], tex: '\\rho' },
    D,
    t: { name: 'time since gluing', unit: 'day', range: [0.5, 365] },
  },
  expression: '100 k s r / (rho sqrt(4 pi D t))',
  compute: ({ s, k, r, rho, D, t }) => (100 * k * s * r) / (rho * Math.sqrt(4 * Math.PI * D * t)),
  evidence: 'derived',
  source: 'A thin line of water that spreads to both sides, times what a slab has left.',
  limits:
    'The first half day is left out: the wood near the line is soaked then. The diffusion coefficient is known to a factor of about two, and end grain lets water out sooner.',
});

/** By how much the wood beside the line sinks later on each face, if it is leveled now, mm. */
export const sunkenLine = relation({
  id: 'sunken-line',
  title: 'How deep the line will sink',
  result: { symbol: 'h', name: 'depth of the line on each face', unit: 'mm' },
  inputs: {
    T: { name: 'thickness of the wall', unit: 'mm', range: [1, 60] },
    C: { name: 'movement per 1 % moisture content', unit: '1', range: [0.0001, 0.006] },
    dM: { name: 'rise in moisture at the line', unit: '%', points: true, range: [0, 25], tex: '\\Delta M' },
  },
  expression: 'T C dM / 2',
  compute: ({ T, C, dM }) => (T * C * dM) / 2,
  evidence: 'derived',
  source:
    'The coefficient method of the Wood Handbook, half of the swelling on either face, along the rings, where wood moves most.',
  limits: 'What stands up today and is leveled is missing when it has dried.',
});

/** How far from the line two thirds of the water have got, to each side, mm. */
export const waterReach = relation({
  id: 'glue-water-reach',
  title: 'How far the glue’s water has got',
  result: { symbol: 'x', name: 'distance from the line', unit: 'mm' },
  inputs: { D, t: { name: 'time since gluing', unit: 'day', range: [0.01, 365] } },
  expression: 'sqrt(2 D t)',
  compute: ({ D, t }) => Math.sqrt(2 * D * t),
  evidence: 'derived',
  source: 'The spread of a thin line of water: two thirds of it lie within this distance.',
  limits: 'Time goes with distance squared. Good to the factor of two in the diffusion coefficient.',
});

/** How many times as long water takes through wood as it does at 20 °C. */
export const slowerWhenCold = relation({
  id: 'water-slower-when-cold',
  title: 'How many times slower water leaves through the wood than at 20 °C',
  result: { symbol: 'f', name: 'times as long as at 20 °C', unit: '1' },
  inputs: {
    theta: { name: 'temperature', unit: 'degC', range: [0, 40], tex: '\\theta' },
    M: { name: 'moisture content', unit: '%', range: [4, 20] },
  },
  expression: 'exp((38500 - 290 M) / 8.314 * (1 / (theta + 273.15) - 1 / 293.15))',
  compute: ({ theta, M }) => Math.exp(((38500 - 290 * M) / 8.314) * (1 / (theta + 273.15) - 1 / 293.15)),
  evidence: 'from memory',
  source: 'siau-1984',
  limits:
    'Water bound in the wood alone. Whether the glue forms a film in the cold is another matter: see its label.',
});

/**
 * Share of the added water that is still in a wall so many days later, both faces bare.
 * @param thickness of the wall, mm. @param diffusion mm²/day. @param surface mm/day. @param days since gluing.
 * @returns 1 to 0; NaN for a wall or a wood without meaning.
 */
export function waterLeft(thickness: number, diffusion: number, surface: number, days: number): number {
  const done = fractionDone({ thickness, diffusion, surface }, days);
  return isRefused(done) ? Number.NaN : 1 - done;
}

/** Share of the moisture at the line that lies so far beside it, mm: a bell of width √(2 D t). */
export const besideLine = (away: number, diffusion: number, days: number): number =>
  Math.exp(-(away ** 2) / (4 * diffusion * days));

/**
 * The bottom panel: how far it sags, how high it sounds, how much a tap moves it.
 *
 *   w = 5 F a^3 / (32 b E h^3)       sag of a strip carried at its two ends: more than the panel's
 *   f = (pi/2) sqrt((D_x/a^4 + 2 B/(a^2 b^2) + D_y/b^4) / (rho h)),  proportional to h
 *   D_x = E_x h^3 / (12 (1 - nu^2 E_y/E_x)),  D_y likewise,  B = nu D_x E_y/E_x + 2 G h^3/12
 *
 * Symbols: a along and b across the grain, h thickness (mm); F load spread over the panel (N); E, E_x, E_y, G
 * stiffness along, along, across the grain and in shear (MPa); nu Poisson's ratio along-across; rho (kg/m³).
 * Range: thin plates, h below about 1/20 of the short side, small sag, all four edges carried.
 * A loose panel rattles and sits lower in stiffness.
 *
 * Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, ch. 11; mobility: Cremer, Heckl and
 * Petersson, Structure-Borne Sound.
 */
import { relation } from '../core/relation.ts';

const side = { unit: 'mm', range: [40, 600] } as const;
const thickness = { unit: 'mm', range: [1, 25] } as const;

/** Sag of the bottom under a spread load, mm: a bound, since a panel carried on four edges sags less. */
export const bottomSagBound = relation({
  id: 'bottom-sag-bound',
  title: 'Sag of the bottom, at most',
  result: { symbol: 'w', name: 'sag in the middle', unit: 'mm' },
  inputs: {
    F: { name: 'weight of the contents', unit: 'N', range: [0.1, 200] },
    a: { ...side, name: 'length of the panel along the grain' },
    b: { ...side, name: 'its width' },
    E: { name: 'stiffness along the grain', unit: 'MPa', range: [1000, 30000] },
    h: { ...thickness, name: 'bottom thickness' },
  },
  rangesGiven: ({ a }) => ({ h: [0, a / 10] }),
  expression: '5 F a^3 / (32 b E h^3)',
  compute: ({ F, a, b, E, h }) => (5 * F * a ** 3) / (32 * b * E * h ** 3),
  evidence: 'derived',
  source: 'Beam theory (Timoshenko, Strength of Materials): a strip carried at its two ends only.',
  limits: 'Four carried edges sag less, a panel thinned at its edges somewhat more.',
});

const toCompare = {
  h: { ...thickness, name: 'bottom thickness' },
  h_0: { ...thickness, name: 'thickness to compare with' },
} as const;

/** How far a tap moves the bottom, % of what it moves another of thickness h_0. */
export const tapMotion = relation({
  id: 'tap-motion',
  title: 'How far a tap moves the bottom',
  result: { symbol: 'y', name: 'motion against the other bottom', unit: '%' },
  inputs: toCompare,
  expression: '100 (h_0 / h)^2',
  compute: ({ h, h_0 }) => 100 * (h_0 / h) ** 2,
  evidence: 'derived',
  source: 'Mobility of a thin plate goes with 1/h² (Cremer, Heckl and Petersson, Structure-Borne Sound).',
  limits:
    'Same wood, size and edges; thinner than about 1/20 of the short side. A soft knuckle moves a thick bottom still less than this says.',
});

/** How much higher the bottom's lowest note is than that of another of thickness h_0. */
export const tapPitch = relation({
  id: 'tap-pitch',
  title: 'Pitch of the bottom',
  result: { symbol: 'r', name: 'pitch against the other bottom', unit: '1' },
  inputs: toCompare,
  expression: 'h / h_0',
  compute: ({ h, h_0 }) => h / h_0,
  evidence: 'derived',
  source: 'Frequencies of a thin plate go with its thickness (Timoshenko and Woinowsky-Krieger, ch. 11).',
  limits: 'Same wood, size and edges. Past about 1/20 of the short side the pitch rises somewhat less.',
});

/** The inputs of a relation on a panel of wood. */
export const panel = {
  h: { ...thickness, name: 'bottom thickness' },
  a: { ...side, name: 'length along the grain' },
  b: { ...side, name: 'width across the grain' },
  rho: { name: 'density', unit: 'kg/m^3', range: [100, 1400] },
  E_x: { name: 'stiffness along the grain', unit: 'MPa', range: [4000, 30000] },
  E_y: { name: 'stiffness across the grain', unit: 'MPa', range: [100, 4000] },
  G: { name: 'shear stiffness in the panel', unit: 'MPa', range: [100, 4000] },
  nu: { name: 'Poisson’s ratio, along to across', unit: '1', range: [0.2, 0.7] },
} as const;

/** A panel of wood, units as in `panel` above: mm, kg/m³, MPa. */
export type Panel = Readonly<Record<keyof typeof panel, number>>;

/** Lowest note of a panel carried on four edges, Hz. */
export const firstTapFrequency = relation({
  id: 'first-tap-frequency',
  title: 'Lowest note of the bottom',
  result: { symbol: 'f', name: 'frequency', unit: 'Hz' },
  inputs: panel,
  rangesGiven: ({ a, b }) => ({ h: [0, Math.min(a, b) / 10] }),
  expression:
    'pi h / 2 * sqrt((E_x / a^4 + E_y / b^4 + 2 (nu E_y + 2 G * (1 - nu^2 E_y / E_x)) / (a^2 b^2)) / (12 rho * (1 - nu^2 E_y / E_x)))',
  compute: ({ h, a, b, rho, E_x, E_y, G, nu }) => {
    const held = 1 - (nu ** 2 * E_y) / E_x;
    const both = E_x / a ** 4 + E_y / b ** 4 + (2 * (nu * E_y + 2 * G * held)) / (a ** 2 * b ** 2);
    // mm, MPa and kg/m³ meet in 1e6.
    return ((Math.PI * h) / 2) * Math.sqrt(both / (12 * rho * held)) * 1e6;
  },
  evidence: 'derived',
  source: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, ch. 11.',
  limits:
    'Thin panels, below about 1/20 of the short side, four edges simply carried; edges held fast sound about twice as high.',
});

/** Bending stiffnesses of a panel per mm of width: along, across and the mixed one, N mm. */
function stiffnesses({ h, E_x, E_y, G, nu }: Panel) {
  const cubed = h ** 3 / 12;
  const held = 1 - (nu ** 2 * E_y) / E_x;
  const across = (E_y * cubed) / held;
  return { along: (E_x * cubed) / held, across, mixed: nu * across + 2 * G * cubed };
}

/**
 * Mobility of an endless panel at a tapped point: velocity for a force, mm/s per N.
 * A real panel has this value on the average over places and a band of pitch. `a` and `b` are not used.
 */
export function pointMobility(of: Panel): number {
  const { along, across } = stiffnesses(of);
  // N mm and kg/m³ mm become N m and kg/m², and m/s become mm/s.
  return 1000 / (8 * (along * across * 1e-6 * (of.rho * of.h * 1e-3) ** 2) ** 0.25);
}

/**
 * Sag in the middle of a panel carried on four edges under a spread load (Navier's series), mm.
 * @param load N over the whole panel.
 */
export function panelSag(of: Panel, load: number): number {
  const { along, across, mixed } = stiffnesses(of);
  const { a, b } = of;
  let sum = 0;
  for (let m = 1; m < 30; m += 2)
    for (let n = 1; n < 30; n += 2) {
      const resists =
        (along * m ** 4) / a ** 4 +
        (2 * mixed * m ** 2 * n ** 2) / (a ** 2 * b ** 2) +
        (across * n ** 4) / b ** 4;
      // Sines of the odd halves of pi at the middle: 1, −1, 1, …
      sum += ((-1) ** ((m + n) / 2 - 1) * 16) / (m * n * resists);
    }
  return (load / (a * b) / Math.PI ** 6) * sum;
}

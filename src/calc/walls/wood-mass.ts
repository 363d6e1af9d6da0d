/**
 * Mass of a box from the specific gravity of its wood.
 *
 *   rho = rho_w G (1 + M/100)                  G on the volume at M % MC
 *   G = G_b / (1 - 0.265 G_b (1 - M/30))       from G_b on the green volume
 *   m = rho ((L W - l w) H + l w (b + d))      walls, and two panels between them
 *
 * Symbols: rho density at M % MC, rho_w of water (kg/m³); G specific gravity, oven-dry mass over volume;
 * L, W, H outside and l, w inside sizes, b bottom, d lid thickness (mm); m mass (g).
 * The edges of the panels fill their grooves, so neither is counted.
 *
 * Wood Handbook, FPL-GTR-282 (2021), eq. 4-13 and 4-14, p. 4-12.
 */
import { relation } from '../core/relation.ts';

const gravity = { unit: '1', range: [0.1, 1.2] } as const;
const moisture = { name: 'moisture content of the tables', unit: '%', range: [0, 25] } as const;
const water = { name: 'density of water', unit: 'kg/m^3', range: [997, 1000] } as const;
const size = { unit: 'mm', range: [1, 1000] } as const;
const panel = { unit: 'mm', range: [0, 50] } as const;

/** Density of wood from a specific gravity on the volume at the same moisture content, kg/m³. */
export const woodDensity = relation({
  id: 'wood-density',
  title: 'Density of the wood',
  result: { symbol: 'rho', name: 'density', unit: 'kg/m^3' },
  inputs: { G: { ...gravity, name: 'specific gravity' }, M: moisture, rho_w: water },
  expression: 'rho_w G * (1 + M / 100)',
  compute: ({ G, M, rho_w }) => rho_w * G * (1 + M / 100),
  evidence: 'published',
  source: 'Wood Handbook (2021), eq. 4-14, p. 4-12; specific gravity of Table 5-3, at 12 % MC.',
  limits: 'An average of the species: boards differ by a tenth and more.',
});

/** The same from a specific gravity on the green volume, as imported woods are printed, kg/m³. */
export const woodDensityFromGreen = relation({
  id: 'wood-density-from-green',
  title: 'Density of the wood, from its green volume',
  result: { symbol: 'rho', name: 'density', unit: 'kg/m^3' },
  inputs: {
    G_b: { ...gravity, name: 'specific gravity on the green volume' },
    M: moisture,
    rho_w: water,
  },
  expression: 'rho_w G_b * (1 + M / 100) / (1 - 0.265 G_b * (1 - M / 30))',
  compute: ({ G_b, M, rho_w }) => (rho_w * G_b * (1 + M / 100)) / (1 - 0.265 * G_b * (1 - M / 30)),
  evidence: 'published',
  source: 'Wood Handbook (2021), eq. 4-13 and 4-14, p. 4-12; specific gravity of Table 5-5.',
  limits: 'The shrinkage is a general one, since each wood’s own is not used: good to a few percent.',
});

const density = { unit: 'kg/m^3', range: [100, 1400] } as const;

/** Mass, g, of walls, bottom and lid panel as plain boards: more than the box, since joints, grooves and notch take wood away. */
export const boxMass = relation({
  id: 'box-mass',
  title: 'Mass of walls, bottom and lid as plain boards',
  result: { symbol: 'm', name: 'mass', unit: 'g' },
  inputs: {
    rho: { ...density, name: 'density of the walls' },
    rho_b: { ...density, name: 'density of the bottom' },
    rho_d: { ...density, name: 'density of the lid' },
    L: { ...size, name: 'outside length' },
    W: { ...size, name: 'outside width' },
    H: { ...size, name: 'outside height' },
    l: { ...size, name: 'inside length' },
    w: { ...size, name: 'inside width' },
    b: { ...panel, name: 'bottom thickness' },
    d: { ...panel, name: 'lid thickness' },
  },
  expression: 'rho * (L W - l w) * H + l w * (rho_b b + rho_d d)',
  compute: ({ rho, rho_b, rho_d, L, W, H, l, w, b, d }) =>
    1e-6 * (rho * (L * W - l * w) * H + l * w * (rho_b * b + rho_d * d)),
  evidence: 'geometry',
  source: 'Volume of the parts times the density.',
  limits:
    'What joints, grooves and a notch take away is not taken off; liner, lining, dividers, hinges and contents are left out.',
});

/**
 * Moisture: what wood settles to in given air. (Over 150 lines: the curve, its four constants and its inverse are
 * one published formula and are read together.)
 *
 *   M = 1800/W · [ K h/(1 − K h) + (K₁ K h + 2 K₁ K₂ K² h²) / (1 + K₁ K h + K₁ K₂ K² h²) ]
 *
 * Symbols: M equilibrium moisture content (% of oven-dry mass), h relative humidity as a fraction,
 * t temperature (°C), W, K, K₁, K₂ constants of the sorption model that depend on temperature alone.
 * Held fixed: one curve serves all woods, midway between wetting and drying. Drying wood sits higher and
 * wetting wood lower, by 1 to 4 points at 50 % relative humidity (Swedish Wood, read second-hand).
 */
import type { Refused } from '../core/refusal.ts';
import { relation } from '../core/relation.ts';

/** Air that the published table was computed for: °C and % relative humidity (Wood Handbook Table 4-2). */
export const tabulatedAir = {
  /** 30 to 270 °F, as the table is printed. */
  temperature: [(30 - 32) / 1.8, (270 - 32) / 1.8],
  humidity: [5, 95],
} as const;

const t = { name: 'temperature', unit: 'degC', range: tabulatedAir.temperature } as const;
const published = { evidence: 'published', source: 'wood-handbook-2021' } as const;

/** Sorption constant W at t °C; −1.1 to 132.2 °C (Wood Handbook eq. 4-5). */
export const sorptionW = relation({
  id: 'sorption-w',
  title: 'Sorption constant W',
  result: { symbol: 'W', name: 'sorption constant W', unit: '1' },
  inputs: { t },
  expression: '349 + 1.29 t + 0.0135 t^2',
  compute: ({ t }) => 349 + 1.29 * t + 0.0135 * t * t,
  ...published,
});

/** Sorption constant K at t °C; −1.1 to 132.2 °C (Wood Handbook eq. 4-5). */
export const sorptionK = relation({
  id: 'sorption-k',
  title: 'Sorption constant K',
  result: { symbol: 'K', name: 'sorption constant K', unit: '1' },
  inputs: { t },
  expression: '0.805 + 0.000736 t - 0.00000273 t^2',
  compute: ({ t }) => 0.805 + 0.000736 * t - 0.00000273 * t * t,
  ...published,
});

/** Sorption constant K₁ at t °C; −1.1 to 132.2 °C (Wood Handbook eq. 4-5). */
export const sorptionK1 = relation({
  id: 'sorption-k1',
  title: 'Sorption constant K1',
  result: { symbol: 'K1', tex: 'K_1', name: 'sorption constant K1', unit: '1' },
  inputs: { t },
  expression: '6.27 - 0.00938 t - 0.000303 t^2',
  compute: ({ t }) => 6.27 - 0.00938 * t - 0.000303 * t * t,
  ...published,
});

/** Sorption constant K₂ at t °C; −1.1 to 132.2 °C (Wood Handbook eq. 4-5). */
export const sorptionK2 = relation({
  id: 'sorption-k2',
  title: 'Sorption constant K2',
  result: { symbol: 'K2', tex: 'K_2', name: 'sorption constant K2', unit: '1' },
  inputs: { t },
  expression: '1.91 + 0.0407 t - 0.000293 t^2',
  compute: ({ t }) => 1.91 + 0.0407 * t - 0.000293 * t * t,
  ...published,
});

/** Equilibrium moisture content, %, from humidity and the four constants of the air's temperature (Wood Handbook eq. 4-5). */
export const moistureOfAir = relation({
  id: 'moisture-of-air',
  title: 'Moisture that wood settles to in given air',
  result: { symbol: 'M', name: 'equilibrium moisture content', unit: '%' },
  inputs: {
    h: { name: 'relative humidity as a fraction', unit: '1', range: [0.05, 0.95] },
    W: { name: 'sorption constant W', unit: '1', range: [347, 756] },
    K: { name: 'sorption constant K', unit: '1', range: [0.804, 0.855] },
    K1: { name: 'sorption constant K1', unit: '1', range: [-0.27, 6.28], tex: 'K_1' },
    K2: { name: 'sorption constant K2', unit: '1', range: [1.86, 3.33], tex: 'K_2' },
  },
  expression:
    '1800 / W * (K * h / (1 - K * h) + (K1 * K * h + 2 * K1 * K2 * K^2 * h^2) / (1 + K1 * K * h + K1 * K2 * K^2 * h^2))',
  compute: ({ h, W, K, K1, K2 }) => {
    const one = K1 * K * h;
    const two = K1 * K2 * K * K * h * h;
    return (1800 / W) * ((K * h) / (1 - K * h) + (one + 2 * two) / (1 + one + two));
  },
  ...published,
  limits:
    'One curve for all woods, midway between wetting and drying. Woods and single boards differ from it, most of all in damp air.',
});

/** Moisture content, % of oven-dry mass, from two weighings; can exceed 100 % (Wood Handbook eq. 4-2). */
export const moistureFromMass = relation({
  id: 'moisture-from-mass',
  title: 'Moisture content from two weighings',
  result: { symbol: 'M', name: 'moisture content', unit: '%' },
  inputs: {
    m: { name: 'mass now', unit: 'g', range: [1, 10000] },
    m_d: { name: 'oven-dry mass', unit: 'g', range: [1, 10000] },
  },
  expression: '100 * (m - m_d) / m_d',
  compute: ({ m, m_d }) => (100 * (m - m_d)) / m_d,
  ...published,
});

/**
 * The inputs of `moistureOfAir` for air at `temperature` °C and `humidity` % relative humidity,
 * so that the page can show the equation step by step. Computes outside the tabulated air too.
 */
export function sorptionInputs(temperature: number, humidity: number) {
  const at = { t: temperature };
  return {
    h: humidity / 100,
    W: sorptionW.compute(at),
    K: sorptionK.compute(at),
    K1: sorptionK1.compute(at),
    K2: sorptionK2.compute(at),
  };
}

/**
 * Equilibrium moisture content, %, of wood in air at `temperature` °C and `humidity` % relative humidity.
 * Never refuses; outside `tabulatedAir` it extrapolates, so show `moistureInAir` to readers instead.
 */
export function equilibriumMoisture(temperature: number, humidity: number): number {
  return moistureOfAir.compute(sorptionInputs(temperature, humidity));
}

const temperatureRefusal = (temperature: number): string | undefined =>
  temperature >= tabulatedAir.temperature[0] && temperature <= tabulatedAir.temperature[1]
    ? undefined
    : 'The published table covers air from −1.1 to 132.2 °C (30 to 270 °F). There is no figure for this temperature.';

/** Equilibrium moisture content, %, or the reason why the table has no figure for that air (°C, % relative humidity). */
export function moistureInAir(
  temperature: number,
  humidity: number,
): { readonly moisture: number } | Refused {
  const refused = temperatureRefusal(temperature);
  if (refused) return { refused };
  if (!(humidity >= tabulatedAir.humidity[0] && humidity <= tabulatedAir.humidity[1]))
    return {
      refused:
        'The published table covers 5 to 95 % relative humidity. Nearer to bone-dry or saturated air the equation is a guess.',
    };
  return { moisture: equilibriumMoisture(temperature, humidity) };
}

/**
 * Damp air: how much water it can hold, how much it holds, and what heating does to its humidity.
 *
 *   p_ws(T)               saturation pressure, over water or over ice
 *   W = 0.621945 p_w / (p - p_w)
 *   h_in = h_out p_ws(t_out) / p_ws(t_in)      warming adds no water
 *
 * Symbols: T absolute temperature (K), t temperature (°C), p total pressure (Pa), p_w vapor pressure (Pa),
 * W humidity ratio (kg water per kg dry air), h relative humidity (%).
 * Held fixed: the total pressure, 101 325 Pa unless given; a house is not a pressure vessel.
 */
import { firstRefusal, type Refused } from '../core/refusal.ts';
import { relation } from '../core/relation.ts';

/** Standard pressure at sea level, Pa. */
export const SEA_LEVEL = 101_325;

/** Ice gives way to water here, °C: the triple point. */
const TRIPLE_POINT = 0.01;
const ZERO = 273.15;
const ashrae = 'ashrae-2017';

/** Saturation pressure over liquid water. */
export const saturationOverWater = relation({
  id: 'saturation-over-water',
  title: 'The most water vapor air can hold, above freezing',
  result: { symbol: 'p_ws', name: 'saturation pressure', unit: 'Pa' },
  inputs: { T: { name: 'absolute temperature', unit: 'K', range: [273.16, 373.15] } },
  expression:
    'exp(-5800.2206 / T + 1.3914993 - 4.8640239e-2 T + 4.1764768e-5 T^2 - 1.4452093e-8 T^3 + 6.5459673 log(T))',
  compute: ({ T }) =>
    Math.exp(
      -5800.2206 / T +
        1.3914993 +
        T * (-4.8640239e-2 + T * (4.1764768e-5 - T * 1.4452093e-8)) +
        6.5459673 * Math.log(T),
    ),
  fit: true,
  evidence: 'published',
  source: ashrae,
});

/** Saturation pressure over ice. */
export const saturationOverIce = relation({
  id: 'saturation-over-ice',
  title: 'The most water vapor air can hold, below freezing',
  result: { symbol: 'p_ws', name: 'saturation pressure', unit: 'Pa' },
  inputs: { T: { name: 'absolute temperature', unit: 'K', range: [173.15, 273.16] } },
  expression:
    'exp(-5674.5359 / T + 6.3925247 - 9.677843e-3 T + 6.2215701e-7 T^2 + 2.0747825e-9 T^3 - 9.484024e-13 T^4 + 4.1635019 log(T))',
  compute: ({ T }) =>
    Math.exp(
      -5674.5359 / T +
        6.3925247 +
        T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13))) +
        4.1635019 * Math.log(T),
    ),
  fit: true,
  evidence: 'published',
  source: ashrae,
});

/** Humidity ratio from vapor pressure. */
export const humidityRatio = relation({
  id: 'humidity-ratio',
  title: 'Water carried by each kilogram of dry air',
  result: { symbol: 'W', name: 'humidity ratio', unit: '1' },
  inputs: {
    p_w: { name: 'vapor pressure', unit: 'Pa', range: [0, 20_000] },
    p: { name: 'total pressure', unit: 'Pa', range: [50_000, 110_000] },
  },
  expression: '0.621945 p_w / (p - p_w)',
  compute: ({ p_w, p }) => (0.621945 * p_w) / (p - p_w),
  evidence: 'published',
  source: ashrae,
});

/** Humidity of air that has been warmed with nothing added. */
export const heatedHumidity = relation({
  id: 'heated-humidity',
  title: 'Humidity of outdoor air once it is heated indoors',
  result: { symbol: 'h_in', name: 'indoor relative humidity', unit: '%' },
  inputs: {
    h_out: { name: 'outdoor relative humidity', unit: '%', range: [1, 100] },
    p_out: { name: 'saturation pressure at the outdoor temperature', unit: 'Pa', range: [10, 8000] },
    p_in: { name: 'saturation pressure at the indoor temperature', unit: 'Pa', range: [600, 8000] },
  },
  expression: 'h_out p_out / p_in',
  compute: ({ h_out, p_out, p_in }) => (h_out * p_out) / p_in,
  evidence: 'derived',
  source: 'Warming at constant pressure adds no water, so the vapor pressure stays and only its limit rises.',
  limits: 'Breath, cooking, laundry and damp stores add water: real rooms lie above this lower bound.',
});

/**
 * Saturation vapor pressure, Pa: over ice below 0.01 °C, over water above.
 * @param celsius -100 to 100 °C; outside that the formulas extrapolate.
 */
export function saturationPressure(celsius: number): number {
  const over = celsius < TRIPLE_POINT ? saturationOverIce : saturationOverWater;
  return over.compute({ T: celsius + ZERO });
}

/**
 * Dew point, °C, of air whose vapor pressure is `pressure` Pa: where the saturation pressure is just as large, by halving.
 * @returns within 0.001 °C; held at -60 or 60 °C beyond them.
 */
export function dewPointOf(pressure: number): number {
  let [cold, hot] = [-60, 60];
  while (hot - cold > 0.001) {
    const middle = (cold + hot) / 2;
    if (saturationPressure(middle) < pressure) cold = middle;
    else hot = middle;
  }
  return (cold + hot) / 2;
}

/** Vapor pressure in Pa of `grams` of water per cubic meter of air at `celsius`: the ideal gas law, 461.5 J/(kg K). */
export const vaporPressureOf = (grams: number, celsius: number): number =>
  (grams / 1000) * 461.5 * (celsius + ZERO);

/**
 * Relative humidity (%) of outdoor air after heating to `indoor` °C.
 * @param added water that living there adds, g per m³ of room air; 0 gives the lower bound.
 * @returns a refusal outside -50 to 50 °C, 1 to 100 %, or when the air would be more than saturated.
 */
export function humidityOnceHeated(
  air: { readonly temperature: number; readonly humidity: number },
  indoor: number,
  added = 0,
): number | Refused {
  const bad = firstRefusal(
    ['outdoor temperature', air.temperature, -50, 50, ' °C'],
    ['outdoor humidity', air.humidity, 1, 100, ' %'],
    ['indoor temperature', indoor, 0, 50, ' °C'],
    ['water added to the air', added, 0, 20, ' g/m³'],
  );
  if (bad) return bad;
  const limit = saturationPressure(indoor);
  const h_out = air.humidity;
  const heated = heatedHumidity.compute({ h_out, p_out: saturationPressure(air.temperature), p_in: limit });
  const humidity = heated + (100 * vaporPressureOf(added, indoor)) / limit;
  if (humidity <= 100) return humidity;
  return { refused: `Air this damp would drop water at ${indoor} °C: its humidity would pass 100 %.` };
}

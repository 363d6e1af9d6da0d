/**
 * From what a moisture meter reads back to the air that would bring wood to it: the inverse of `moistureOfAir`.
 *
 * With x = K h and m = M W / 1800 the sorption equation is a cubic in x,
 *
 *   b (m − 1) x³ + (2 b − m (b − a)) x² + (1 + a − m (a − 1)) x − m = 0,   a = K₁, b = K₁ K₂,
 *
 * which rises through its one root in the tabulated air. Symbols: M moisture content (%), h relative humidity as a
 * fraction, W, K, K₁, K₂ the sorption constants of the air's temperature.
 */
import { isRefused, type Refused } from '../core/refusal.ts';
import { moistureInAir, sorptionInputs, tabulatedAir } from './moisture.ts';

/** Newton's steps are kept between the ends and end when they move x by less than this. */
const still = 1e-12;
const mostSteps = 60;

/** The root of a rising function between two places; where a step leaves them, their middle is tried. */
function rootOf(
  at: (x: number) => readonly [value: number, slope: number],
  low: number,
  high: number,
): number {
  let [from, to] = [low, high];
  let x = (from + to) / 2;
  for (let step = 0; step < mostSteps; step++) {
    const [value, slope] = at(x);
    if (value < 0) from = x;
    else to = x;
    const wanted = x - value / slope;
    const next = wanted > from && wanted < to ? wanted : (from + to) / 2;
    if (Math.abs(next - x) < still) return next;
    x = next;
  }
  return x;
}

/**
 * The relative humidity, %, at which wood settles to `moisture` % in air of `temperature` °C; within 5 to 95 %, the air
 * of the published table (Wood Handbook Table 4-2). Refuses where no such air gives that moisture.
 */
export function humidityOfMoisture(
  temperature: number,
  moisture: number,
): { readonly humidity: number } | Refused {
  const [least, most] = tabulatedAir.humidity.map((humidity) => moistureInAir(temperature, humidity));
  if (isRefused(least!)) return least;
  if (isRefused(most!)) return most;
  if (!(moisture >= least!.moisture && moisture <= most!.moisture))
    return {
      refused: `Air between 5 and 95 % relative humidity brings wood to between ${least!.moisture.toFixed(1)} and ${most!.moisture.toFixed(1)} % moisture at this temperature; the published table goes no further.`,
    };
  const { W, K, K1, K2 } = sorptionInputs(temperature, 50);
  const m = (moisture * W) / 1800;
  const b = K1 * K2;
  const [p3, p2, p1] = [b * (m - 1), 2 * b - m * (b - K1), 1 + K1 - m * (K1 - 1)];
  const [low, high] = tabulatedAir.humidity;
  const x = rootOf(
    (x) => [((p3 * x + p2) * x + p1) * x - m, (3 * p3 * x + 2 * p2) * x + p1],
    (K * low) / 100,
    (K * high) / 100,
  );
  return { humidity: (100 * x) / K };
}

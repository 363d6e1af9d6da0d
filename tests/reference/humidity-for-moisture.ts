/** The way back from a moisture to the humidity of its air: what tests hold against the way there. */
import { equilibriumMoisture, moistureInAir, tabulatedAir } from '../../src/calc/air/moisture.ts';
import { isRefused, type Refused } from '../../src/calc/core/refusal.ts';

/** `humidityForMoisture` is within this many % relative humidity of the exact answer. */
export const humidityTolerance = 1e-6;

/**
 * The relative humidity, %, at which wood settles to `moisture` % in air of `temperature` °C: the inverse of
 * `moistureInAir`, by halving the interval 5 to 95 % until it is narrower than `humidityTolerance`.
 * Refuses where no tabulated air gives that moisture.
 */
export function humidityForMoisture(
  temperature: number,
  moisture: number,
): { readonly humidity: number } | Refused {
  let [low, high]: [number, number] = [...tabulatedAir.humidity];
  const air = moistureInAir(temperature, low);
  if (isRefused(air)) return air;
  const least = equilibriumMoisture(temperature, low);
  const most = equilibriumMoisture(temperature, high);
  if (!(moisture >= least && moisture <= most))
    return {
      refused: `At this temperature, air between 5 and 95 % relative humidity brings wood to between ${least.toFixed(1)} and ${most.toFixed(1)} % moisture content, and the published table goes no further.`,
    };
  while (high - low > humidityTolerance) {
    const middle = (low + high) / 2;
    if (equilibriumMoisture(temperature, middle) < moisture) low = middle;
    else high = middle;
  }
  return { humidity: (low + high) / 2 };
}

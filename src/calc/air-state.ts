/**
 * The whole state of room air from any two readings: thermometer, humidity, wet bulb, dew point.
 *
 * The searches for wet bulb and dew point are those of the npm package psychrolib 1.1.1 (3 kB gzip), which
 * codes ASHRAE Handbook of Fundamentals (2017), chapter 1. It keeps its unit system in a module variable: it
 * is set once here, and nothing else in the program may import that package.
 */
import psychrolib from 'psychrolib';
import { SEA_LEVEL, saturationPressure } from './air.ts';
import { firstRefusal, type Refused } from './refusal.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

/** Readings that can be given; any two fix the rest. Temperatures in °C, relative humidity in %. */
export interface AirReadings {
  readonly dryBulb?: number;
  readonly humidity?: number;
  readonly wetBulb?: number;
  readonly dewPoint?: number;
}

/** Everything about the air. °C, %, Pa, and kg of water per kg of dry air. */
export interface AirState {
  readonly dryBulb: number;
  readonly humidity: number;
  readonly wetBulb: number;
  readonly dewPoint: number;
  readonly vaporPressure: number;
  readonly humidityRatio: number;
}

/** Coldest and hottest air taken, °C. psychrolib itself goes from -100 to 200. */
const COLDEST = -50;
const HOTTEST = 60;

/** Vapor pressure (Pa) that a pair of thermometers shows; negative when the wet bulb is impossibly low. */
function underWetBulb(dryBulb: number, wetBulb: number, pressure: number): number {
  // psychrolib lifts a negative ratio to a tiny positive one, which would hide an impossible pair.
  const ratio = psychrolib.GetHumRatioFromTWetBulb(dryBulb, wetBulb, pressure);
  return ratio <= 1e-7 ? -1 : psychrolib.GetVapPresFromHumRatio(ratio, pressure);
}

/** Dry bulb at which `excess` crosses zero, by halving; `excess` must fall as the air gets warmer. */
function warmest(excess: (dryBulb: number) => number, low: number): number | undefined {
  if (excess(HOTTEST) > 0) return undefined;
  let [cold, hot] = [low, HOTTEST];
  for (let halving = 0; halving < 50; halving++) {
    const middle = (cold + hot) / 2;
    if (excess(middle) > 0) cold = middle;
    else hot = middle;
  }
  return (cold + hot) / 2;
}

/** Dry bulb and vapor pressure from the pair, or the sentence that says why they cannot belong together. */
function fromPair(
  { dryBulb, humidity, wetBulb, dewPoint }: AirReadings,
  pressure: number,
): readonly [dryBulb: number, vaporPressure: number] | Refused {
  const tooHot = { refused: `These two readings only fit air hotter than ${HOTTEST} °C.` };
  if (dryBulb !== undefined) {
    if (humidity !== undefined) return [dryBulb, (humidity / 100) * saturationPressure(dryBulb)];
    const [name, cool] = dewPoint !== undefined ? ['dew point', dewPoint] : ['wet bulb', wetBulb!];
    if (cool > dryBulb) {
      return { refused: `The ${name} (${cool} °C) cannot be warmer than the air itself (${dryBulb} °C).` };
    }
    if (dewPoint !== undefined) return [dryBulb, saturationPressure(dewPoint)];
    const vapor = underWetBulb(dryBulb, cool, pressure);
    if (vapor >= 0) return [dryBulb, vapor];
    return { refused: `Even perfectly dry air at ${dryBulb} °C would not cool a wet bulb to ${cool} °C.` };
  }
  if (dewPoint !== undefined && humidity !== undefined) {
    const vapor = saturationPressure(dewPoint);
    const found = warmest((t) => vapor - (humidity / 100) * saturationPressure(t), dewPoint);
    return found === undefined ? tooHot : [found, vapor];
  }
  const wet = wetBulb!;
  if (dewPoint !== undefined) {
    if (dewPoint > wet) {
      return { refused: `The dew point (${dewPoint} °C) cannot be above the wet bulb (${wet} °C).` };
    }
    const vapor = saturationPressure(dewPoint);
    const found = warmest((t) => underWetBulb(t, wet, pressure) - vapor, wet);
    return found === undefined ? tooHot : [found, vapor];
  }
  const found = warmest(
    (t) => underWetBulb(t, wet, pressure) - (humidity! / 100) * saturationPressure(t),
    wet,
  );
  return found === undefined ? tooHot : [found, (humidity! / 100) * saturationPressure(found)];
}

/**
 * The whole state of air from exactly two readings.
 *
 * @param pressure total, Pa; sea level unless given.
 * @returns a refusal when not exactly two are given, when one is outside -50 to 60 °C or 1 to 100 %, or when
 * the two cannot belong to the same air. Dew points and wet bulbs are good to 0.001 °C.
 */
export function airState(readings: AirReadings, pressure: number = SEA_LEVEL): AirState | Refused {
  const given = Object.values(readings).filter((value) => value !== undefined).length;
  if (given !== 2) return { refused: `Two readings are needed, no more and no fewer; here are ${given}.` };
  const temperature = (name: string, value: number | undefined) =>
    [name, value ?? 0, COLDEST, HOTTEST, ' °C'] as const;
  const bad = firstRefusal(
    temperature('air temperature', readings.dryBulb),
    temperature('wet bulb', readings.wetBulb),
    temperature('dew point', readings.dewPoint),
    ['relative humidity', readings.humidity ?? 50, 1, 100, ' %'],
    ['air pressure', pressure, 50_000, 110_000, ' Pa'],
  );
  if (bad) return bad;

  const pair = fromPair(readings, pressure);
  if ('refused' in pair) return pair;
  const [dryBulb, vaporPressure] = pair;
  const humidity = (100 * vaporPressure) / saturationPressure(dryBulb);
  if (humidity < 0.01) return { refused: 'These two readings leave no water in the air at all.' };
  const humidityRatio = psychrolib.GetHumRatioFromVapPres(vaporPressure, pressure);
  return {
    dryBulb,
    humidity: Math.min(100, humidity),
    vaporPressure,
    humidityRatio,
    dewPoint: readings.dewPoint ?? psychrolib.GetTDewPointFromVapPres(dryBulb, vaporPressure),
    wetBulb: readings.wetBulb ?? psychrolib.GetTWetBulbFromHumRatio(dryBulb, humidityRatio, pressure),
  };
}

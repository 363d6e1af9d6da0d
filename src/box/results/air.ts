/**
 * Moisture of the wood over its year, and how long it takes to get there.
 *
 * Today's air, the driest and the dampest are put in order first, so that the year never ends before it begins.
 * The waits take the middle of a diffusion coefficient that is known to a factor of about two.
 */
import { type DiffusionRange, diffusionCoefficient } from '../../calc/diffusion-coefficient.ts';
import { ninetyTimeBehindFilm } from '../../calc/film-times.ts';
import { ROOM_SURFACE } from '../../calc/finish.ts';
import { moistureOfAir, sorptionInputs } from '../../calc/moisture.ts';
import { isRefused, type Refused } from '../../calc/refusal.ts';
import type { Box } from '../box.ts';
import type { Result, ResultTable } from '../result.ts';
import type { WoodFigures } from './wood.ts';

export interface AirResults {
  /** Moisture content, %, that wood settles to today, at the driest and at the dampest time of the year. */
  readonly moistureToday: number;
  readonly moistureDry: number;
  readonly moistureDamp: number;
  /** Days until nine tenths of a change of air has reached the walls, and the board as it is bought; both faces bare. */
  readonly waitWall: number;
  readonly waitBoard: number;
}

type V = Box & WoodFigures & AirResults;
type Row = Result<V>;

const settled = (label: string, humidity: (v: V) => number): Row => ({
  label,
  kind: 'percent',
  digits: 1,
  relation: moistureOfAir,
  given: (v) => sorptionInputs(v.temperature, humidity(v)),
  rule: 'write-the-humidity',
});

/** How fast moisture creeps through the box's wood at `moisture` % MC, or why that is not known. */
export function diffusionOf({ specificGravity }: WoodFigures, moisture: number): DiffusionRange | Refused {
  if (Number.isNaN(specificGravity))
    return {
      refused:
        'The tables give no density for this wood, so how fast it takes up moisture is not known here.',
    };
  return diffusionCoefficient(specificGravity, moisture);
}

const wait = (label: string, thickness: (v: V) => number): Row => ({
  label,
  kind: 'days',
  relation: ninetyTimeBehindFilm,
  given: (v) => {
    const D = diffusionOf(v, v.moistureToday);
    return { T: thickness(v), D: isRefused(D) ? Number.NaN : D.middle, S: ROOM_SURFACE };
  },
  rule: 'thickness-squared',
});

export const airResults: ResultTable<keyof AirResults, V> = {
  moistureToday: settled('moisture of the wood today', (v) => v.humidityToday),
  moistureDry: settled('moisture at the driest', (v) =>
    Math.min(v.humidityDry, v.humidityToday, v.humidityDamp),
  ),
  moistureDamp: settled('moisture at the dampest', (v) =>
    Math.max(v.humidityDry, v.humidityToday, v.humidityDamp),
  ),
  waitWall: wait('days until the walls have made nine tenths of a change', (v) => v.wall),
  waitBoard: wait('days until the board as bought has made nine tenths of a change', (v) => v.boardThickness),
};

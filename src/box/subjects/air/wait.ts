/**
 * How long the wood takes to follow its air: the middle of a diffusion coefficient that is known to a factor of about two.
 */
import { type DiffusionRange, diffusionCoefficient } from '../../../calc/air/diffusion-coefficient.ts';
import { ninetyTimeBehindFilm } from '../../../calc/air/film-times.ts';
import { ROOM_SURFACE } from '../../../calc/air/slab.ts';
import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import { type Result, type ResultTable, rowsOf } from '../../core/result.ts';
import type { WoodFigures } from '../../wood/figures.ts';
import type { AirValues } from './results.ts';

export interface WaitResults {
  /** Days until nine tenths of a change of air has reached the walls, and the board as it is bought; both faces bare. */
  readonly waitWall: number;
  readonly waitBoard: number;
}

export type WaitValues = AirValues & WaitResults;
type V = WaitValues;
type Row = Result<V>;

/** How fast moisture creeps through the box's wood at `moisture` % MC, or why that is not known. */
export function diffusionOf({ specificGravity }: WoodFigures, moisture: number): DiffusionRange | Refused {
  if (Number.isNaN(specificGravity))
    return {
      refused:
        'The tables give no density for this wood, so how fast it takes up moisture is not known here.',
    };
  return diffusionCoefficient(specificGravity, moisture);
}

const row = rowsOf<V>();

const wait = (label: string, thickness: (v: V) => number): Row =>
  row(
    ninetyTimeBehindFilm,
    (v) => {
      const D = diffusionOf(v, v.moistureToday);
      return { T: thickness(v), D: isRefused(D) ? Number.NaN : D.middle, S: ROOM_SURFACE };
    },
    { label, kind: 'days', rule: 'thickness-squared' },
  );

export const waitResults: ResultTable<keyof WaitResults, V> = {
  waitWall: wait('days until the walls have made nine tenths of a change', (v) => v.wall),
  waitBoard: wait('days until the board as bought has made nine tenths of a change', (v) => v.boardThickness),
};

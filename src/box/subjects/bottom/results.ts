/** How the bottom panel sags and sounds. */
import * as bottom from '../../../calc/bottom/bottom.ts';
import { stiffnessAlongGrain } from '../../../calc/walls/side-push.ts';
import { type ResultTable, rowsOf } from '../../core/result.ts';
import type { WoodFigures } from '../../wood/figures.ts';
import type { Box } from '../inputs.ts';
import type { SizeResults } from '../size/results.ts';

export interface BottomResults {
  /** mm under 1 kg. */
  readonly bottomSag: number;
  /** Against a 3 mm bottom: % of its motion, and times its pitch. */
  readonly tapMotion: number;
  readonly tapPitch: number;
}

export type BottomValues = Box & WoodFigures & SizeResults & BottomResults;
type V = BottomValues;

const row = rowsOf<V>();

/** A thin bottom to compare with, mm (about 1/8 in). */
export const thinBottom = 3;
/** Weight of 1 kg, N. */
const kilogram = 9.80665;
/** Stiffness of plywood, MPa: from memory; sheets differ by half and more. */
const plywoodStiffness = 8000;

const againstThin = (v: V) => ({ h: v.bottomThickness, h_0: thinBottom });

export const bottomResults: ResultTable<keyof BottomResults, V> = {
  bottomSag: row(
    bottom.bottomSagBound,
    (v) => ({
      F: kilogram,
      a: v.insideLength,
      b: v.insideWidth,
      E:
        v.bottom === 'plywood'
          ? plywoodStiffness
          : stiffnessAlongGrain.compute({ E_b: v.modulusOfElasticity }),
      h: v.bottomThickness,
    }),
    {
      label: 'sag of the bottom under 1 kg (2.2 lb), at most',
      kind: 'length',
      as: 'fine',
      round: 'up',
      rule: 'bottom-thickness',
    },
  ),
  tapMotion: row(bottom.tapMotion, againstThin, {
    label: 'motion of a tap, against a 3 mm (1/8 in) bottom',
    kind: 'percent',
    digits: 0,
    rule: 'thicker-bottom-sounds-quieter',
  }),
  tapPitch: row(bottom.tapPitch, againstThin, {
    label: 'pitch, times that of a 3 mm (1/8 in) bottom',
    kind: 'ratio',
    digits: 1,
    rule: 'thicker-bottom-sounds-quieter',
  }),
};

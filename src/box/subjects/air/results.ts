/**
 * Moisture of the wood over its year. Today's air, the driest and the dampest are put in order first, so that the year
 * never ends before it begins.
 */
import { humiditySwing, planedOff } from '../../../calc/air/before-cutting.ts';
import { moistureOfAir, sorptionInputs } from '../../../calc/air/moisture.ts';
import { type Result, type ResultTable, rowsOf } from '../../core/result.ts';
import type { WoodFigures } from '../../wood/figures.ts';
import type { Box } from '../inputs.ts';

export interface AirResults {
  /** Moisture content, %, that wood settles to today, at the driest and at the dampest time of the year. */
  readonly moistureToday: number;
  readonly moistureDry: number;
  readonly moistureDamp: number;
  /** Dampest above driest, points. */
  readonly humiditySwing: number;
  /** Planed off both faces of a piece that has rested, mm. */
  readonly planedOff: number;
}

export type AirValues = Box & WoodFigures & AirResults;
type V = AirValues;
type Row = Result<V>;

const row = rowsOf<V>();

const settled = (label: string, humidity: (v: V) => number): Row =>
  row(moistureOfAir, (v) => sorptionInputs(v.temperature, humidity(v)), {
    label,
    kind: 'percent',
    digits: 1,
    rule: 'write-the-humidity',
  });

export const airResults: ResultTable<keyof AirResults, V> = {
  moistureToday: settled('moisture of the wood today', (v) => v.humidityToday),
  moistureDry: settled('moisture at the driest', (v) =>
    Math.min(v.humidityDry, v.humidityToday, v.humidityDamp),
  ),
  moistureDamp: settled('moisture at the dampest', (v) =>
    Math.max(v.humidityDry, v.humidityToday, v.humidityDamp),
  ),
  humiditySwing: row(humiditySwing, (v) => ({ h_2: v.humidityDamp, h_1: v.humidityDry }), {
    label: 'humidity at the dampest, above that at the driest',
    kind: 'points',
    rule: 'write-the-humidity',
  }),
  planedOff: row(planedOff, (v) => ({ p: v.planing }), {
    label: 'wood left to plane off, both faces together',
    kind: 'length',
    rule: 'cut-oversize-and-rest',
  }),
};

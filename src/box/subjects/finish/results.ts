/** What films on the wood do to the fits of the box. */
import { BRUSHED_WET, coatsThatFit, LEAST_SLIP, outsideArea } from '../../../calc/finish/coats.ts';
import { COAT, playUnderFilm } from '../../../calc/finish/finish-film.ts';
import { finishVolume } from '../../../calc/glue/glue.ts';
import { practice } from '../../core/practice.ts';
import { type ResultTable, rowsOf } from '../../core/result.ts';
import type { MovementValues } from '../movement/results.ts';

export interface FinishResults {
  /** Play of a sliding lid on the dampest day, mm, with three coats on both its edges. */
  readonly lidPlayCoated: number;
  /** Play of a sliding lid's tongue in its thickness with three coats on both its faces, mm, and the coats it bears. */
  readonly tongueSlipCoated: number;
  readonly coatsOnTongue: number;
  /** Coats that fit on both edges of a sliding lid on the dampest day; NaN where it has no play then. */
  readonly coatsOnEdges: number;
  /** Room of a lift-off lid on each side with three coats on it and on its liner, mm. */
  readonly lidRoomCoated: number;
  /** Outer faces, mm², and the finish for three brushed coats on them, mm³. */
  readonly outsideArea: number;
  readonly outsideFinish: number;
}

export type FinishValues = MovementValues & FinishResults;

const row = rowsOf<FinishValues>();
const slides = (v: FinishValues) => v.kind === 'sliding';
/** Three brushed coats on two faces that run on each other. */
const coats = { n: 3, f: 2, h: COAT } as const;
const onATongue = { kind: 'length', as: 'fine', rule: 'film-on-a-tongue' } as const;

export const finishResults: ResultTable<keyof FinishResults, FinishValues> = {
  lidPlayCoated: row(playUnderFilm, (v) => ({ p: v.lidPlayDamp, ...coats }), {
    label: 'play of the lid on the dampest day, less three coats on its edges',
    kind: 'length',
    as: 'fine',
    builds: true,
    rule: 'no-finish-on-running-surfaces',
    when: slides,
  }),
  tongueSlipCoated: row(playUnderFilm, () => ({ p: practice.lidSlip, ...coats }), {
    ...onATongue,
    label: 'play of the lid’s tongue in its thickness, less three coats on both faces',
    round: 'down',
    when: slides,
  }),
  coatsOnTongue: row(coatsThatFit, () => ({ p: practice.lidSlip, q: LEAST_SLIP, f: coats.f, h: coats.h }), {
    label: 'coats the lid’s tongue bears on both faces',
    kind: 'count',
    round: 'down',
    rule: 'film-on-a-tongue',
    when: slides,
  }),
  coatsOnEdges: row(coatsThatFit, (v) => ({ p: v.lidPlayDamp, q: 0, f: coats.f, h: coats.h }), {
    label: 'coats that fit on the edges of the lid on the dampest day',
    kind: 'number',
    digits: 1,
    round: 'down',
    rule: 'film-on-a-tongue',
    when: slides,
  }),
  lidRoomCoated: row(playUnderFilm, (v) => ({ p: v.lidRoom, ...coats }), {
    ...onATongue,
    label: 'room around the liner on each side, less three coats on liner and lid',
    when: (v) => v.kind === 'lift-off',
  }),
  outsideArea: row(outsideArea, (v) => ({ L: v.outsideLength, b: v.outsideWidth, H: v.outsideHeight }), {
    label: 'outer faces of the box',
    kind: 'area',
    digits: 0,
    rule: 'blend-by-parts',
  }),
  outsideFinish: row(finishVolume, (v) => ({ A: v.outsideArea, w: BRUSHED_WET, n: coats.n }), {
    label: 'finish for three brushed coats on them',
    kind: 'volume',
    digits: 1,
    round: 'up',
    rule: 'blend-by-parts',
  }),
};

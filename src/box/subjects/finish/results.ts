/** What films on the wood do to the fits of the box. */
import { COAT, playUnderFilm } from '../../../calc/finish/finish-film.ts';
import { type ResultTable, rowsOf } from '../../core/result.ts';
import type { MovementValues } from '../movement/results.ts';

export interface FinishResults {
  /** Play of a sliding lid on the dampest day, mm, with three coats on both its edges. */
  readonly lidPlayCoated: number;
}

export type FinishValues = MovementValues & FinishResults;

const row = rowsOf<FinishValues>();

export const finishResults: ResultTable<keyof FinishResults, FinishValues> = {
  lidPlayCoated: row(playUnderFilm, (v) => ({ p: v.lidPlayDamp, f: 2, n: 3, h: COAT }), {
    label: 'play of the lid on the dampest day, less three coats on its edges',
    kind: 'length',
    as: 'fine',
    builds: true,
    rule: 'no-finish-on-running-surfaces',
    when: (v) => v.kind === 'sliding',
  }),
};

/**
 * The worker of the scratch cells. It says which cell it is at before it begins with it, so that the page can end it when
 * a cell takes too long.
 */
import type { Box } from '../../box/subjects/inputs.ts';
import type { InputWords } from './call.ts';
import type { Cell } from './cells.ts';
import { type Listed, listOf } from './listed.ts';
import { type NamedNumber, numbersOf } from './names.ts';
import { type CellResult, cellResult } from './sheet.ts';
import type { Own } from './work-out.ts';

/** All cells at once, with those that are left out because they did not end before. */
export interface Asked {
  readonly round: number;
  readonly box: Box;
  readonly cells: readonly Cell[];
  readonly skip: readonly number[];
  readonly words: InputWords;
}

export type Told =
  | { readonly round: number; readonly names: readonly Listed[] }
  | { readonly round: number; readonly begun: number }
  | { readonly round: number; readonly done: number; readonly result: CellResult };

const tell = (told: Told) => postMessage(told);
/** The names of the box asked about last. */
let known: { readonly key: string; readonly numbers: ReadonlyMap<string, NamedNumber> } | undefined;

addEventListener('message', ({ data: { round, box, cells, skip, words } }: MessageEvent<Asked>) => {
  const key = JSON.stringify(box);
  if (known?.key !== key) {
    known = { key, numbers: numbersOf(box) };
    tell({ round, names: listOf(known.numbers) });
  }
  const { numbers } = known;
  const own: Own = new Map();
  cells.forEach((cell, at) => {
    if (skip.includes(at)) return;
    tell({ round, begun: at });
    tell({ round, done: at, result: cellResult(cell, { numbers, words, own }) });
  });
});

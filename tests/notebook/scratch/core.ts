/** Cells worked out as the worker does, for the example's box in millimeters. */
import { exampleFor } from '../../../src/box/subjects/example.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import type { Cell } from '../../../src/notebook/scratch/cells.ts';
import { numbersOf } from '../../../src/notebook/scratch/names.ts';
import { cellResult } from '../../../src/notebook/scratch/sheet.ts';
import type { Own } from '../../../src/notebook/scratch/work-out.ts';

export function workAll(cells: readonly Cell[], box: Box = exampleFor('mm')) {
  const numbers = numbersOf(box);
  const own: Own = new Map();
  return cells.map((cell) => cellResult(cell, { numbers, words: {}, own }));
}

/** The last of some cells of sums. @returns its result in mm, or the message behind "! " */
export function said(...texts: string[]): string {
  const result = workAll(texts.map((text) => ({ type: 'sum', text }))).at(-1)!;
  if (result.type === 'trouble') return `! ${result.message}`;
  if (result.type !== 'value') return result.type;
  return (result.shown.asked ?? result.shown.mm).replaceAll('\u00a0', ' ');
}

export function inBoth(text: string): readonly [mm: string, inch: string] {
  const [result] = workAll([{ type: 'sum', text }]);
  if (result?.type !== 'value') throw new Error(JSON.stringify(result));
  return [result.shown.mm.replaceAll('\u00a0', ' '), result.shown.inch.replaceAll('\u00a0', ' ')];
}

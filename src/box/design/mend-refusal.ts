/** What mends something that cannot be built, on a mark of the reader's ruler. */

import { type Ruler, toMark } from '../../units/index.ts';
import { type Box, fields, type NumberName } from '../subjects/inputs.ts';
import { evaluate } from '../whole/index.ts';
import { givingWay } from './gives-way.ts';
import type { Refusal } from './refusal.ts';
import { standingOf } from './standing.ts';

export interface RefusalMend {
  readonly input: keyof Box;
  readonly from: number | string;
  readonly to: number | string;
  /** Everything that changes with it. */
  readonly inputs: Partial<Box>;
}

/** The change that a refusal names, at the nearest mark where it mends it too; undefined where it names none. */
export function mendRefusal(box: Box, { id, field, to }: Refusal, ruler: Ruler): RefusalMend | undefined {
  if (field === undefined || to === undefined) return undefined;
  const from = box[field] as number | string;
  const row = fields[field];
  const plain = { input: field, from, to, inputs: { [field]: to } };
  if (row.type !== 'number' || row.as !== 'size' || typeof to !== 'number') return plain;
  const v = evaluate(box);
  const onMarks = (['nearest', 'up', 'down'] as const)
    .map((round) => toMark(to, ruler.mark, round))
    .filter((value) => value >= row.low && value <= row.high);
  for (const value of onMarks) {
    const inputs = givingWay(v, field as NumberName, value, ruler);
    if (!standingOf({ ...box, ...inputs }).refused.has(id)) return { input: field, from, to: value, inputs };
  }
  return plain;
}

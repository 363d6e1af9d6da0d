/**
 * A hash for each kind of thing that the program says about a box. What moves without wanting to shows here; what
 * moves on purpose is looked at first, then recorded again:
 *
 *     npm run golden                           writes the record again
 *     GOLDEN_FOLDER=.cache/before npm run golden    also writes everything about every box there, to compare with diff
 */
import { createHash } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { designBox } from '../../../src/box/design/design.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { verdicts } from '../../../src/box/whole/index.ts';
import { workOf } from '../../../src/box/work/work.ts';
import { cutListCsv } from '../../../src/notebook/files.ts';
import { usualRuler } from '../../../src/units/index.ts';
import { goldenBoxes } from './boxes.ts';

const sections = ['values', 'verdicts', 'design', 'work', 'csv'] as const;

/** Numbers to nine digits, so that another order of adding up is no change; names in the order of the alphabet. */
const plain = (_: string, value: unknown) =>
  typeof value === 'number'
    ? Number.isFinite(value)
      ? Number(value.toPrecision(9))
      : String(value)
    : typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value;

/** Everything about a box, as text by section. */
function tell(box: Box): Record<(typeof sections)[number], string> {
  const { values, box: _, ...design } = designBox(box);
  const whole = { values, box, ...design };
  const text = (value: unknown) => JSON.stringify(value, plain, 1) ?? '';
  return {
    values: text(values),
    verdicts: text(
      verdicts(values)
        .map(({ check, state, measured, usual, because }) => [
          check.id,
          check.label,
          state,
          measured,
          usual,
          because,
        ])
        .sort(([a], [b]) => (a! < b! ? -1 : 1)),
    ),
    design: text({ ...design, plan: design.plan && { ...design.plan, values: undefined } }),
    work: text(workOf(whole)),
    csv: cutListCsv(whole, usualRuler),
  };
}

const hash = (text: string) => createHash('sha256').update(text).digest('hex').slice(0, 6);

/** One line a box: its hashes in the order of `sections`. */
export const recordNow = (): string[] =>
  goldenBoxes().map((box) => {
    const told = tell(box);
    return sections.map((section) => hash(told[section])).join(' ');
  });

/** Writes everything about every box into a folder. */
export function writeOut(folder: string): void {
  mkdirSync(folder, { recursive: true });
  const told = goldenBoxes().map(tell);
  for (const section of sections)
    writeFileSync(
      `${folder}/${section}.txt`,
      told.map((one, box) => `box ${box}\n${one[section]}\n`).join('\n'),
    );
}

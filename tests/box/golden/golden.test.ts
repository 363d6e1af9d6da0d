/** Nothing about a box changes unnoticed: see `record.ts` for how to look at a change, and how to record it. */
import { expect, test } from 'vitest';
import { recordNow, writeOut } from './record.ts';

const folder = process.env.GOLDEN_FOLDER;

test('a thousand boxes are what they were: values, verdicts, design, order of work, cut list', async () => {
  if (folder) writeOut(folder);
  await expect(`${recordNow().join('\n')}\n`).toMatchFileSnapshot('record.txt');
}, 60_000);

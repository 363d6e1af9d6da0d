/** Every input and every check of the box has its place on the bench, and only one. */
import { describe, expect, test } from 'vitest';
import { exampleBox } from '../../../src/box/subjects/example.ts';
import { type Box, fields, hasInput } from '../../../src/box/subjects/inputs.ts';
import { wholeModel } from '../../../src/box/whole/index.ts';
import { checksOfParts, partOfCheck } from '../../../src/widgets/my-box/part-of-check.ts';
import { inputsIn, inputsOfParts, partsOfBench } from '../../../src/widgets/my-box/parts.ts';

/** They stand elsewhere: at the top, in the list of things, and with the warnings. */
const elsewhere = ['name', 'items', 'accepted'];

test('every input of the box stands in one part, and no part has one that is not there', () => {
  const placed = partsOfBench.flatMap((part) => [...inputsOfParts[part].basic, ...inputsOfParts[part].more]);
  expect([...placed].sort()).toEqual(
    Object.keys(fields)
      .filter((name) => !elsewhere.includes(name))
      .sort(),
  );
});

test('every check judges one part, and no part waits for a check that is not there', () => {
  const placed = partsOfBench.flatMap((part) => checksOfParts[part]);
  expect([...placed].sort()).toEqual(wholeModel.checks.map(({ id }) => id).sort());
  for (const { id } of wholeModel.checks) expect(checksOfParts[partOfCheck(id)]).toContain(id);
});

const kinds = ['sliding', 'lift-off', 'sawn'] as const;
const joints = ['finger', 'dovetail', 'mitre', 'keyed-mitre', 'splined-mitre', 'rabbet', 'butt'] as const;
const sizes = ['contents', 'inside', 'outside'] as const;
const all = kinds.flatMap((kind) =>
  joints.flatMap((joint) =>
    sizes.flatMap((sizeFrom) =>
      (['solid', 'plywood'] as const).map(
        (bottom): Partial<Box> => ({ kind, joint, sizeFrom, bottom, dividersAcross: 1 }),
      ),
    ),
  ),
);

describe('a box of any kind', () => {
  test('shows exactly the inputs it has, at most four of a part before the reader asks for more', () => {
    for (const changes of all) {
      const box = { ...exampleBox, ...changes };
      const shown = partsOfBench.flatMap((part) => [
        ...inputsIn(part, 'basic', box),
        ...inputsIn(part, 'more', box),
      ]);
      const has = (Object.keys(fields) as (keyof Box)[]).filter(
        (name) => !elsewhere.includes(name) && hasInput(name, box),
      );
      expect([...shown].sort()).toEqual([...has].sort());
      for (const part of partsOfBench) {
        const basic = inputsIn(part, 'basic', box).length;
        expect(basic).toBeGreaterThanOrEqual(1);
        expect(basic).toBeLessThanOrEqual(4);
      }
    }
  });
});

/**
 * Whatever a control or a button writes, the store, a link, a file and a kept design give it back: everything that
 * changes a box goes through `change`, which settles it first.
 */

import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import contents from '../../content/data/contents.csv?raw';
import type { Item } from '../../src/box/core/field.ts';
import { stepOf } from '../../src/box/core/field.ts';
import { withItems } from '../../src/box/design/contents.ts';
import { designBox } from '../../src/box/design/design.ts';
import { smallestChanges } from '../../src/box/design/smallest-change.ts';
import { blockOf } from '../../src/box/design/ways-to-lie.ts';
import { exampleBox } from '../../src/box/subjects/example.ts';
import type { Box } from '../../src/box/subjects/inputs.ts';
import { fields } from '../../src/box/subjects/inputs.ts';
import { wholeModel } from '../../src/box/whole/index.ts';
import { arrangements } from '../../src/calc/size/packing.ts';
import { type Decoded, decodeLink, decodeStore, encodeLink, encodeStore } from '../../src/notebook/codec.ts';
import { change, currentBox, redo, refused, undo } from '../../src/notebook/current.ts';
import { readDesigns, writeDesigns } from '../../src/notebook/designs.ts';
import { readFile, writeFile } from '../../src/notebook/files.ts';
import { forgetHistory } from '../../src/notebook/history.ts';
import { itemLimits, settle } from '../../src/notebook/settle.ts';
import { usualRuler } from '../../src/units/index.ts';
import { goldenBoxes } from '../box/golden/boxes.ts';
import { csvRows } from './csv-rows.ts';

const { checks } = wholeModel;

beforeEach(() => {
  forgetHistory();
  currentBox.value = exampleBox;
});

const boxOf = (decoded: Decoded): Box | undefined =>
  decoded.ok && decoded.dropped.length === 0 ? decoded.box : undefined;

/** The box as each of the four gives it back. */
async function comesBack(box: Box): Promise<void> {
  expect(boxOf(decodeStore(encodeStore(box)))).toEqual(box);
  const link = encodeLink(box);
  if (link !== undefined) expect(boxOf(decodeLink(link))).toEqual(box);
  expect(boxOf(await readFile(new Blob([writeFile(box)])))).toEqual(box);
  expect(readDesigns(writeDesigns([{ name: box.name, box }]))).toEqual({
    good: [{ name: box.name, box }],
    allRead: true,
  });
}

const catalog: Item[] = csvRows(contents).map((row) => ({
  name: row.name!,
  length: Number(row.length_mm),
  width: Number(row.width_mm),
  height: Number(row.height_mm) || 10,
  count: 1,
}));

test('the catalog of things is read', () => expect(catalog.length).toBeGreaterThan(5));

test.each(catalog)(
  '$name, taken in alone, a hundredfold and 5 m long, and laid every way it can lie',
  async (item) => {
    for (const items of [[item], [{ ...item, count: 100 }], [{ ...item, length: 5000 }]])
      for (const way of arrangements(items, { ratio: 1.5 })) {
        change({ items });
        change(blockOf(way));
        await comesBack(currentBox.value);
      }
  },
);

/** A row as it may be typed: any size and count that the fields of a row take. */
const anyRow = fc.record({
  name: fc.string({ maxLength: 60 }),
  length: fc.double({ min: itemLimits.size[0], max: itemLimits.size[1], noNaN: true }),
  width: fc.double({ min: itemLimits.size[0], max: 200, noNaN: true }),
  height: fc.double({ min: itemLimits.size[0], max: 100, noNaN: true }),
  count: fc.integer({ min: itemLimits.count[0], max: 30 }),
});

test('rows of contents, typed one after the other: each change is one step, which one step back takes back', async () => {
  let moved = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.array(anyRow, { maxLength: 2 }), { minLength: 1, maxLength: 3 }),
      fc.constantFrom('contents', 'inside', 'outside'),
      async (lists, sizeFrom) => {
        currentBox.value = { ...exampleBox, sizeFrom: sizeFrom as Box['sizeFrom'] };
        for (const items of lists) {
          const before = currentBox.value;
          const result = withItems(before, items);
          if ('refused' in result) continue;
          forgetHistory();
          change(result.inputs);
          expect(refused.value).toBeUndefined();
          await comesBack(currentBox.value);
          const now = currentBox.value;
          if (now.contentsLength !== before.contentsLength) moved++;
          undo();
          expect(currentBox.value).toEqual(before);
          redo();
          expect(currentBox.value).toEqual(now);
        }
      },
    ),
    { numRuns: 60 },
  );
  expect(moved).toBeGreaterThan(20);
}, 60_000);

test('every slider at both ends, in both units', async () => {
  for (const [name, field] of Object.entries(fields))
    if (field.type === 'number')
      for (const system of ['mm', 'inch'] as const) {
        const step = stepOf(field, usualRuler[system]);
        for (const steps of [Math.ceil(field.low / step - 1e-9), Math.floor(field.high / step + 1e-9)]) {
          change({ [name]: steps * step });
          expect(refused.value, `${name} at ${steps} steps of ${step}`).toBeUndefined();
          await comesBack(currentBox.value);
        }
      }
});

test('every change that a refusal or a verdict offers', async () => {
  for (const box of goldenBoxes().slice(0, 150)) {
    currentBox.value = { ...exampleBox, ...settle(box).inputs };
    for (const { field, to } of designBox(currentBox.value).refusals)
      if (field !== undefined && to !== undefined) {
        change({ [field]: to });
        await comesBack(currentBox.value);
      }
  }
  for (const box of goldenBoxes().slice(0, 12))
    for (const check of checks)
      for (const { inputs } of smallestChanges(box, check, usualRuler.inch)) {
        change(inputs);
        await comesBack(currentBox.value);
      }
}, 60_000);

describe('a change that cannot be made as wanted', () => {
  test('goes to the end of its field, and says so in both units', () => {
    change({ contentsLength: 700 });
    expect(currentBox.value.contentsLength).toBe(600);
    expect(refused.value).toMatch(/length of the contents goes to 600.mm \(23.5\/8.in\)/);
    change({ wall: 9 });
    expect(refused.value).toBeUndefined();
  });

  test('that is no number, no choice or no list changes nothing else', () => {
    change({ wall: Number.NaN, joint: 'nails' as Box['joint'], kerf: 2 });
    expect(currentBox.value).toEqual({ ...exampleBox, kerf: 2 });
    expect(refused.value).toMatch(/wall thickness stays.*corner joint stays/);
  });
});

/** Another list of things that go in. */
const list = fc
  .array(fc.tuple(fc.constantFrom(...catalog), fc.integer({ min: 1, max: 12 })), { maxLength: 2 })
  .map((things) => things.map(([thing, count]) => ({ ...thing, count })));
type Step = Record<string, unknown> | Item[] | 'undo' | 'redo' | 'link' | 'store';

/** One thing a reader can do; thousands in a row lose nothing and never throw. */
const steps = fc.array(
  fc.oneof<fc.Arbitrary<Step>[]>(
    fc
      .constantFrom(...Object.entries(fields))
      .chain(
        ([name, field]): fc.Arbitrary<Record<string, unknown>> =>
          field.type === 'number'
            ? fc
                .double({ min: field.low - field.high, max: 2 * field.high })
                .map((value) => ({ [name]: value }))
            : field.type === 'choice'
              ? fc.constantFrom(...Object.keys(field.options)).map((value) => ({ [name]: value }))
              : fc.constant({ name: 'x'.repeat(80) }),
      ),
    fc.constantFrom('undo', 'redo', 'link', 'store'),
    list,
  ),
  { minLength: 20, maxLength: 60 },
);
const runs = Number(process.env.FUZZ_RUNS ?? 100);

test('any sequence of changes, steps back and forward, links and reloads leaves a box that comes back as it is', async () => {
  await fc.assert(
    fc.asyncProperty(steps, async (all) => {
      for (const step of all) {
        const box = currentBox.value;
        if (step === 'undo') undo();
        else if (step === 'redo') redo();
        else if (step === 'link') currentBox.value = boxOf(decodeLink(encodeLink(box)!))!;
        else if (step === 'store') currentBox.value = boxOf(decodeStore(encodeStore(box)))!;
        else if (Array.isArray(step)) {
          const sized = withItems(box, step);
          if ('inputs' in sized) change(sized.inputs);
        } else change(step as Partial<Box>);
      }
      await comesBack(currentBox.value);
      expect(designBox(currentBox.value).values.outsideLength).not.toBeNaN();
    }),
    { numRuns: runs },
  );
}, 600_000);

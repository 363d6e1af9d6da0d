/** The example of the site: one for each reader's rulers, buildable, and with little to complain about. */
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import { stockOf } from '../../../src/box/stock/stock.ts';
import { exampleBox, exampleFor, inchExample, isExample } from '../../../src/box/subjects/example.ts';
import { type Box, fields } from '../../../src/box/subjects/inputs.ts';
import { verdicts } from '../../../src/box/whole/index.ts';
import { arrangements } from '../../../src/calc/size/packing.ts';
import { bases, newest } from '../../../src/notebook/bases.ts';
import { fits } from '../../../src/notebook/settle.ts';
import { INCH } from '../../../src/units/index.ts';

describe.each([
  ['mm', exampleBox],
  ['inch', inchExample],
] as const)('the example in %s', (system, box) => {
  const design = designBox(box);

  test('can be built from its board, every input inside its field', () => {
    expect(design.refusals).toEqual([]);
    expect(stockOf(design).shortages).toEqual([]);
    for (const [name, value] of Object.entries(box))
      expect(fits(fields[name as keyof typeof fields], value), name).toBe(true);
  });

  test('has at most two things to look at, and nothing that breaks or is unknown', () => {
    const odd = verdicts(design.values).filter(({ state }) => state !== 'usual');
    expect(odd.map(({ check, state }) => `${check.id}: ${state}`).length).toBeLessThanOrEqual(2);
    expect(odd.every(({ state }) => state === 'unusual')).toBe(true);
  });

  test('holds its dominoes as the arrangements lay them', () => {
    const laid = arrangements(box.items, { ratio: 1.5 }).map(({ length, width, height }) =>
      [length, width, height].map((size) => size.toFixed(3)).join(),
    );
    expect(laid).toContain(
      [box.contentsLength, box.contentsWidth, box.contentsHeight].map((size) => size.toFixed(3)).join(),
    );
  });

  test('stands on its reader’s own grid: whole and half millimeters, or sixteenths, with finer steps for gaps and fits', () => {
    const fine = [
      'fingerFit',
      'stepError',
      'bottomGap',
      'lidPlay',
      'lidRoom',
      'lengthError',
      'planing',
      'pullOffset',
    ];
    for (const [name, field] of Object.entries(fields)) {
      if (field.type !== 'number' || field.kind !== 'length' || fine.includes(name)) continue;
      const grid = system === 'mm' ? 0.5 : INCH / 32;
      const steps = (box[name as keyof typeof box] as number) / grid;
      expect(Math.abs(steps - Math.round(steps)), name).toBeLessThan(1e-9);
    }
  });
});

test('the outside is 172 by 112 by 56 mm, a ratio of about 1.54, and 7 by 4 5/8 by 2 3/16 in', () => {
  // 150 + 6 + 16 by 90 + 6 + 16; 9 + 4 + 35 + 4.5 + 3.5 = 56, seven fingers of 8.
  const { outsideLength, outsideWidth, outsideHeight, outsideRatio, frontHole } =
    designBox(exampleBox).values;
  expect([outsideLength, outsideWidth, outsideHeight]).toEqual([172, 112, 56]);
  expect(outsideRatio).toBeCloseTo(1.536, 3);
  expect(frontHole).toBe(0);
  const inch = designBox(inchExample).values;
  expect([inch.outsideLength, inch.outsideWidth, inch.outsideHeight].map((size) => size / INCH)).toEqual([
    expect.closeTo(7, 9),
    expect.closeTo(4.625, 9),
    expect.closeTo(2.1875, 9),
  ]);
  expect(inch.frontHole).toBe(0);
});

test('is known as long as nobody touched it', () => {
  expect(isExample(exampleFor('inch'))).toBe(true);
  expect(isExample({ ...exampleBox, wall: 8.5 })).toBe(false);
  // A thing of another size under the same name, and the order of the fields.
  const [domino] = exampleBox.items;
  expect(isExample({ ...exampleBox, items: [{ ...domino!, height: 10 }] })).toBe(false);
  expect(isExample(Object.fromEntries(Object.entries(exampleBox).reverse()) as unknown as Box)).toBe(true);
});

test('is the base of the newest links, until it changes: then a new version of links is due', () => {
  expect(bases[newest]).toEqual(exampleBox);
});

test.each([
  ['a thumb notch', 'notch', 'notch'],
  ['a glued strip as thick as typed', 'glued', 'pull'],
  ['a finger hole', 'hole', 'finger-hole'],
] as const)('%s is built, drawn and in the order of work', async (_, pull, step) => {
  const { workOf } = await import('../../../src/box/work/work.ts');
  const design = designBox({ ...exampleBox, pull, pullThickness: 7 });
  expect(design.refusals).toEqual([]);
  expect(workOf(design)!.steps.map(({ id }) => id)).toContain(step);
  const lid = design.parts.find(({ name }) => name === 'lid')!;
  const strip = design.parts.find(({ name }) => name === 'pull');
  const full = lid.finished.length * lid.finished.width * lid.finished.thickness;
  expect(strip?.finished.thickness).toBe(pull === 'glued' ? 7 : undefined);
  // The hole takes a disc of 20 mm out of the lid: its area times the lid's thickness.
  if (pull === 'hole') expect(full - lid.volume).toBeCloseTo(Math.PI * 100 * lid.finished.thickness, 3);
  if (pull === 'notch') expect(lid.volume).toBeLessThan(full);
});

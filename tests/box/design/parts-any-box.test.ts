/** Whatever stands in the inputs, a design is finite numbers or named refusals, and what a refusal proposes mends it. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Design, designBox } from '../../../src/box/design/design.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { exampleBox } from '../reckoned-box.ts';

const rows = Object.entries(fields);

/** Inside the field's range, a little outside it, far outside it, or no number. */
const wild = (low: number, high: number) =>
  fc.oneof(
    { weight: 6, arbitrary: fc.double({ min: low, max: high, noNaN: true }) },
    { weight: 2, arbitrary: fc.double({ min: -2 * high, max: 5 * high, noNaN: true }) },
    {
      weight: 1,
      arbitrary: fc.constantFrom(0, -1, 1e-9, -1e9, 1e6, 1e9, 1e300, Number.NaN, Infinity, -Infinity),
    },
  );

const anyBox = fc.record(
  Object.fromEntries(
    rows.flatMap(([name, row]): [string, fc.Arbitrary<number | string>][] => {
      if (row.type === 'number') return [[name, wild(row.low, row.high)]];
      if (row.type === 'choice') return [[name, fc.constantFrom(...Object.keys(row.options))]];
      return [];
    }),
  ),
  { requiredKeys: [] },
) as unknown as fc.Arbitrary<Partial<Box>>;

/** The example with other choices, and up to three of its numbers anywhere in their fields' ranges. */
const nearTheExample = fc
  .tuple(
    fc.record(
      Object.fromEntries(
        rows.flatMap(([name, row]) =>
          row.type === 'choice' ? [[name, fc.constantFrom(...Object.keys(row.options))]] : [],
        ),
      ),
    ),
    fc.array(
      fc
        .constantFrom(...rows)
        .chain(([name, row]) =>
          row.type === 'number'
            ? fc.double({ min: row.low, max: row.high, noNaN: true }).map((value) => [name, value] as const)
            : fc.constant([name, exampleBox[name as keyof Box]] as const),
        ),
      { maxLength: 3 },
    ),
  )
  .map(([choices, numbers]) => ({ ...choices, ...Object.fromEntries(numbers) }) as Partial<Box>);

/** Every number in what a design says of its own; `values` and `box` are the inputs and may hold anything. */
function strayNumbers(design: Design): string[] {
  const stray: string[] = [];
  const look = (found: unknown, path: string) => {
    if (typeof found === 'number' && !Number.isFinite(found)) stray.push(path);
    if (typeof found === 'string' && /NaN|Infinity|undefined/.test(found)) stray.push(`${path}: ${found}`);
    if (typeof found === 'object' && found !== null)
      for (const [key, value] of Object.entries(found))
        if (key !== 'values' && key !== 'box') look(value, `${path}.${key}`);
  };
  look(design, 'design');
  return stray;
}

/** Milliseconds a property may take on a busy machine. */
const patience = 30_000;

test(
  'any inputs whatever give finite numbers or named refusals, and never throw',
  () => {
    fc.assert(
      fc.property(anyBox, (some) => {
        const design = designBox({ ...exampleBox, ...some });
        expect(strayNumbers(design)).toEqual([]);
        for (const { id, what, fix } of design.refusals)
          for (const text of [id, what, fix]) expect(text.length).toBeGreaterThan(4);
      }),
      { numRuns: 2000 },
    );
  },
  patience,
);

test(
  'a box without parts, without bottom or without lid says why',
  () => {
    fc.assert(
      fc.property(anyBox, (some) => {
        const { parts, refusals } = designBox({ ...exampleBox, ...some });
        const names = parts.map(({ name }) => name);
        if (!names.includes('front') || !names.includes('bottom') || !names.includes('lid'))
          expect(refusals).not.toEqual([]);
      }),
      {
        numRuns: 1000,
        // Hairs of room that once made walls meet without a word.
        examples: [
          [{ contentsLength: 0, clearance: 5e-324 } as Parameters<typeof designBox>[0]],
          [{ contentsLength: 0, clearance: 0, dividersAcross: 5e-324 } as Parameters<typeof designBox>[0]],
        ],
      },
    );
  },
  patience,
);

test(
  'no part of a box that is not refused has a size of nothing or less',
  () => {
    fc.assert(
      fc.property(nearTheExample, (some) => {
        const { parts, refusals, grooves } = designBox({ ...exampleBox, ...some });
        fc.pre(refusals.length === 0);
        for (const { finished, pieces, name } of parts) {
          for (const size of Object.values(finished)) expect(size, name).toBeGreaterThan(0);
          for (const { block } of pieces)
            for (const [low, high] of Object.values(block)) expect(high - low, name).toBeGreaterThan(0);
        }
        for (const { start, stop, width, depth } of grooves)
          for (const size of [stop - start, width, depth]) expect(size).toBeGreaterThan(0);
      }),
      { numRuns: 1000 },
    );
  },
  patience,
);

test(
  'the change that a refusal proposes mends what it names',
  () => {
    let mended = 0;
    fc.assert(
      fc.property(anyBox, (some) => {
        const box = { ...exampleBox, ...some };
        for (const { id, field, to } of designBox(box).refusals) {
          if (field === undefined || to === undefined) continue;
          const left = designBox({ ...box, [field]: to }).refusals;
          expect(left.filter((other) => other.id === id && other.field === field)).toEqual([]);
          mended++;
        }
      }),
      { numRuns: 1000 },
    );
    expect(mended).toBeGreaterThan(500);
  },
  patience,
);

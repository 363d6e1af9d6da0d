/**
 * One number has one maker: the cut list, its file, the drawings and the reasons show the same number, rounded the same
 * way, for any box that can be built.
 */
import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { numberOf, rowsOf } from '../../../src/box/core/result.ts';
import { type Design, designBox } from '../../../src/box/design/design.ts';
import type { Part } from '../../../src/box/design/part.ts';
import { shownSize, sides } from '../../../src/box/design/shown-size.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import type { ResultName } from '../../../src/box/whole/index.ts';
import { wholeModel } from '../../../src/box/whole/index.ts';
import { relation } from '../../../src/calc/core/relation.ts';
import { cutListCsv } from '../../../src/notebook/files.ts';
import { format, pairOf, type Ruler, rulers } from '../../../src/units/index.ts';
import { parse } from '../../../src/units/parse.ts';
import { goldenBoxes } from '../golden/boxes.ts';

const designs = goldenBoxes()
  .map(designBox)
  .filter(({ refusals }) => refusals.length === 0);
const systems = ['mm', 'inch'] as const;

const partNamed = (design: Design, name: string) => design.parts.find((part) => part.name === name);
/** Where a size of a part follows from a result of the box. */
const made: readonly [part: Part['name'], side: (typeof sides)[number], result: ResultName][] = [
  ['left', 'length', 'outsideLength'],
  ['bottom', 'width', 'bottomWidth'],
  ['bottom', 'length', 'bottomLength'],
  ['lid', 'width', 'lidWidth'],
  ['lid', 'length', 'lidLength'],
  ['lid', 'thickness', 'lidTongue'],
];
const printed = (name: ResultName, value: number, ruler: Ruler) => {
  const { kind, digits, denominator, as, round } = wholeModel.results[name]!;
  return format(value, kind, { system: ruler.system, ruler, digits, denominator, as, round });
};
const everyRuler = Object.values(rulers);

test('most of the thousand boxes can be built, so that what follows says something', () =>
  expect(designs.length).toBeGreaterThan(600));

test.each(made)('%s, %s: the cell of the cut list is the number that answers why', (name, side, result) => {
  for (const design of designs) {
    const part = partNamed(design, name)!;
    const { value, kind, ...options } = shownSize(part, 'finished', side);
    for (const ruler of everyRuler)
      expect(format(value, kind, { ...options, system: ruler.system, ruler })).toBe(
        printed(result, design.values[result], ruler),
      );
  }
});

test.each(everyRuler)(
  '$name: the file of the cut list holds the cells of the page, and no cell that reads as a date',
  (ruler) => {
    for (const design of designs.slice(0, 100)) {
      const pair = pairOf(ruler);
      const rows = csvParseRows(cutListCsv(design, pair)).slice(1);
      expect(rows.length).toBe(design.parts.length);
      for (const [index, part] of design.parts.entries()) {
        const cells = (['finished', 'rough'] as const).flatMap((state) =>
          sides.flatMap((side) => {
            const { value, kind, ...options } = shownSize(part, state, side);
            return systems.map((system) =>
              format(value, kind, { ...options, system, ruler: pair[system] }).replace('\u00a0', ' '),
            );
          }),
        );
        // In mm the file leaves the unit to the heading.
        expect(rows[index]!.slice(4, 16)).toEqual(
          cells.map((cell) => cell.replace(/ mm$/, '').replace('\u00a0mm', '').replace('\u00a0', ' ')),
        );
        for (const cell of rows[index]!.slice(4, 16)) expect(cell).not.toMatch(/^\d+\/\d+$/);
      }
    }
  },
);

/** A printed length back in mm. */
const read = (text: string): number => {
  const found = parse(text, 'length', 'mm');
  if (!found.ok) throw new Error(`${text}: ${found.message}`);
  return found.value;
};

describe('in both units', () => {
  test('panels are never shown larger than they may be, gaps never smaller', () => {
    for (const design of designs) {
      for (const name of ['bottom', 'lid'] as const)
        for (const side of sides) {
          const { value, kind, ...options } = shownSize(partNamed(design, name)!, 'finished', side);
          for (const ruler of everyRuler)
            expect(
              read(format(value, kind, { ...options, system: ruler.system, ruler })),
            ).toBeLessThanOrEqual(value + 1e-5);
        }
      for (const name of ['bottomGapNeeded', 'lidPlayNeeded', 'bottomPlayToday', 'lidPlayToday'] as const) {
        const value = design.values[name];
        if (!Number.isFinite(value)) continue;
        for (const ruler of everyRuler)
          expect(read(printed(name, value, ruler).replace(/, .*/, ''))).toBeGreaterThanOrEqual(value - 1e-5);
      }
    }
  });
});

test('a glued bottom fills its grooves: no gap, whatever gap is typed', () => {
  for (const { box, values, bottom } of designs)
    if (box.bottomFit === 'glued') {
      expect(values.bottomWidth).toBeCloseTo(values.insideWidth + 2 * box.grooveDepth, 9);
      expect(bottom?.gapAcross).toBeCloseTo(0, 9);
    }
});

test('the room in a lift-off box is what its liner leaves', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('contents', 'inside', 'outside'),
      fc.double({ min: 2, max: 8, noNaN: true }),
      (sizeFrom, linerThickness) => {
        const { inside, values, box } = designBox({
          ...designs[0]!.box,
          kind: 'lift-off',
          sizeFrom,
          linerThickness,
        } as Box);
        expect(inside!.length).toBeCloseTo(values.outsideLength - 2 * box.wall - 2 * linerThickness, 9);
        if (sizeFrom === 'contents') expect(inside!.length).toBeGreaterThanOrEqual(box.contentsLength);
        if (sizeFrom === 'inside') expect(inside!.length).toBeCloseTo(box.wantedLength, 9);
      },
    ),
  );
});

describe('what is put into a relation', () => {
  const double = relation({
    id: 'double',
    title: 'Twice',
    result: { symbol: 'y', name: 'twice', unit: 'mm' },
    inputs: { x: { name: 'once', unit: 'mm', range: [0, 10] } },
    expression: '2 x',
    compute: ({ x }) => 2 * x,
    evidence: 'geometry',
    source: 'For this test.',
  });
  const row = rowsOf<{ a: number }>();
  const say = { label: 'twice', kind: 'length' } as const;

  test('must carry the names of its inputs: a wrong one does not compile', () => {
    // @ts-expect-error `z` is no input of this relation.
    row(double, (v) => ({ z: v.a }), say);
    // @ts-expect-error `x` is missing.
    row(double, () => ({}), say);
    expect(
      numberOf(
        row(double, (v) => ({ x: v.a }), say),
        { a: 3 },
      ),
    ).toBe(6);
  });

  test('outside the range of the relation gives no number, save where the box is built from it', () => {
    expect(
      numberOf(
        row(double, (v) => ({ x: v.a }), say),
        { a: 11 },
      ),
    ).toBeNaN();
    expect(
      numberOf(
        row(double, (v) => ({ x: v.a }), { ...say, builds: true }),
        { a: 11 },
      ),
    ).toBe(22);
  });
});

/**
 * One rounding everywhere: on each ruler, for any box, the cell of the cut list, the drawing, the file and the sentence of
 * a step show the same size. And whatever a ruler wrote into a box can be read back from link, store and file.
 */
import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import type { ComponentChild } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterAll, describe, expect, test } from 'vitest';
import { stepOf } from '../../../src/box/core/field.ts';
import { type Design, designBox } from '../../../src/box/design/design.ts';
import { sides } from '../../../src/box/design/shown-size.ts';
import { type Box, fields, type NumberName } from '../../../src/box/subjects/inputs.ts';
import { plainly } from '../../../src/box/work/say.ts';
import { workOf } from '../../../src/box/work/work.ts';
import { shownRulers } from '../../../src/figures/parts/my-ruler.ts';
import { Views } from '../../../src/figures/views/Views.tsx';
import { decodeLink, decodeStore, encodeLink, encodeStore } from '../../../src/notebook/codec.ts';
import { cutListCsv, readFile, writeFile } from '../../../src/notebook/files.ts';
import { settle } from '../../../src/notebook/settle.ts';
import { pairOf, type Ruler, rulers, usualRuler } from '../../../src/units/index.ts';
import { PartsTable } from '../../../src/widgets/my-box/PartsTable.tsx';
import { goldenBoxes } from '../../box/golden/boxes.ts';

const everyRuler = Object.values(rulers);
const designs = goldenBoxes()
  .map(designBox)
  .filter(({ refusals }) => refusals.length === 0);

afterAll(() => {
  shownRulers.value = usualRuler;
});

/** What a component says to a reader of these units, as plain text. */
function seen(component: ComponentChild, { system }: Ruler): string[] {
  const html = renderToString(component as Parameters<typeof renderToString>[0]);
  const others = system === 'mm' ? 'inch' : 'mm';
  return html
    .replace(new RegExp(`<(span|text)[^>]*class="[^"]*\\b${others}\\b[^"]*"[^>]*>[^<]*</\\1>`, 'g'), '')
    .replace(/<[^>]*>/g, '|')
    .split('|')
    .filter(Boolean);
}

/** Finished sizes by part, as the table of the page shows them. */
const cellsOf = (design: Design, ruler: Ruler) => {
  const unit = ruler.system === 'mm' ? '\u00a0mm' : '\u00a0in';
  const numbers = seen(<PartsTable design={design} />, ruler).filter((text) => text.endsWith(unit));
  return design.parts.map((part, row) => ({ part, cells: numbers.slice(row * 6, row * 6 + 3) }));
};

test.each(everyRuler)('$name: cell, file, drawing and sentence agree', (ruler) => {
  shownRulers.value = pairOf(ruler);
  fc.assert(
    fc.property(fc.constantFrom(...designs), (design) => {
      const rows = cellsOf(design, ruler);
      const file = csvParseRows(cutListCsv(design, pairOf(ruler))).slice(1);
      const first = ruler.system === 'mm' ? 4 : 5;
      for (const [row, { part, cells }] of rows.entries())
        expect(cells, part.label).toEqual(
          sides.map((_, side) => {
            const cell = file[row]![first + 2 * side]!;
            return ruler.system === 'mm' ? `${cell}\u00a0mm` : cell.replaceAll(' ', '\u00a0');
          }),
        );
      const cell = (name: string, side: 0 | 1 | 2) =>
        rows.find(({ part }) => part.name === name)!.cells[side]!;
      const drawn = seen(<Views design={design} />, ruler);
      expect(drawn).toContain(cell('left', 0));
      expect(drawn).toContain(`wall ${cell('left', 2)}`);
      const step = (id: string) =>
        plainly(workOf(design)!.steps.find((one) => one.id === id)!.does, ruler.system, ruler);
      expect(step('second-ends')).toContain(
        `both sides to ${cell('left', 0)}, then both ends to ${cell('front', 0)}.`,
      );
      expect(step('bottom')).toContain(`Cut the bottom to ${cell('bottom', 0)} by ${cell('bottom', 1)}`);
    }),
    { numRuns: 60 },
  );
});

describe('what a ruler writes', () => {
  const sizes = Object.keys(fields).filter((name): name is NumberName => {
    const field = fields[name as keyof Box];
    return field.type === 'number' && field.as === 'size';
  });
  const anyBox = fc.record({
    ruler: fc.constantFrom(...everyRuler),
    base: fc.constantFrom(...designs.map(({ box }) => box)),
    marks: fc.array(fc.record({ name: fc.constantFrom(...sizes), count: fc.integer({ min: 0, max: 3000 }) })),
  });

  test('stands in the box as a whole number of its marks, and is read back from link, store and file', async () => {
    await fc.assert(
      fc.asyncProperty(anyBox, async ({ ruler, base, marks }) => {
        const wanted = Object.fromEntries(
          marks.map(({ name, count }) => [name, count * stepOf(fields[name], ruler)]),
        );
        const box: Box = { ...base, ...settle(wanted).inputs };
        for (const { name, count } of marks) {
          const { low, high } = fields[name];
          if (wanted[name] !== count * ruler.mark || wanted[name]! < low || wanted[name]! > high) continue;
          expect(box[name] / ruler.mark).toBeCloseTo(count, 9);
        }
        const back = [
          decodeLink(encodeLink(box)!),
          decodeStore(encodeStore(box)),
          await readFile(new Blob([writeFile(box)])),
        ];
        for (const decoded of back) {
          expect(decoded).toMatchObject({ ok: true, dropped: [] });
          expect(decoded.ok && decoded.box).toEqual(box);
        }
      }),
    );
  });
});

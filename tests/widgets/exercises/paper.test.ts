/** What stands on which page: nothing is lost, nothing broken that fits, and each page holds no more than it can. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type KeyHeights,
  packBlocks,
  packKeys,
  pageSize,
  roomOn,
} from '../../../src/widgets/exercises/sheets/paper.ts';

const heights = (most: number) => fc.array(fc.double({ min: 1, max: most, noNaN: true }), { maxLength: 40 });
const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);

test('blocks stand in order, each once, and a page is only over-full with one that is longer than a page', () => {
  fc.assert(
    fc.property(heights(1500), (all) => {
      const pages = packBlocks(all, 1000);
      expect(pages.flat()).toEqual([...all.keys()]);
      for (const page of pages) {
        expect(page.length).toBeGreaterThan(0);
        if (page.length > 1) expect(sum(page.map((at) => all[at]!))).toBeLessThanOrEqual(1000 + 1e-6);
      }
    }),
  );
});

test('every row and every note of the keys stands once, in order, and no page is over-full', () => {
  const table = fc.record<KeyHeights>({
    head: fc.constant(40),
    columns: fc.constant(30),
    rows: heights(60).filter((rows) => rows.length > 0),
    notes: heights(90),
  });
  fc.assert(
    fc.property(fc.array(table, { minLength: 1, maxLength: 8 }), (tables) => {
      const pages = packKeys(tables, 1000, 120);
      tables.forEach(({ rows, notes }, at) => {
        const pieces = pages.flat().filter((piece) => piece.at === at);
        const places = (of: 'rows' | 'notes') =>
          pieces.flatMap((piece) => {
            const [from, to] = piece[of];
            return Array.from({ length: to - from }, (_, step) => from + step);
          });
        expect(places('rows')).toEqual([...rows.keys()]);
        expect(places('notes')).toEqual([...notes.keys()]);
        // What fits on one page is not broken.
        if (70 + sum(rows) + sum(notes) <= 880) expect(pieces).toHaveLength(1);
      });
      pages.forEach((pieces, page) => {
        const used = pieces.map(({ at, rows, notes }) => {
          const table = tables[at]!;
          const heads = table.head + (rows[1] > rows[0] ? table.columns : 0);
          return heads + sum(table.rows.slice(...rows)) + sum(table.notes.slice(...notes));
        });
        expect(sum(used)).toBeLessThanOrEqual(1000 - (page === 0 ? 120 : 0) + 1e-6);
      });
    }),
  );
});

test('a page is as large as the paper less its margins, and what is filled less than that', () => {
  expect(pageSize('A4')).toEqual({ width: 186, height: 272.5 });
  expect(pageSize('Letter').width).toBeCloseTo(8.5 * 25.4 - 24, 6);
  expect(pageSize('Letter').height).toBeCloseTo(11 * 25.4 - 24.5, 6);
  for (const paper of ['A4', 'Letter'] as const)
    expect(roomOn(paper)).toBeLessThan((pageSize(paper).height / 25.4) * 96 - 40);
});

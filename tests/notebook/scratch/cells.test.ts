/** Cells survive a link, the store and a file; what is damaged is refused in a sentence, and what is left is kept. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Cell,
  decodeCells,
  decodeCellsLink,
  encodeCellsLink,
  longestNote,
  mostCells,
  readCellsFile,
  writeCells,
} from '../../../src/notebook/scratch/cells.ts';

const text = (longest: number) => fc.string({ unit: 'grapheme', maxLength: Math.floor(longest / 4) });
const anyCell: fc.Arbitrary<Cell> = fc.oneof(
  fc.record({ type: fc.constant('sum' as const), text: text(100) }),
  fc.record({
    type: fc.constant('sum' as const),
    text: text(100),
    from: fc.stringMatching(/^[a-z0-9-]{1,60}$/),
  }),
  fc.record({ type: fc.constant('note' as const), text: text(100) }),
  fc.record({
    type: fc.constant('plot' as const),
    text: text(100),
    over: text(31),
    from: text(80),
    to: text(80),
  }),
);
const anyCells = fc.array(anyCell, { minLength: 1, maxLength: 12 });

describe('cells come back as they were', () => {
  test('from a link', () => {
    fc.assert(
      fc.property(anyCells, (cells) => {
        const link = encodeCellsLink(cells);
        if (link === undefined) return;
        expect(link).toMatch(/^1\.[\w-]*$/);
        expect(decodeCellsLink(link)).toEqual({ ok: true, cells, dropped: 0 });
      }),
    );
  });

  test('from the store and from a file', async () => {
    await fc.assert(
      fc.asyncProperty(anyCells, async (cells) => {
        expect(decodeCells(writeCells(cells), 'in this file')).toEqual({ ok: true, cells, dropped: 0 });
        expect(await readCellsFile(new Blob([writeCells(cells)]))).toEqual({ ok: true, cells, dropped: 0 });
      }),
      { numRuns: 30 },
    );
  });
});

test('more cells than a link may carry make no link', () => {
  const note: Cell = { type: 'note', text: 'word '.repeat(200) };
  expect(encodeCellsLink(Array.from({ length: 20 }, () => note))).toBeUndefined();
});

describe('what is damaged or hostile', () => {
  const sum = { type: 'sum', text: '1 + 1' };
  test.each([
    ['1.%%%', 'damaged'],
    ['9.W10', 'another version'],
    ['nothing', 'does not hold cells'],
    [`1.${'A'.repeat(9000)}`, 'does not hold cells'],
    [`1.${btoa('{"a":1}')}`, 'does not hold cells'],
  ])('the link %.20s is refused: %s', (link, says) => {
    expect(decodeCellsLink(link)).toEqual({ ok: false, message: expect.stringContaining(says) });
  });

  test('a file that is too large, or no file of cells, is refused', async () => {
    expect(await readCellsFile(new Blob(['x'.repeat(200_001)]))).toMatchObject({ message: /too large/ });
    expect(await readCellsFile(new Blob(['{']))).toMatchObject({
      message: 'What is in this file is damaged.',
    });
    expect(await readCellsFile(new Blob(['{"version":1,"box":{}}']))).toMatchObject({ ok: false });
  });

  test('cells that cannot be used are left out and counted', () => {
    const cells = [
      sum,
      3,
      null,
      { type: 'page', text: '' },
      { type: 'note', text: 'x'.repeat(longestNote + 1) },
    ];
    expect(decodeCells(JSON.stringify({ version: 1, cells }), 'here')).toEqual({
      ok: true,
      cells: [sum],
      dropped: 4,
    });
    const many = Array.from({ length: mostCells + 5 }, () => sum);
    expect(decodeCells(JSON.stringify({ version: 1, cells: many }), 'here')).toMatchObject({ dropped: 5 });
  });
});

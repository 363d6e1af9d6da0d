/** The cell at the end of a lesson is one of the reader's cells once it is changed. */
import { beforeEach, expect, test } from 'vitest';
import { decodeCells, writeCells } from '../../../src/notebook/scratch/cells.ts';
import { cellOfLesson, cellsNow, put, withIds, writeAtLesson } from '../../../src/notebook/scratch/kept.ts';

beforeEach(() => put(withIds([{ type: 'sum', text: '' }])));

test('it takes the place of the blank cell that a new sheet begins with', () => {
  writeAtLesson('joint-spacing', '3 mm * 2');
  expect(cellsNow()).toEqual([{ type: 'sum', text: '3 mm * 2', from: 'joint-spacing' }]);
});

test('it stands behind what is there, and a second change is a change of the same cell', () => {
  put(withIds([{ type: 'sum', text: 'gap = 1 mm' }]));
  writeAtLesson('joint-spacing', 'gap * 2');
  writeAtLesson('ten-years', 'gap * 4');
  writeAtLesson('joint-spacing', 'gap * 3');
  expect(cellsNow().map(({ text }) => text)).toEqual(['gap = 1 mm', 'gap * 3', 'gap * 4']);
  expect(cellOfLesson('joint-spacing')?.cell.text).toBe('gap * 3');
  expect(cellOfLesson('proportion')).toBeUndefined();
});

test('a file keeps which lesson it belongs to; what is no address of a lesson is dropped, the cell is kept', () => {
  writeAtLesson('ten-years', '1 mm');
  const file = writeCells(cellsNow());
  expect(decodeCells(file, 'in this file')).toMatchObject({ cells: [{ from: 'ten-years' }] });
  expect(decodeCells(file.replace('ten-years', '../../elsewhere'), 'in this file')).toEqual({
    ok: true,
    cells: [{ type: 'sum', text: '1 mm' }],
    dropped: 0,
  });
});

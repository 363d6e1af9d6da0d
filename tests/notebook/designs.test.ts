/** The list of named designs, read back from a store that may be damaged. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exampleBox } from '../../src/box/subjects/example.ts';
import { bases } from '../../src/notebook/bases.ts';
import { readDesigns, writeDesigns } from '../../src/notebook/designs.ts';

const list = [
  { name: 'Domino box', box: exampleBox },
  { name: 'Tea box', box: { ...exampleBox, name: 'Tea box', wall: 8.5 } },
];

test('comes back as it was written', () => {
  expect(readDesigns(writeDesigns(list))).toEqual({ good: list, allRead: true });
});

test('keeps the designs that can be read, and of one with a bad field all but that field', () => {
  const text = writeDesigns(list).replace('"wall":8.5', '"wall":-8.5');
  const { good, allRead } = readDesigns(text);
  expect(allRead).toBe(false);
  expect(good[0]).toEqual(list[0]);
  expect(good[1]).toEqual({ name: 'Tea box', box: { ...list[1]!.box, wall: bases[1]!.wall } });
});

test('never throws, whatever stands in the store', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
      expect(readDesigns(text).good).toEqual([]);
    }),
  );
});

/** The list of named designs, read back from a store that may be damaged. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exampleBox } from '../../src/box/box.ts';
import { readDesigns, writeDesigns } from '../../src/notebook/designs.ts';

const list = [
  { name: 'Domino box', box: exampleBox },
  { name: 'Tea box', box: { ...exampleBox, name: 'Tea box', wall: 8 } },
];

test('comes back as it was written', () => {
  expect(readDesigns(writeDesigns(list))).toEqual({ good: list, allRead: true });
});

test('keeps the designs that can be read, and says that one could not', () => {
  const text = writeDesigns(list).replace('"wall":8', '"wall":-8');
  expect(readDesigns(text)).toEqual({ good: [list[0]], allRead: false });
});

test('never throws, whatever stands in the store', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
      expect(readDesigns(text).good).toEqual([]);
    }),
  );
});

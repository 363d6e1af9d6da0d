/** What of the site is on this device, by the names in the worker's cache. */
import { expect, test } from 'vitest';
import { bought } from '../../../src/widgets/class/feet-or-meters.ts';
import { keyOf, type Listed, missingOf } from '../../../src/widgets/class/kept-here.ts';

const root = 'https://host/boxes/';
const list: Listed[] = [
  ['index.html', 'abc'],
  ['_astro/kit.js', null],
  ['rules/twist/index.html', 'd'],
];

test('a file is kept under its address with its revision, as the library of the worker names it', () => {
  expect(keyOf(list[0]!, root)).toBe('https://host/boxes/index.html?__WB_REVISION__=abc');
  expect(keyOf(list[1]!, root)).toBe('https://host/boxes/_astro/kit.js');
});

test('what is not kept, or kept in another version, is missing', () => {
  const kept = new Set([
    'https://host/boxes/index.html?__WB_REVISION__=old',
    'https://host/boxes/_astro/kit.js',
  ]);
  expect(missingOf(list, kept, root).map(([url]) => url)).toEqual(['index.html', 'rules/twist/index.html']);
});

test('wood is bought in tenths of a meter or whole feet, rounded up', () => {
  expect(bought(7200)).toEqual({ mm: '7.2\u00a0m', inch: '24\u00a0ft' }); // 7200 / 304.8 = 23.6
  expect(bought(7201).mm).toBe('7.3\u00a0m');
  expect(bought(914.4 * 8)).toEqual({ mm: '7.4\u00a0m', inch: '24\u00a0ft' }); // eight boards of 3 ft
});

/** Which names are offered while one types. */
import { describe, expect, test } from 'vitest';
import { type Offer, offersFor, openCall, ownNames, wordAt } from '../../../src/widgets/scratch/complete.ts';

const named = (name: string, meaning = '', text = name): Offer => ({ name, text, meaning });
const all = [
  named('box.wall.share.of.length', 'one wall as a share of the length'),
  named('box.wall', 'wall thickness'),
  named('box.inside.width', 'inside width'),
  named('box.bottom.width', 'width of the bottom'),
  named('wallShare', 'One wall as a share of a side', 'wallShare('),
];
const offered = (word: string) => offersFor(word, all).map(({ name }) => name);

describe('offers', () => {
  test('begin with the name that is the word, then the short ones that begin with it', () => {
    expect(offered('wall')).toEqual(['box.wall', 'wallShare', 'box.wall.share.of.length']);
  });
  test('are found by the meaning as well, and without dots', () => {
    expect(offered('thick')).toEqual(['box.wall']);
    expect(offered('boxinside')).toEqual(['box.inside.width']);
  });
  test('are none for one letter, nothing known, or a name written in full', () => {
    expect(offered('w')).toEqual([]);
    expect(offered('zzz')).toEqual([]);
    expect(offered('box.wall')).toEqual([]);
  });
});

test('the word is what ends at the caret', () => {
  expect(wordAt('2 * box.wa + 1', 10)).toEqual({ from: 4, word: 'box.wa' });
  expect(wordAt('2 * ', 4).word).toBe('');
  expect(wordAt('12 in', 2).word).toBe('');
});

test('the function that is being filled in is the innermost open one', () => {
  expect(openCall('max(wallShare(8 mm, ', 20)).toBe('wallShare');
  expect(openCall('max(wallShare(8 mm, 9 mm), ', 27)).toBe('max');
  expect(openCall('(2 + 3', 6)).toBeUndefined();
  expect(openCall('sqrt(2)', 7)).toBeUndefined();
});

test('own names are those that a cell gives', () => {
  const texts = ['gap = 2 mm; f(x) = x^2', 'gap == 3', '3 + 4'];
  expect(ownNames(texts).map(({ text }) => text)).toEqual(['gap', 'f(']);
});

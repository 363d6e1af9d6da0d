/** The least size of type on a wall. */
import { expect, test } from 'vitest';
import { readingSize } from '../../../src/widgets/wall/reading-size.ts';

test('type is 28 px high on 1024 x 768, the same share of a larger picture, and never less', () => {
  expect(readingSize(1024, 768)).toBe(28);
  expect(readingSize(1280, 720)).toBe(28);
  // 1080 lines of 768 are 1.40625 times as many: 39.4 px.
  expect(readingSize(1920, 1080)).toBe(39);
  expect(readingSize(800, 600)).toBe(28);
});

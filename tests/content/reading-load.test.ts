/** Texts are for everybody who makes a box: no more than nine years of school are needed to read them. */
import { describe, expect, test } from 'vitest';
import { loadOf, texts } from './reading-load.ts';

/** Grade of the Flesch-Kincaid formula. */
const hardest = 9;

test('the measure itself: a plain text is a low grade, a learned one a high grade', () => {
  // By hand: 0.39 x 5 words a sentence + 11.8 x 1 syllable a word - 15.59 = -1.84.
  expect(loadOf('The cat sat on mats. The dog ran to me.').grade).toBeCloseTo(-1.84, 1);
  expect(
    loadOf('Dimensional instability necessitates considerable anticipatory allowances.').grade,
  ).toBeGreaterThan(20);
});

describe.each(Object.entries(texts))('%s', (_, ofKind) => {
  test.each(Object.entries(ofKind))(`%s is read after ${hardest} years of school`, (_name, text) => {
    const { words, grade } = loadOf(text);
    expect(words).toBeGreaterThan(10);
    expect(grade).toBeLessThanOrEqual(hardest);
  });
});

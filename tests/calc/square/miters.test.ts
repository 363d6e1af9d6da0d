/** The last corner of a mitered box: against the published arithmetic of miters. */
import { describe, expect, test } from 'vitest';
import { miterGapAdded, miterGapOfLength, miterGapRandom } from '../../../src/calc/square/miters.ts';

describe('the gap at the last corner of a mitered box', () => {
  // By hand: 10 √2 sin 0.8° = 14.142 × 0.013962 = 0.1975, and so on.
  test.each([
    [10, 0.05, 0.0987],
    [10, 0.1, 0.1975],
    [10, 0.25, 0.4936],
    [6, 0.5, 0.5919],
    [12, 0.25, 0.5923],
  ])('for %f mm walls and %f° a cut is about %f mm', (t, e, expected) => {
    expect(miterGapAdded.compute({ t, e })).toBeCloseTo(expected, 3);
  });

  test('is about a third when each cut errs its own way: √8 instead of 8', () => {
    // Small angles: √8 / 8 = 0.354.
    expect(miterGapRandom.compute({ t: 10, e: 0.1 }) / miterGapAdded.compute({ t: 10, e: 0.1 })).toBeCloseTo(
      0.3536,
      3,
    );
  });
});

test('a miter opens across its face by the part of the difference that lies square to it', () => {
  // A part 0.5 mm too long, moved along itself; the face lies at 45°: 0.5 cos 45°.
  expect(miterGapOfLength.compute({ d: 0.5 })).toBeCloseTo(0.5 * Math.cos(Math.PI / 4), 12);
});

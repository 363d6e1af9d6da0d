/** What the guesses of the lesson on contents hold for true, against sums by hand. */
import { describe, expect, test } from 'vitest';
import { boxAround, bulkOf, lyings } from '../../../src/box/design/lying.ts';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['start-from-what-goes-in-it']!;
const valuesOf = (id: string, system: 'mm' | 'inch') => valuesOfGuess(guesses![id]!, model, system);
const truth = (id: string, system: 'mm' | 'inch') => guesses![id]!.truth(valuesOf(id, system), system);

describe('the guesses on contents', () => {
  // 150 + 2 · 5 + 2 · 12; 6 + 2 · 3/16 + 2 · 1/2 in.
  test('the outside is the contents, room twice and a wall twice', () => {
    expect(truth('outside-of-contents', 'mm')).toBeCloseTo(184, 9);
    expect(truth('outside-of-contents', 'inch')).toBeCloseTo(7.375 * 25.4, 9);
  });

  // 80 + 2 · 1.5 + 3 · (4 + 0.25); in inches 3 1/4 + 2/16 + 3 · 5/32, and three slips of 0.25 mm.
  test('lining counts twice, each divider once with its slip', () => {
    expect(truth('four-compartments', 'mm')).toBeCloseTo(95.75, 9);
    expect(truth('four-compartments', 'inch')).toBeCloseTo((3.25 + 0.125 + 15 / 32) * 25.4 + 0.75, 9);
  });

  // 9 + 4 + 25 + 10 + 5 + 4; 3/8 + 5/32 + 1 + 3/8 + 3/16 + 5/32 in is 2 1/4 in.
  test('the height is five terms, with the room above the contents', () => {
    expect(truth('height-of-the-stack', 'mm')).toBeCloseTo(57, 9);
    expect(truth('height-of-the-stack', 'inch')).toBeCloseTo(2.25 * 25.4, 9);
  });

  test('every way of laying has room for the set, with no more than two places empty', () => {
    for (const { places } of Object.values(lyings)) {
      const count = places[0] * places[1] * places[2];
      expect(count).toBeGreaterThanOrEqual(28);
      expect(count).toBeLessThanOrEqual(30);
    }
  });

  // Dominoes of 50 × 25 × 9, room of 3 and walls of 9 each side, 10 above and 9 + 4 + 4.5 + 3.5 of bottom and lid:
  // flat 175 + 24 by 100 + 24 by 18 + 31; on edge 150 + 24 by 90 + 24 by 25 + 31; on end 100 + 24 by 63 + 24 by 50 + 31.
  test('on end makes the smallest box, by a third against lying flat', () => {
    const values = valuesOf('how-they-lie', 'mm');
    const end = boxAround(values, 'end');
    expect(end.outsideLength).toBeCloseTo(124, 9);
    expect(end.outsideWidth).toBeCloseTo(87, 9);
    expect(end.outsideHeight).toBeCloseTo(81, 9);
    expect(bulkOf(values, 'flat')).toBeCloseTo(199 * 124 * 49, 3);
    expect(bulkOf(values, 'edge')).toBeCloseTo(174 * 114 * 56, 3);
    for (const system of ['mm', 'inch'] as const) expect(truth('how-they-lie', system)).toBe('end');
  });
});

/** A show of hands: which ranges a class is asked for, and in which the truth lies. */
import { describe, expect, test } from 'vitest';
import { inHands, nameOfRange, rangeOf, rangesOf } from '../../../src/widgets/wall/hands.ts';

const names = (kind: 'length' | 'percent', low: number, high: number, system: 'mm' | 'inch') =>
  rangesOf({ kind, low, high }, system).map((range) => nameOfRange(range, kind, system));

describe('the ranges of a show of hands', () => {
  test('have round bounds in millimeters, and a short rest goes with the last', () => {
    expect(names('length', 0, 6.4, 'mm')).toEqual([
      '0–1\u00a0mm',
      '1–2\u00a0mm',
      '2–3\u00a0mm',
      '3–4\u00a0mm',
      '4–5\u00a0mm',
      '5–6.4\u00a0mm',
    ]);
  });

  test('lie on the marks of an inch rule for inch readers', () => {
    expect(names('length', 0, 6.35, 'inch')).toEqual([
      '0–1/16\u00a0in',
      '1/16–1/8\u00a0in',
      '1/8–3/16\u00a0in',
      '3/16–1/4\u00a0in',
    ]);
  });

  test('cover the whole scale without a hole, and are never more than seven', () => {
    for (const [low, high] of [
      [0, 0.7],
      [0, 3],
      [2, 14],
      [0, 100],
      [-5, 5],
      [0, 2000],
      [0, 40_000],
    ] as const)
      for (const system of ['mm', 'inch'] as const) {
        const ranges = rangesOf({ kind: 'length', low, high }, system);
        expect(ranges.length, `${low} to ${high}`).toBeLessThanOrEqual(7);
        expect(ranges.length, `${low} to ${high}`).toBeGreaterThan(1);
        expect(ranges[0]!.from).toBe(low);
        expect(ranges.at(-1)!.to).toBe(high);
        for (const [at, { to }] of ranges.slice(0, -1).entries()) expect(ranges[at + 1]!.from).toBe(to);
      }
  });
});

test('the truth lies in one range, and beyond the scale in its last', () => {
  const ranges = rangesOf({ kind: 'percent', low: 0, high: 100 }, 'mm');
  expect(ranges.map(({ to }) => to)).toEqual([20, 40, 60, 80, 100]);
  expect(rangeOf(ranges, 0)).toBe(0);
  expect(rangeOf(ranges, 20)).toBe(1);
  expect(rangeOf(ranges, 100)).toBe(4);
  expect(rangeOf(ranges, 130)).toBe(4);
});

test('hands are said in words', () => {
  expect([0, 1, 12].map(inHands)).toEqual(['0 hands', '1 hand', '12 hands']);
});

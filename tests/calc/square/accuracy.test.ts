/** Boxes cut with errors: worst case by hand, random boxes against what statistics say of sums of even errors. */
import { describe, expect, test } from 'vitest';
import { type Cut, costliest, type Errors, randomRun, worstCase } from '../../../src/calc/square/accuracy.ts';

const mitered: Cut = { height: 60, wall: 10, mitered: true, steps: 0, lidClearance: 0.5 };
const fingered: Cut = { height: 45, wall: 9.5, mitered: false, steps: 5, lidClearance: 0.5 };
const none: Errors = { angle: 0, length: 0, step: 0 };

describe('the worst case', () => {
  test('of a mitered box adds eight angle errors and the difference of two parts', () => {
    // 10 √2 sin 0.8° = 0.1975; two parts 0.1 too long and too short differ by 0.2, and open 0.2 / √2 = 0.1414.
    expect(worstCase(mitered, { angle: 0.1, length: 0.1, step: 0 }).corner).toBeCloseTo(0.3389, 3);
  });

  test('of fingers cut apart adds every step on both parts', () => {
    // 2 parts × 5 steps × 0.03 = 0.3.
    expect(worstCase(fingered, { ...none, step: 0.03 }).corner).toBeCloseTo(0.3, 9);
  });

  test('takes two length errors off the lid clearance: the end too short, the lid too wide', () => {
    expect(worstCase(mitered, { ...none, length: 0.3 }).lid).toBeCloseTo(-0.1, 9);
  });

  test('is never passed by a random box', () => {
    for (const cut of [mitered, fingered]) {
      const errors = { angle: 0.2, length: 0.15, step: 0.05 };
      const worst = worstCase(cut, errors);
      for (const box of randomRun(cut, errors, 7).all) {
        expect(box.corner).toBeLessThanOrEqual(worst.corner + 1e-9);
        expect(box.square).toBeLessThanOrEqual(worst.square + 1e-9);
        expect(box.lid).toBeGreaterThanOrEqual(worst.lid - 1e-9);
      }
    }
  });
});

describe('a random run', () => {
  test('without errors gives perfect boxes', () => {
    expect(randomRun(mitered, none, 1).most).toEqual({ corner: 0, square: 0, lid: 0.5 });
  });

  test('gives the same boxes for the same seed, and others for another', () => {
    const errors = { angle: 0.1, length: 0.1, step: 0 };
    expect(randomRun(mitered, errors, 3)).toEqual(randomRun(mitered, errors, 3));
    expect(randomRun(mitered, errors, 3).all).not.toEqual(randomRun(mitered, errors, 4).all);
  });

  test('spreads miter gaps as a sum of eight even errors does', () => {
    // The sum of eight errors even on ±e has standard deviation e √(8/3); half of a bell curve lies within 0.6745 of it.
    const half = 10 * Math.SQRT2 * 0.6745 * 0.1 * Math.sqrt(8 / 3) * (Math.PI / 180);
    expect(randomRun(mitered, { ...none, angle: 0.1 }, 5, 20000).half.corner / half).toBeCloseTo(1, 1);
  });

  test('jams the share of lids that geometry says', () => {
    // Two even errors on ±0.5 against a clearance of 0.5, at the narrower of two ends. By integration:
    // with m the smaller of two even numbers on ±1/2 and d a third, P(m - d < -1/2) = 5/24.
    const { jams } = randomRun({ ...mitered, lidClearance: 0.5 }, { ...none, length: 0.5 }, 11, 40000);
    expect(jams).toBeCloseTo(5 / 24, 2);
  });
});

test('the costliest error is the one whose absence helps most', () => {
  const [first, ...others] = costliest(mitered, { angle: 0.5, length: 0.01, step: 0.05 }, 2);
  expect(first?.error).toBe('angle');
  for (const other of others) expect(other.saves).toBeLessThan(first!.saves);
});

/** Glue and finish: force, mass and volume. */
import { describe, expect, test } from 'vitest';
import { clampForce, clampPressure, finishVolume, glueMass } from '../../../src/calc/glue/glue.ts';

describe('clamp force', () => {
  // By hand: 76.2 mm × 9.525 mm = 725.8 mm².
  test.each([
    [0.7, 508],
    [1.0, 726],
    [1.7, 1234],
  ])('a corner 76.2 mm high in 9.525 mm walls at %d MPa needs %d N', (p, force) => {
    expect(clampForce.compute({ p, A: 76.2 * 9.525 })).toBeCloseTo(force, 0);
  });

  test('pressures are those of the guide: 100 to 150 lbf/in² for light woods, up to 300 for dense ones', () => {
    const psi = 0.00689476; // MPa, exact to six figures
    expect(clampPressure(0.37).low).toBeCloseTo(100 * psi, 2);
    expect(clampPressure(0.37).high).toBeCloseTo(150 * psi, 2);
    // Black cherry, specific gravity 0.50: 150 to 200.
    expect(clampPressure(0.5).low).toBeCloseTo(150 * psi, 2);
    expect(clampPressure(0.5).high).toBeCloseTo(200 * psi, 2);
    // White oak, 0.68; the two copies of the guide begin at 175 and at 200.
    expect(clampPressure(0.68).low).toBeCloseTo(175 * psi, 2);
    expect(clampPressure(0.68).high).toBeCloseTo(300 * psi, 2);
  });

  test('a wood without a density gets the whole range', () => {
    expect(clampPressure(Number.NaN)).toMatchObject({ low: 0.69, high: 2.07 });
  });
});

test('glue: a quarter of a square meter at 200 g/m² takes 50 g', () => {
  expect(glueMass.compute({ A: 250_000, s: 200 })).toBeCloseTo(50, 9);
});

test('finish: a liter covers one square meter at 1 mm, so ten at 0.1 mm', () => {
  expect(finishVolume.compute({ A: 10e6, w: 0.1, n: 1 })).toBeCloseTo(1e6, 6);
  expect(finishVolume.compute({ A: 1e6, w: 0.1, n: 3 })).toBeCloseTo(3e5, 6);
});

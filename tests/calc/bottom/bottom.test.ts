/** The bottom panel against thin-plate theory. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bottomSagBound,
  firstTapFrequency,
  panelSag,
  pointMobility,
  tapMotion,
  tapPitch,
} from '../../../src/calc/bottom/bottom.ts';

// Black walnut, 200 mm along the grain by 120 mm, 616 kg/m³, stiffness ratios of the Wood Handbook (2021), Tables
// 5-1 and 5-2: across the rings' faces (flat-sawn) LT, otherwise (quarter-sawn) LR.
const E_x = 12760;
const walnut = { a: 200, b: 120, rho: 616, E_x };
const flatSawn = { ...walnut, E_y: 0.056 * E_x, G: 0.062 * E_x, nu: 0.632 };
const quarterSawn = { ...walnut, E_y: 0.106 * E_x, G: 0.085 * E_x, nu: 0.495 };

describe('a walnut bottom 200 by 120 mm', () => {
  // A separate calculation of the same theory: note flat-sawn, quarter-sawn (Hz), mobility (mm/s per N), sag at 1 kPa (mm).
  test.each([
    [3, 238, 273, 34.9, 0.385],
    [4.5, 356, 410, 15.5, 0.114],
    [6, 475, 546, 8.72, 0.0481],
    [8, 633, 728, 4.91, 0.0203],
  ])('%d mm thick has its notes, mobility and sag', (h, flat, quarter, mobility, sag) => {
    expect(Math.abs(firstTapFrequency.compute({ ...flatSawn, h }) / flat - 1)).toBeLessThan(0.003);
    expect(Math.abs(firstTapFrequency.compute({ ...quarterSawn, h }) / quarter - 1)).toBeLessThan(0.003);
    expect(Math.abs(pointMobility({ ...flatSawn, h }) / mobility - 1)).toBeLessThan(0.003);
    // 1 kPa over 200 × 120 mm is 24 N.
    expect(Math.abs(panelSag({ ...flatSawn, h }, 24) / sag - 1)).toBeLessThan(0.003);
  });

  test('sags less than a strip along the grain carried at its ends', () => {
    // By hand: 5 · 0.001 · 200⁴ / (384 · 12760 · 27/12) = 0.726 mm.
    const strip = bottomSagBound.compute({ F: 24, a: 200, b: 120, E: E_x, h: 3 });
    expect(strip).toBeCloseTo(0.726, 3);
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 10, noNaN: true }),
        fc.double({ min: 60, max: 300, noNaN: true }),
        (h, b) => {
          const bound = bottomSagBound.compute({ F: 10, a: 200, b, E: E_x, h });
          expect(panelSag({ ...flatSawn, h, b }, 10)).toBeLessThan(bound);
        },
      ),
    );
  });
});

test('a plate alike both ways has the note and the sag of the textbook', () => {
  // Timoshenko and Woinowsky-Krieger, square plate: w = 0.00406 q a⁴/D; f = (π/a²) √(D/m). From memory.
  const nu = 0.3;
  const even = { a: 150, b: 150, h: 5, rho: 600, E_x: 10000, E_y: 10000, G: 10000 / 2.6, nu };
  const D = (10000 * 125) / 12 / (1 - nu ** 2);
  expect(panelSag(even, 22.5)).toBeCloseTo((0.00406 * 0.001 * 150 ** 4) / D, 4);
  // D is 114.5 N m, 3 kg/m².
  expect(firstTapFrequency.compute(even)).toBeCloseTo((Math.PI / 0.0225) * Math.sqrt(D / 1000 / 3), 6);
});

test('3 mm plywood 250 mm square sags about 0.9 mm under 2 kg with two edges held', () => {
  // By hand: 5 · 19.62 · 250³ / (32 · 250 · 8000 · 27) = 0.887. 8000 MPa for plywood is from memory.
  expect(bottomSagBound.compute({ F: 19.62, a: 250, b: 250, E: 8000, h: 3 })).toBeCloseTo(0.887, 3);
});

test('twice the thickness: an octave higher and a quarter of the motion, which is 12 decibels less', () => {
  expect(tapPitch.compute({ h: 6, h_0: 3 })).toBe(2);
  expect(tapMotion.compute({ h: 6, h_0: 3 })).toBe(25);
  expect(20 * Math.log10(tapMotion.compute({ h: 6, h_0: 3 }) / 100)).toBeCloseTo(-12.04, 2);
});

test('the two scaling rules follow from the plate itself', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 12, noNaN: true }),
      fc.double({ min: 1, max: 12, noNaN: true }),
      (h, h_0) => {
        const note = (of: number) => firstTapFrequency.compute({ ...flatSawn, h: of });
        const mobility = (of: number) => pointMobility({ ...flatSawn, h: of });
        expect(tapPitch.compute({ h, h_0 })).toBeCloseTo(note(h) / note(h_0), 9);
        expect(tapMotion.compute({ h, h_0 }) / 100 / (mobility(h) / mobility(h_0))).toBeCloseTo(1, 9);
      },
    ),
  );
});

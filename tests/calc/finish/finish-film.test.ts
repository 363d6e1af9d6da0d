/** Film and oxygen, by hand. */
import { expect, test } from 'vitest';
import {
  COAT,
  filmBuild,
  OXYGEN,
  oilHardenedByShutAir,
  playUnderFilm,
} from '../../../src/calc/finish/finish-film.ts';

test('three coats on both faces of a tongue take 0.15 to 0.2 mm of its fit', () => {
  // Common practice, no source: 0.03 mm a coat and face, 0.15 to 0.2 mm for three coats.
  const taken = filmBuild.compute({ f: 2, n: 3, h: COAT });
  expect(taken).toBeGreaterThan(0.15);
  expect(taken).toBeLessThan(0.2);
});

test('a wiping finish of 30 % solids, 0.03 mm wet, leaves 0.03 mm in three coats', () => {
  // Physics note K2: 0.009 mm a coat.
  expect(filmBuild.compute({ f: 1, n: 3, h: 0.03 * 0.3 })).toBeCloseTo(0.027, 6);
});

test('the air of half a liter holds an eighth of a gram and more of oxygen, enough for a gram or so of oil', () => {
  // Ideal gas: 0.5 L / 24.06 L/mol at 20 °C × 0.2095 × 32 g/mol = 0.139 g of oxygen.
  const oxygen = (0.5 / 24.06) * 0.2095 * 32;
  expect(oilHardenedByShutAir.compute({ V: 5e5, o: OXYGEN, s: 1 / 8 })).toBeCloseTo(oxygen * 8, 1);
});

test('1.2 mm of play less three coats of 0.03 mm on two faces leave 1.02 mm', () => {
  // 1.2 − 2 × 3 × 0.03, by hand.
  expect(playUnderFilm.compute({ p: 1.2, f: 2, n: 3, h: 0.03 })).toBeCloseTo(1.02, 12);
});

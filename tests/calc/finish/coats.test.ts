/** Coats, areas and mixes, by hand. */
import { expect, test } from 'vitest';
import {
  BRUSHED_WET,
  blendPart,
  coatsThatFit,
  dryFilm,
  LEAST_SLIP,
  outsideArea,
} from '../../../src/calc/finish/coats.ts';
import { COAT } from '../../../src/calc/finish/finish-film.ts';
import { gritStep, gritSteps, grits, WIDEST_STEP, widestStep } from '../../../src/calc/finish/grits.ts';
import { finishVolume, wetFilm } from '../../../src/calc/glue/glue.ts';

test('a wiping finish of 30 % solids, 0.03 mm wet, leaves 0.009 mm', () => {
  // Physics note K2.
  expect(dryFilm.compute({ w: 0.03, s: 0.3 })).toBeCloseTo(0.009, 9);
});

test('a brushed coat of the same solids, 0.1 mm wet, leaves the usual 0.03 mm', () => {
  expect(dryFilm.compute({ w: BRUSHED_WET, s: 0.3 })).toBeCloseTo(COAT, 9);
  expect(BRUSHED_WET).toBe(wetFilm.high);
});

test('of a slip of 0.3 mm a tongue has 0.1 mm to give: one brushed coat on both faces, and not two', () => {
  // 0.06 and 0.12 mm, by hand.
  const coats = coatsThatFit.compute({ p: 0.3, q: LEAST_SLIP, f: 2, h: 0.03 });
  expect(Math.floor(coats)).toBe(1);
});

test('a box of 200 by 100 by 50 mm has 700 cm² outside, and one liter covers 10 m² at 0.1 mm', () => {
  // 2 · (20 000 + 10 000 + 5 000) mm². Physics note K1: 1 liter covers 1 m² at 1 mm.
  expect(outsideArea.compute({ L: 200, b: 100, H: 50 })).toBe(70_000);
  expect(finishVolume.compute({ A: 10e6, w: 0.1, n: 1 })).toBeCloseTo(1e6, 3);
});

test('60 ml mixed 2 : 1 is 40 and 20, and the parts always make the whole', () => {
  expect(blendPart.compute({ V: 60, a: 2, P: 3 })).toBeCloseTo(40, 9);
  expect(blendPart.compute({ V: 60, a: 1, P: 3 })).toBeCloseTo(20, 9);
});

test('thinned 1 : 1 a coat leaves half as much, so twice as many coats make the film', () => {
  expect(dryFilm.compute({ w: 0.1, s: 0.3 / 2 })).toBeCloseTo(COAT / 2, 9);
});

test('leaving out one grit up to 220 is a step of one and a half at most, leaving out two is 1.8 and more', () => {
  const to220 = grits.filter((grit) => grit <= 220);
  const left = (out: number) =>
    to220.slice(out + 1).map((next, at) => gritStep.compute({ G_1: to220[at]!, G_2: next }));
  // 80 to 120, 100 to 150 and 120 to 180 are 1.5 each, 150 to 220 is 1.47; 100 to 180 is 1.8.
  expect(Math.max(...left(1))).toBe(WIDEST_STEP);
  expect(Math.min(...left(2))).toBeCloseTo(1.8, 9);
  expect(widestStep(to220)).toBe(1.25);
});

test('from 80 to 220 takes three steps, by 120 and 180', () => {
  // 80 · 1.5³ = 270 is past 220, 80 · 1.5² = 180 is not.
  expect(Math.ceil(gritSteps.compute({ g: 80, G: 220, r: WIDEST_STEP }))).toBe(3);
  expect(gritSteps.compute({ g: 80, G: 180, r: WIDEST_STEP })).toBeCloseTo(2, 9);
});

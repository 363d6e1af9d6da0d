/** What is true in the guesses on finishes, by other ways than the program’s own. */
import { describe, expect, test } from 'vitest';
import { exampleFor } from '../../../src/box/subjects/example.ts';
import { finish } from '../../../src/box/subjects/finish/subject.ts';
import { varnishedYear } from '../../../src/box/subjects/finish/varnished-year.ts';
import { compute, modelOf } from '../../../src/box/subjects/model.ts';
import { moistureCourse } from '../../../src/calc/air/diffusion.ts';
import { isRefused, type Refused } from '../../../src/calc/core/refusal.ts';
import { bowsOf, mostBowed } from '../../../src/figures/finish/LidBows.tsx';
import { type NumberGuess, valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';
import { whatAFinishDoesGuesses as guesses } from '../../../src/widgets/subjects/finish/what-a-finish-does-guesses.tsx';

const model = modelOf(finish);
const known = <T>(found: T | Refused): T => {
  if (isRefused(found)) throw new Error(found.refused);
  return found;
};
/** Cherry: Siau's table gives about 2.9e-11 m²/s near 9 % and specific gravity 0.5, here 3.4e-11. mm²/day. */
const cherry = 3.4 * 0.864;
/** Air film 1e-7 m/s, and behind it three coats: 1.93 day/mm, fitted to 90, 64 and 44 %. mm/day. */
const [airFilm, varnished] = [8.64, 1 / (1 / 8.64 + 1.93)];

test('three coats of urethane varnish kept out 44 % after two weeks, as Feist and others published', () => {
  const spec = guesses['kept-out'] as NumberGuess;
  expect(spec.truth(valuesOfGuess(spec, model, 'mm'), 'mm')).toBe(44);
  expect(spec.start(valuesOfGuess(spec, model, 'mm'))).toBe(90);
});

describe('the year behind varnish', () => {
  const spec = guesses['year-behind-varnish'] as NumberGuess;
  const v = valuesOfGuess(spec, model, 'mm');

  test('leaves what adding two resistances gives: 100/√(1 + (π 6/365 (1/S + 6/6D))²)', () => {
    const kept = (S: number) => 1 / Math.hypot(1, ((Math.PI * 6) / 365) * (1 / S + 1 / cherry));
    expect(spec.truth(v, 'mm')).toBeCloseTo((100 * kept(varnished)) / kept(airFilm), 0);
    expect(spec.truth(v, 'mm')).toBeGreaterThan(98);
  });

  test('swings as the solver that steps through the days says, in the second year', () => {
    const wave = (day: number) => 8.6 - 2.4 * Math.cos((2 * Math.PI * day) / 365);
    const swing = (surface: number) => {
      const face = { surface, moisture: wave };
      const { mean } = known(
        moistureCourse({ thickness: 6, diffusion: cherry, front: face, back: face }, 8, 730),
      );
      const year = mean.slice(365);
      return Math.max(...year) - Math.min(...year);
    };
    expect(spec.truth(v, 'mm')).toBeCloseTo((100 * swing(varnished)) / swing(airFilm), 0);
    // 102.8 mm of flat-sawn cherry at 0.00248 a point, from 6.19 to 11.0 %.
    expect(known(varnishedYear(v)).bareSwing).toBeCloseTo(102.8 * 0.00248 * (11.0 - 6.19), 2);
  });

  test('comes later by the resistance of the film times the thickness of one half: 1.93 × 3 days', () => {
    expect(known(varnishedYear(v)).later).toBeCloseTo(1.93 * 3, 0);
  });

  test('is less in a thicker lid', () => {
    const thick = valuesOfGuess(spec, model, 'mm', { lidThickness: 15 });
    expect(spec.truth(thick, 'mm')).toBeLessThan(spec.truth(v, 'mm') - 1);
  });
});

describe('the lid that bows most', () => {
  const v = compute(model.results, exampleFor('mm'));
  const bows = bowsOf(v);

  test('is the bare one on a shut box; one film on its outside takes most of that away', () => {
    expect(mostBowed(v)).toBe('shutBare');
    expect(Math.abs(bows.shutOuter!)).toBeLessThan(0.4 * Math.abs(bows.shutBare!));
  });

  test('crowns where its outer face is damper, and goes hollow where that face is held back', () => {
    expect(bows.shutBare).toBeGreaterThan(0);
    expect(bows.shutOuter).toBeGreaterThan(0);
    expect(bows.outer).toBeLessThan(0);
  });

  test('stays flat with both faces alike', () => {
    expect(bows.both).toBeCloseTo(0, 6);
  });

  test('bows less than a lid with one face at once at the end of its way: C ΔM w²/8T', () => {
    // 102.8 mm of flat-sawn cherry, 4.5 mm thick, from 8.485 to 11.0 %.
    const most = (0.00248 * (11.0 - 8.485) * 102.8 ** 2) / (8 * 4.5);
    for (const bow of Object.values(bows)) expect(Math.abs(bow)).toBeLessThan(most);
    // Air that turns at once reaches the outer face long before the inner one.
    expect(bows.shutBare).toBeGreaterThan(0.5 * most);
  });
});

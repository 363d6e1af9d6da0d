/** What is true in the guesses on a year of a panel, by other ways than the program’s own. */
import { describe, expect, test } from 'vitest';
import { modelOf } from '../../../src/box/subjects/model.ts';
import { heatedHouse, heatedLife, heatedYear } from '../../../src/box/subjects/movement/heated-year.ts';
import { movement } from '../../../src/box/subjects/movement/subject.ts';
import { moistureCourse } from '../../../src/calc/air/diffusion.ts';
import { SHUT_INSIDE } from '../../../src/calc/air/slab.ts';
import { moistureThrough } from '../../../src/calc/air/year.ts';
import { isRefused, type Refused } from '../../../src/calc/core/refusal.ts';
import { fittings, tightest } from '../../../src/figures/movement/FittedWhen.tsx';
import { type NumberGuess, valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';
import { aYearOfAPanelGuesses as guesses } from '../../../src/widgets/subjects/movement/a-year-of-a-panel-guesses.tsx';

const model = modelOf(movement);
const known = <T>(found: T | Refused): T => {
  if (isRefused(found)) throw new Error(found.refused);
  return found;
};
/** Cherry: Siau's table gives about 3.4e-11 m²/s at specific gravity 0.5 and 8 %. mm²/day, and the air film in mm/day. */
const [cherry, airFilm] = [3.3 * 0.864, 8.64];
const air = known(moistureThrough(heatedHouse));

/** The second year of the bottom of a shut box, by the solver that steps through the days. */
function stepped(thickness: number): Float64Array {
  const face = { surface: airFilm, moisture: (day: number) => air(day % 365) };
  const slab = { thickness, diffusion: cherry, front: face, back: SHUT_INSIDE };
  return known(moistureCourse(slab, 8, 730)).mean.slice(365);
}

describe('behind the air', () => {
  const spec = guesses['behind-the-air'] as NumberGuess;
  const v = valuesOfGuess(spec, model, 'mm');

  test('the bottom comes by the delay of its film and that of its wood: T/S + T²/3D', () => {
    // A slow wave comes late by the time its resistances take to fill what lies behind them.
    const late = 6 / airFilm + 36 / (3 * cherry);
    expect(Math.abs(spec.truth(v, 'mm') - late)).toBeLessThan(0.3);
  });

  test('it is dampest within days of where the other solver has its peak', () => {
    const year = stepped(6);
    const peak = year.indexOf(Math.max(...year));
    expect(Math.abs(known(heatedYear(v, 'bottom')).dampestDay - peak)).toBeLessThanOrEqual(3);
  });

  test('twice the thickness comes nearly four times as late, for most of the delay is in the wood', () => {
    const thick = valuesOfGuess(spec, model, 'mm', { bottomThickness: 12 });
    expect(spec.truth(thick, 'mm') / spec.truth(v, 'mm')).toBeGreaterThan(3);
    expect(spec.truth(thick, 'mm') / spec.truth(v, 'mm')).toBeLessThan(4);
  });
});

describe('grown by August', () => {
  const spec = guesses['grown-by-august'] as NumberGuess;
  const v = valuesOfGuess(spec, model, 'mm');

  test('the bottom gains width times 0.00248 times the points that the other solver finds', () => {
    const year = stepped(6);
    // A box 96 mm wide inside with grooves 4 mm deep and 0.4 mm of gap at each side.
    const points = Math.max(...year) - year[45]!;
    expect(spec.truth(v, 'mm')).toBeCloseTo(v.bottomWidth * 0.00248 * points, 1);
    expect(points).toBeGreaterThan(3.8);
  });

  test('it jams with 0.8 mm of play, which that growth is more than, and not with 1.2', () => {
    expect(known(heatedLife(v, 'bottom', 45)).jams).toBeGreaterThan(60);
    const wider = valuesOfGuess(spec, model, 'mm', { bottomGap: 0.6 });
    expect(known(heatedLife(wider, 'bottom', 45)).jams).toBeUndefined();
  });
});

describe('fitted when', () => {
  const spec = guesses['fitted-when']!;
  const v = valuesOfGuess(spec, model, 'mm');
  const lid = stepped(v.lidThickness);
  /** Growth still to come from a day on, mm, by the other solver. */
  const ahead = (day: number) => v.lidWidth * 0.00248 * (Math.max(...lid) - lid[day]!);

  test.each(Object.entries(fittings))('the lid of %s grows what the other solver says', (_, day) => {
    expect(known(heatedLife(v, 'lid', day)).grows).toBeCloseTo(ahead(day), 1);
  });

  test('with 0.8 mm of play only the one fitted in February has too little', () => {
    expect(Object.values(fittings).map((day) => ahead(day) > 0.8)).toEqual([true, false, false]);
    expect(tightest(v)).toBe('february');
  });

  test('with play for the whole year none jams', () => {
    expect(tightest(valuesOfGuess(spec, model, 'mm', { lidPlay: 1.5 }))).toBe('');
  });
});

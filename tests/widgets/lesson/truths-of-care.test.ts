/** What the guesses of the lesson on the years after hold for true, against arithmetic by hand. */
import { describe, expect, test } from 'vitest';
import { planedTo, playsOf } from '../../../src/figures/movement/PlanedPick.tsx';
import { extremesAfter } from '../../../src/figures/movement/TenYears.tsx';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['ten-years']!;
const valuesOf = (id: string, system: 'mm' | 'inch' = 'mm') => valuesOfGuess(guesses![id]!, model, system);
const truth = (id: string, system: 'mm' | 'inch' = 'mm') => guesses![id]!.truth(valuesOf(id, system), system);

/** Cherry along and across the rings, commercial red oak along them: Wood Handbook, Table 13-5. */
const cherry = { along: 0.00248, across: 0.00126 };
const oak = 0.00369;

/** At 30, 45 and 60 % wood holds 6.2, 8.5 and 11.0 % (Table 4-2, 21.1 °C); at 42 %, between 40 and 45, about 8.0. */
describe.each(['mm', 'inch'] as const)('the guesses on the years after, for a reader in %s', (system) => {
  test('a lid without play at 60 % gets back what it shrinks down to 42 %: about 3 points of its width', () => {
    const { lidWidth } = valuesOf('dried-first', system);
    expect(truth('dried-first', system)).toBeCloseTo(lidWidth * cherry.along * 3, 1);
  });

  test('of three lids planed to one play, the one planed in between neither jams nor is the loosest', () => {
    expect(truth('planed-when', system)).toBe('between');
    const v = valuesOf('planed-when', system);
    const grows = (points: number) => v.lidWidth * cherry.along * points;
    expect(planedTo(v)).toBeCloseTo(grows(11.0 - 8.5) + 0.3, 1);
    expect(playsOf(v, 'driest').damp).toBeCloseTo(planedTo(v) - grows(11.0 - 6.2), 1);
    expect(playsOf(v, 'driest').damp).toBeLessThan(0);
    expect(playsOf(v, 'dampest').dry).toBeCloseTo(planedTo(v) + grows(11.0 - 6.2), 1);
    expect(playsOf(v, 'between').damp).toBeCloseTo(0.3, 1);
  });

  test('a lid in a groove of 6 mm, or 1/4 in, moves 0.03 mm in its thickness, across the rings', () => {
    const slot = system === 'mm' ? 6 : 6.35;
    expect(truth('thickness-year', system)).toBeCloseTo((slot - 0.3) * cherry.across * (11.0 - 6.2), 2);
  });

  test('a bottom of red oak 200 mm wide shrinks by 3.7 mm from 11 to 6 %, and drops out once crept', () => {
    const v = valuesOf('bottom-moved', system);
    expect(v.bottomWidth).toBeGreaterThan(198);
    expect(truth('bottom-moved', system)).toBeCloseTo(v.bottomWidth * oak * (11 - 6), 1);
    expect(v.bottomEngagementCrept).toBeLessThan(0);
    expect(v.bottomEngagement).toBeGreaterThan(1.5);
  });
});

test('planed in its dampest week, a lid has the growth of the year more play from then on', () => {
  const v = valuesOf('planed-when');
  const [left, planed] = [extremesAfter(v, 'nothing'), extremesAfter(v, 'planed')];
  expect(planed.least - left.least).toBeCloseTo(v.lidWidth * cherry.along * (11.0 - 8.5), 1);
  expect(planed.most - left.most).toBeCloseTo(planed.least - left.least, 9);
  expect(extremesAfter(v, 'damper').least).toBeLessThan(left.least);
});

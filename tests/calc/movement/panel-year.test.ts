/** A panel through the year: worked rules of the trade, the relations of panel.ts, and itself from another side. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isRefused, type Refused } from '../../../src/calc/core/refusal.ts';
import { buildSeason, fromDay, stretches } from '../../../src/calc/movement/build-season.ts';
import { gluedOn } from '../../../src/calc/movement/glued-on.ts';
import { type PanelCourse, type PanelSetup, panelCourse } from '../../../src/calc/movement/panel-year.ts';
import { fitPanel } from '../../reference/panel-fit.ts';

const known = <T>(answer: T | Refused): T => {
  if (isRefused(answer)) throw new Error(answer.refused);
  return answer;
};
/** Wood Handbook Tables 13-5 and 4-3, tangential: black cherry and black walnut. */
const cherry = { coefficient: 0.00248, shrinkage: 7.1 };
const walnut = { coefficient: 0.00274, shrinkage: 7.8 };
const year = (mean: number, half: number, peak = 210) =>
  Float64Array.from({ length: 366 }, (_, day) => mean + half * Math.cos((2 * Math.PI * (day - peak)) / 365));
const lid: PanelSetup = { width: 150, figures: cherry, play: 1.616, groove: 4.2, allowance: 0.5 };

test('flat-sawn cherry 150 mm wide, 3 points up and 2 down, wants 0.8 mm a side and 4.2 mm of groove', () => {
  // Trade brief R39: gap a side 0.8, groove 4.2 for 3 mm at the driest; crept it keeps 1.8 mm.
  const course = known(panelCourse(lid, [9, 12, 9, 7]));
  expect(course.playToLeave / 2).toBeCloseTo(0.8, 1);
  expect(course.central[3]).toBeCloseTo(3, 1);
  expect(course.crept[3]).toBeCloseTo(1.8, 1);
  expect(course.play[1]).toBeCloseTo(0.5, 2);
  expect([course.jams, course.dropsCentral, course.dropsCrept]).toEqual([undefined, undefined, undefined]);
});

test('an eighth of an inch per foot is cherry over 4.2 points and red oak over 2.8', () => {
  // Trade brief C1; coefficients 0.00248 and 0.00369.
  const foot = { ...lid, width: 304.8, play: 5, groove: 10, allowance: 0 };
  expect(known(panelCourse(foot, [8, 12.2])).playToLeave).toBeCloseTo(25.4 / 8, 2);
  const oak = { ...foot, figures: { coefficient: 0.00369 } };
  expect(known(panelCourse(oak, [8, 10.8])).playToLeave).toBeCloseTo(25.4 / 8, 1);
});

test('flat-sawn walnut 100 mm wide, 4 points up, is jammed by 1.09 mm of play and freed by 1.10', () => {
  // Physics note C1 and H3: 100 × 0.00274 × 4 = 1.10 mm.
  const tight = { width: 100, figures: walnut, play: 1.09, groove: 5 };
  expect(known(panelCourse(tight, [8, 10, 12])).jams).toBe(2);
  expect(known(panelCourse({ ...tight, play: 1.1 }, [8, 10, 12])).jams).toBeUndefined();
});

test('the earliest days are found: jammed while swelling, dropped out while shrinking', () => {
  const setup = { width: 150, figures: cherry, play: 0.5, groove: 1.2, hold: 0.2 };
  // Growth per point 0.372 mm: play 0 at 1.34 points up; crept 0.2 left at 1.34 points down; central at 4.03 down.
  const course = known(panelCourse(setup, [10, 11, 11.4, 10, 9, 8.7, 8.6, 6]));
  expect(course.jams).toBe(2);
  expect(course.dropsCrept).toBe(6);
  expect(course.dropsCentral).toBeUndefined();
  expect(course.central[2]).toBe(1.2);
  // With 1 mm of play the central panel keeps less than 0.2 mm once it has lost 1 mm: 2.69 points.
  const drier = known(panelCourse({ ...setup, play: 1 }, [11, 10, 8.4, 8.3, 6]));
  expect(drier.dropsCentral).toBe(3);
});

const anyYear = fc.record({
  mean: fc.double({ min: 8, max: 12, noNaN: true }),
  half: fc.double({ min: 0.1, max: 2, noNaN: true }),
  peak: fc.integer({ min: 0, max: 364 }),
  built: fc.integer({ min: 0, max: 364 }),
});

describe('over any year', () => {
  test('the extremes are those of the panel fit worked out from driest and dampest alone', () => {
    fc.assert(
      fc.property(anyYear, ({ mean, half, peak, built }) => {
        const moisture = fromDay(year(mean, half, peak), built);
        const [driest, dampest] = [Math.min(...moisture), Math.max(...moisture)];
        const fit = known(
          fitPanel({
            opening: 140,
            grooveDepth: 6,
            figures: cherry,
            today: moisture[0]!,
            driest,
            dampest,
            allowance: 0.3,
          }),
        );
        const setup = { width: fit.width, figures: cherry, play: fit.playToday, groove: 6, allowance: 0.3 };
        const course = known(panelCourse(setup, moisture));
        expect(course.playToLeave).toBeCloseTo(fit.playToday, 9);
        expect(Math.min(...course.play)).toBeCloseTo(0.3, 9);
        expect(Math.min(...course.central)).toBeCloseTo(fit.engagementCentral, 9);
        expect(Math.min(...course.crept)).toBeCloseTo(fit.engagementCrept, 9);
      }),
    );
  });

  test('the play to leave never jams, and a tenth of a millimeter less does', () => {
    fc.assert(
      fc.property(anyYear, ({ mean, half, peak, built }) => {
        const moisture = fromDay(year(mean, half, peak), built);
        const bare = { ...lid, groove: 20, allowance: 0 };
        const enough = known(panelCourse(bare, moisture)).playToLeave;
        expect(known(panelCourse({ ...bare, play: enough }, moisture)).jams).toBeUndefined();
        if (enough > 0.1)
          expect(known(panelCourse({ ...bare, play: enough - 0.1 }, moisture)).jams).toBeDefined();
      }),
    );
  });

  test('the season compares days as building on each of them would', () => {
    fc.assert(
      fc.property(
        anyYear,
        fc.double({ min: 0, max: 2, noNaN: true }),
        ({ mean, half, peak, built }, play) => {
          const setup = { ...lid, play, groove: 3, hold: 1, allowance: 0 };
          const moisture = year(mean, half, peak);
          const season = known(buildSeason(setup, moisture));
          const life: PanelCourse = known(panelCourse(setup, fromDay(moisture, built)));
          expect(season.playToLeave[built]).toBeCloseTo(life.playToLeave, 9);
          expect(season.creptAtDriest[built]).toBeCloseTo(
            Math.min(3 - life.play.reduce((a, b) => Math.max(a, b)), 3),
            9,
          );
          const inside = season.safe.some(({ from, to }) =>
            from <= to ? built >= from && built <= to : built >= from || built <= to,
          );
          expect(inside).toBe(life.jams === undefined && life.dropsCrept === undefined);
        },
      ),
    );
  });
});

test('built in the dampest week it needs no gap, in the driest the whole swing', () => {
  const season = known(buildSeason({ ...lid, allowance: 0 }, year(9, 2)));
  expect(season.leastDay).toBe(210);
  expect(season.playToLeave[210]).toBeCloseTo(0, 6);
  // Half a year from day 210, within the flat bottom of the wave: 4 points of 150 × 0.00248.
  expect(Math.abs(season.mostDay - 27)).toBeLessThanOrEqual(1);
  expect(season.playToLeave[season.mostDay]).toBeCloseTo(150 * 0.00248 * 4, 3);
});

test('stretches of days run over New Year', () => {
  const holds = Array.from({ length: 365 }, (_, day) => day < 20 || day > 300);
  expect(stretches(holds)).toEqual([{ from: 301, to: 19 }]);
  expect(stretches(holds.map((yes) => !yes))).toEqual([{ from: 20, to: 300 }]);
  expect(stretches(Array(365).fill(true))).toEqual([{ from: 0, to: 364 }]);
  expect(stretches(Array(365).fill(false))).toEqual([]);
});

test('one method serves a year that strays beyond 14 %: the curve has no step there', () => {
  const moisture = Float64Array.from({ length: 101 }, (_, i) => 10 + i * 0.08);
  const course = known(panelCourse({ ...lid, play: 5, groove: 20 }, moisture));
  expect(course.method).toBe('shrinkage');
  const steps = Array.from(course.play.subarray(1), (play, i) => course.play[i]! - play);
  expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(1e-9);
});

describe('glued on across the grain', () => {
  test('a 100 mm cap on flat-sawn walnut over 4 points wants to differ by 1.07 to 1.08 mm', () => {
    // 100 × 0.00274 × 4 = 1.096 less 100 × 0.1 to 0.2 % × 4/30 = 0.013 to 0.027 mm along the grain.
    const found = known(gluedOn(100, walnut, 8, 12));
    expect(found.panel).toBeCloseTo(1.096, 6);
    expect(found.difference.low).toBeCloseTo(1.096 - 0.0267, 4);
    expect(found.difference.high).toBeCloseTo(1.096 - 0.0133, 4);
    expect(found.eachEnd.high).toBeCloseTo(found.difference.high / 2, 9);
  });

  test('the difference is as long as the joint is: a 20 mm pull has a fifth of it', () => {
    const [long, short] = [known(gluedOn(100, walnut, 12, 8)), known(gluedOn(20, walnut, 12, 8))];
    expect(long.panel).toBeLessThan(0);
    expect(long.difference.high / short.difference.high).toBeCloseTo(5, 9);
  });
});

test.each<[string, Partial<PanelSetup>, number[], RegExp]>([
  ['no width', { width: 0 }, [8, 9], /width is 0 mm/],
  ['no groove', { groove: 0 }, [8, 9], /groove depth is 0 mm/],
  ['play below nothing', { play: -1 }, [8, 9], /play is -1 mm/],
  ['wood above fiber saturation', {}, [8, 35], /30 %/],
  ['moisture that is no number', {}, [8, Number.NaN], /numbers/],
  ['no moisture at all', {}, [], /numbers/],
  [
    'a coefficient beyond its range and no shrinkage',
    { figures: { coefficient: 0.002 } },
    [8, 18],
    /6 to 14 %/,
  ],
])('%s is refused', (_, part, moisture, sentence) => {
  expect(panelCourse({ ...lid, ...part }, moisture)).toEqual({ refused: expect.stringMatching(sentence) });
});

test('a season needs a whole year, and a glued joint a length', () => {
  expect(isRefused(buildSeason(lid, new Float64Array(100)))).toBe(true);
  expect(isRefused(gluedOn(0, walnut, 8, 9))).toBe(true);
  expect(isRefused(gluedOn(50, walnut, 8, 40))).toBe(true);
});

/** Panels and sliding lids: the trade's worked figures, the identities of the fit, and when 1/16 in off is enough. (Over 150 lines: the manual of the fit.) */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { woodById } from '../../../src/box/wood/woods.ts';
import { equilibriumMoisture } from '../../../src/calc/air/moisture.ts';
import { type Movement, movement, widthFigures } from '../../../src/calc/movement/movement.ts';
import {
  engagementCentral,
  engagementCrept,
  gapPerSide,
  grooveDepthCentral,
  grooveDepthCrept,
  panelPractice,
  playAtDriest,
  playToday,
  widestForAllowance,
  widthToCut,
} from '../../../src/calc/movement/panel.ts';
import { fitPanel, type PanelFit } from '../../reference/panel-fit.ts';

const cherry = { flatSawn: 0.00248, quarterSawn: 0.00126 };
const inch = 25.4;
const walnut = widthFigures(woodById('black-walnut')!, 0);

describe('a bottom of flat-sawn cherry, 150 mm wide, air that lifts it 3 points and drops it 2 (common practice, no source)', () => {
  const panel = { W: 150, C: cherry.flatSawn };
  const c = 2 * panelPractice.panelAllowancePerSide;
  const p = playToday.compute({ ...panel, u: 3, c });

  test('wants a gap of 0.8 mm at each side', () => {
    expect(gapPerSide.compute({ ...panel, u: 3, c })).toBeCloseTo(0.8, 1);
    expect(p).toBeCloseTo(2 * gapPerSide.compute({ ...panel, u: 3, c }), 12);
  });

  test('wants a groove of 4.2 mm when it is held central', () => {
    expect(grooveDepthCentral.compute({ ...panel, p, f: 2, E_d: panelPractice.panelEngagement })).toBeCloseTo(
      4.2,
      1,
    );
  });

  test('keeps 1.8 mm in that groove at its worse side when it creeps, which is above the 1.5 mm asked for', () => {
    const left = engagementCrept.compute({ ...panel, g: 4.2, p, f: 2 });
    expect(left).toBeCloseTo(1.8, 1);
    expect(left).toBeGreaterThan(panelPractice.panelEngagementCrept);
  });
});

describe('a sliding lid 100 mm wide, made in 45 % air and seeing 65 % (common practice, no source)', () => {
  const c = panelPractice.lidAllowance;

  test.each([
    ['quarter-sawn cherry', cherry.quarterSawn, 0.75],
    ['flat-sawn cherry', cherry.flatSawn, 1.2],
    ['flat-sawn hard maple', 0.00353, 1.5],
  ])('of %s (%d per point) is cut with %d mm of play', (_, C, expected) => {
    expect(Math.abs(playToday.compute({ W: 100, C, u: 3.5, c }) - expected)).toBeLessThan(0.05);
  });

  test('the rise of 3.5 points is what the air table gives from 45 to 65 % at 21.1 °C (Table 4-2: 8.5 and 12.0)', () => {
    expect(equilibriumMoisture(21.1, 65) - equilibriumMoisture(21.1, 45)).toBeCloseTo(3.5, 1);
  });

  test.each([
    ['quarter-sawn cherry', cherry.quarterSawn, 3.0],
    ['flat-sawn cherry', cherry.flatSawn, 3.8],
  ])(
    'of %s (%d per point) wants grooves of about %d mm when the year runs from 30 to 65 %% humidity',
    (_, C, expected) => {
      // 5.8 points from 30 to 65 % (Table 4-2: 6.2 and 12.0).
      const [u, f] = [3.5, 2.3];
      const p = playToday.compute({ W: 100, C, u, c });
      const depth = grooveDepthCrept.compute({ W: 100, C, p, f, E_d: panelPractice.lidEngagement });
      expect(Math.abs(depth - expected)).toBeLessThan(0.1);
    },
  );
});

const settings = fc.record({
  B: fc.double({ min: 30, max: 600, noNaN: true }),
  C: fc.double({ min: 0.0005, max: 0.006, noNaN: true }),
  u: fc.double({ min: 0, max: 8, noNaN: true }),
  f: fc.double({ min: 0, max: 8, noNaN: true }),
  c: fc.double({ min: 0, max: 2, noNaN: true }),
  g: fc.double({ min: 1, max: 20, noNaN: true }),
});

test('a panel cut to width has swollen to the groove bottoms less the allowance on the dampest day, whatever the numbers', () => {
  fc.assert(
    fc.property(settings, ({ B, C, u, c }) => {
      const W = widthToCut.compute({ B, C, u, c });
      expect(W * (1 + C * u)).toBeCloseTo(B - c, 8);
      expect(B - W).toBeCloseTo(playToday.compute({ W, C, u, c }), 8);
    }),
  );
});

test('the deepest a crept panel goes in at one side and the least at the other add up to twice the central engagement', () => {
  fc.assert(
    fc.property(settings, ({ B, C, u, f, c, g }) => {
      const W = widthToCut.compute({ B, C, u, c });
      const dry = { W, C, f, p: playToday.compute({ W, C, u, c }) };
      // Crept, one edge touches the groove bottom, so it is g deep there.
      expect(engagementCrept.compute({ ...dry, g }) + g).toBeCloseTo(
        2 * engagementCentral.compute({ ...dry, g }),
        8,
      );
      const E_d = 2;
      expect(
        engagementCentral.compute({ ...dry, g: grooveDepthCentral.compute({ ...dry, E_d }) }),
      ).toBeCloseTo(E_d, 8);
      expect(engagementCrept.compute({ ...dry, g: grooveDepthCrept.compute({ ...dry, E_d }) })).toBeCloseTo(
        E_d,
        8,
      );
    }),
  );
});

describe('the fit over a year', () => {
  const setting = {
    opening: 120,
    grooveDepth: 5,
    figures: walnut,
    today: 8,
    driest: 6,
    dampest: 10,
    allowance: 0.5,
  };
  const fit = fitPanel(setting) as PanelFit;

  test('agrees with the relations and with plain widths of the panel at three moistures', () => {
    const at = (moisture: number) =>
      fit.width + (movement(fit.width, 8, moisture, walnut) as Movement).change;
    expect(at(10)).toBeCloseTo(120 + 10 - 0.5, 9);
    expect(fit.playToday).toBeCloseTo(130 - fit.width, 9);
    expect(fit.gapPerSide).toBeCloseTo(fit.playToday / 2, 12);
    expect(fit.playAtDriest).toBeCloseTo(130 - at(6), 9);
    expect(fit.engagementCentral).toBeCloseTo((at(6) - 120) / 2, 9);
    expect(fit.engagementCrept).toBeCloseTo(at(6) - 120 - 5, 9);
    expect(fit.up.method).toBe('coefficient');
    expect(fit.up.change).toBeCloseTo(fit.swelling, 12);
    expect(fit.down.change).toBeCloseTo(-fit.shrinking, 12);
    const dry = { W: fit.width, C: fit.coefficientDown, f: fit.fall, p: fit.playToday };
    expect(playAtDriest.compute(dry)).toBeCloseTo(fit.playAtDriest, 12);
  });

  test('uses the shrinkage method for the half year that leaves 6 to 14 %, and still fits', () => {
    const dry = fitPanel({ ...setting, driest: 4 }) as PanelFit;
    expect([dry.up.method, dry.down.method]).toEqual(['coefficient', 'shrinkage']);
    const shrunk = (movement(dry.width, 8, 4, walnut) as Movement).change;
    expect(dry.shrinking).toBeCloseTo(-shrunk, 9);
  });

  test('counts air that is never damper than today as no rise', () => {
    const damp = fitPanel({ ...setting, today: 12 }) as PanelFit;
    expect([damp.rise, damp.swelling, damp.coefficientUp]).toEqual([0, 0, 0]);
    expect(damp.width).toBeCloseTo(129.5, 12);
  });

  test.each([
    ['an opening of nothing', { opening: 0 }],
    ['a groove of no depth', { grooveDepth: 0 }],
    ['an allowance wider than the box', { allowance: 200 }],
    ['a size that is no number', { opening: Number.NaN }],
    ['air that brings the wood above fiber saturation', { dampest: 31 }],
    ['a moisture that is no number', { today: Number.NaN }],
    ['a wood without figures', { figures: {} }],
  ])('refuses %s', (_, changed) => {
    expect(fitPanel({ ...setting, ...changed })).toEqual({ refused: expect.any(String) });
  });
});

describe('taking about 1/16 in off the width (common practice, no source)', () => {
  const taken = inch / 16;
  const five = { D: 5 * inch, C: walnut.coefficient! };

  test('suffices for a 5 in wide flat-sawn black walnut panel cut at 6 % that swells to 10 %, the range of pieces in most of the United States', () => {
    // The swing: Wood Handbook Table 13-2, from memory. Growth 127 · 0.00274 · 4 = 1.39 mm, less than 1.59 mm.
    expect((movement(five.D, 6, 10, walnut) as Movement).change).toBeCloseTo(1.39, 2);
    expect(widestForAllowance.compute({ T: taken, C: five.C, u: 4, c: 0 })).toBeGreaterThan(five.D);
  });

  test('suffices with 1/4 mm still free at each side for a swing of 3 points, as from 7 to 10 %', () => {
    expect(playToday.compute({ W: five.D, C: five.C, u: 3, c: 0.5 })).toBeLessThan(taken);
    expect(widestForAllowance.compute({ T: taken, C: five.C, u: 3, c: 0.5 })).toBeGreaterThan(five.D);
  });

  test.each([
    // wood, rings to the face, swing in points, free at the dampest in all
    ['a wider panel, 8 in of the same walnut over 4 points', 'black-walnut', 0, 8, 4, 0],
    ['a wilder wood, 5 in of flat-sawn beech over 4 points', 'american-beech', 0, 5, 4, 0],
    ['a wider swing, 5 in of walnut from 6 to 11 %', 'black-walnut', 0, 5, 5, 0],
    ['play asked for, 5 in of walnut over 4 points with 1/2 mm free', 'black-walnut', 0, 5, 4, 0.5],
  ])('no longer suffices for %s', (_, id, angle, width, rise, free) => {
    const { coefficient } = widthFigures(woodById(id)!, angle);
    expect(widestForAllowance.compute({ T: taken, C: coefficient!, u: rise, c: free })).toBeLessThan(
      width * inch,
    );
  });

  test('suffices again when the wider panel is quarter-sawn cherry', () => {
    const { coefficient } = widthFigures(woodById('black-cherry')!, 90);
    expect(widestForAllowance.compute({ T: taken, C: coefficient!, u: 4, c: 0 })).toBeGreaterThan(8 * inch);
  });

  test('the widest panel is the one whose play today is just what was taken off', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.6, max: 6, noNaN: true }),
        fc.double({ min: 0.0005, max: 0.006, noNaN: true }),
        fc.double({ min: 0.1, max: 8, noNaN: true }),
        (T, C, u) => {
          const W = widestForAllowance.compute({ T, C, u, c: 0.5 });
          expect(playToday.compute({ W, C, u, c: 0.5 })).toBeCloseTo(T, 9);
        },
      ),
    );
  });
});

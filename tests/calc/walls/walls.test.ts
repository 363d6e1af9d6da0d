/** Wall thickness: shares, the usual band, mass, and a pushed side. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { outsideRange } from '../../../src/calc/core/working.ts';
import * as push from '../../../src/calc/walls/side-push.ts';
import * as walls from '../../../src/calc/walls/walls.ts';
import * as mass from '../../../src/calc/walls/wood-mass.ts';

const inch = 25.4;
const usual = (L: number) => ({
  from: walls.usualWall.compute({ L, ...walls.thinnestBand }),
  to: walls.usualWall.compute({ L, ...walls.thickestBand }),
});
const isUsual = (t: number, L: number) => t >= usual(L).from && t <= usual(L).to;

describe('the usual band of wall thickness', () => {
  // Common practice, no source.
  test('holds 3/8 in on a box 5 by 8 in, and not on one half the size', () => {
    expect(isUsual((3 / 8) * inch, 8 * inch)).toBe(true);
    expect(isUsual((3 / 8) * inch, 4 * inch)).toBe(false);
  });

  // Common practice, no source: the wall makers name for a box with a longest side of so much, mm.
  test.each([
    [100, 6],
    [150, 6],
    [150, 8],
    [200, 8],
    [250, 10],
    [250, (3 / 8) * inch],
    [400, 10],
    [400, 12],
    [400, (3 / 8) * inch],
    [400, (1 / 2) * inch],
  ])('of a box %d mm long holds a wall of %d mm', (L, t) => {
    expect(isUsual(t, L)).toBe(true);
  });

  // Common practice, no source: called too fragile, and shelf board.
  test.each([3, (3 / 16) * inch, (3 / 4) * inch])('never holds %d mm', (t) => {
    for (let L = 100; L <= 400; L += 10) expect(isUsual(t, L)).toBe(false);
  });

  test('never narrows to nothing, stays within 6 to 13 mm, and never falls as the box grows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 1000, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        (L, more) => {
          const { from, to } = usual(L);
          expect(to - from).toBeGreaterThanOrEqual(2);
          expect(from).toBeGreaterThanOrEqual(6);
          expect(to).toBeLessThanOrEqual(13);
          expect(usual(L + more).from).toBeGreaterThanOrEqual(from);
          expect(usual(L + more).to).toBeGreaterThanOrEqual(to);
        },
      ),
    );
  });
});

describe('what walls take', () => {
  test('a wall of a tenth of the side is 10 % of it', () => {
    expect(walls.wallShare.compute({ t: 20, L: 200 })).toBe(10);
  });

  // By hand: a cube of 3 with an inside of 1 keeps 1 of 27 parts.
  test('a cube three times as wide as its inside loses 26 parts of 27', () => {
    const sizes = { l: 50, w: 50, h: 50, L: 150, W: 150, H: 150 };
    expect(walls.shareNotInside.compute(sizes)).toBeCloseTo((100 * 26) / 27, 10);
  });

  test('the share grows with the wall when the outside stays', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 19, noNaN: true }),
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        (t, more) => {
          const share = (wall: number) =>
            walls.shareNotInside.compute({
              l: 200 - 2 * wall,
              w: 120 - 2 * wall,
              h: 40,
              L: 200,
              W: 120,
              H: 60,
            });
          expect(share(t + more)).toBeGreaterThan(share(t));
        },
      ),
    );
  });

  test('a wall 0.3 mm too thin for its joint leaves 0.3 mm standing', () => {
    expect(walls.stepAtCorner.compute({ t_c: 9.5, t_a: 9.2 })).toBeCloseTo(0.3, 10);
  });
});

describe('mass', () => {
  test('black walnut of specific gravity 0.55 has 616 kg/m³ at 12 %', () => {
    // Wood Handbook (2021), eq. 4-14, worked in an open materials dataset built from it.
    expect(mass.woodDensity.compute({ G: 0.55, M: 12, rho_w: 1000 })).toBeCloseTo(616, 6);
  });

  test('white ash of 0.55 on the green volume has 0.603 at 12 %', () => {
    // Wood Handbook (2021), eq. 4-13 by hand: 0.55 / (1 − 0.265 · 0.55 · 0.6) = 0.6027; times 1120.
    expect(mass.woodDensityFromGreen.compute({ G_b: 0.55, M: 12, rho_w: 1000 })).toBeCloseTo(675, 0);
  });

  test('equals the parts weighed one by one', () => {
    // By hand: cherry, 0.5 · 1.12 = 0.56 g/cm³. Two sides 20 × 1 × 5 cm, two ends 10 × 1 × 5 cm between them,
    // bottom 18 × 10 × 0.6 cm, lid 18 × 10 × 0.5 cm: 200 + 100 + 108 + 90 = 498 cm³.
    const box = { rho: 560, rho_b: 560, rho_d: 560, L: 200, W: 120, H: 50, l: 180, w: 100, b: 6, d: 5 };
    expect(mass.boxMass.compute(box)).toBeCloseTo(498 * 0.56, 6);
  });
});

describe('a side pushed at mid-span', () => {
  // Black walnut of Table 5-3 (11 600 MPa), 50 N, 80 mm high; worked by hand with I = H t³/12 and P L³/48EI.
  const E = push.stiffnessAlongGrain.compute({ E_b: 11600 });
  const side = { P: 50, H: 80, E };

  test('has 12 760 MPa along the grain in black walnut', () => {
    // Open materials dataset built from the Wood Handbook (2021): EL of black walnut.
    expect(E).toBeCloseTo(12760, 6);
  });

  test.each([
    [200, 6, 0.454, 0.113],
    [200, 10, 0.098, 0.024],
    [300, 6, 1.53, 0.38],
  ])('%d mm long and %d mm thick gives %d mm with free ends and %d mm with held ones', (L, t, free, held) => {
    expect(Math.abs(push.sidePushFree.compute({ ...side, L, t }) / free - 1)).toBeLessThan(0.01);
    expect(Math.abs(push.sidePushHeld.compute({ ...side, L, t }) / held - 1)).toBeLessThan(0.03);
  });

  test('200 mm long and 6 mm thick is stressed to 5.2 MPa', () => {
    expect(push.sidePushStress.compute({ P: 50, L: 200, H: 80, t: 6 })).toBeCloseTo(5.2, 1);
  });

  test('agrees with the bending line integrated step by step', () => {
    // Moment P x / 2 up to the middle; slope 0 there. Two integrations of M / EI by the trapezoidal rule.
    const { P, L, H, t } = { P: 40, L: 180, H: 50, t: 8 };
    const I = (H * t ** 3) / 12;
    const steps = 4000;
    const dx = L / 2 / steps;
    let sag = 0;
    for (let step = 0; step < steps; step++) {
      const x = (step + 0.5) * dx;
      sag += ((P * x) / 2 / (E * I)) * x * dx;
    }
    expect(push.sidePushFree.compute({ P, L, E, H, t })).toBeCloseTo(sag, 6);
  });

  test('gives eight times as far at twice the length or half the thickness', () => {
    const of = (L: number, t: number) => push.sidePushFree.compute({ ...side, L, t });
    expect(of(400, 8) / of(200, 8)).toBeCloseTo(8, 10);
    expect(of(200, 4) / of(200, 8)).toBeCloseTo(8, 10);
  });

  test('has no number where it is no beam: thicker than a tenth of its length', () => {
    const at = (t: number) => outsideRange(push.sidePushFree, { ...side, L: 100, t })?.symbol;
    expect(at(10)).toBeUndefined();
    expect(at(10.5)).toBe('t');
    expect(push.bendsAsBeam(100, 10)).toBe(true);
    expect(push.bendsAsBeam(100, 10.5)).toBe(false);
  });
});

/** A lid that jams is planed to a number, and a loose one is thickened: figures reckoned by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equilibriumMoisture } from '../../../src/calc/air/moisture.ts';
import { playAtDriest as dry } from '../../../src/calc/movement/panel.ts';
import { playAtDampest } from '../../../src/calc/movement/panel-play.ts';
import { offEachEdge, shimThickness, thicknessOverYear } from '../../../src/calc/movement/repair.ts';

/** Flat-sawn hard maple, flat-sawn cherry and its radial figure: Wood Handbook, Table 13-5. */
const maple = 0.00353;
const cherry = { flatSawn: 0.00248, quarterSawn: 0.00126 };

describe('a lid of flat-sawn hard maple, 120 mm wide, that was fitted at 35 % humidity and jams at 65 %', () => {
  test('has grown by 2.1 mm', () => {
    // 5.0 points from 35 to 65 % (Table 4-2 at 21.1 °C: 6.9 and 12.0).
    expect(120 * maple * (equilibriumMoisture(21.1, 65) - equilibriumMoisture(21.1, 35))).toBeCloseTo(2.1, 1);
  });

  test('dried to 45 %, it asks for 1.8 mm in all: 0.9 mm off each edge if it had no play there', () => {
    const lid = { W: 120, C: maple, u: 3.5, c: 0.3 };
    expect(2 * offEachEdge.compute({ ...lid, p: 0 })).toBeCloseTo(1.8, 1);
  });

  test('just as wide as its grooves at 65 %, it only lacks the 0.3 mm to run: 0.15 mm off each edge', () => {
    // Drying by 3.5 points has given back 120 · 0.00353 · 3.5 = 1.48 mm.
    expect(offEachEdge.compute({ W: 120, C: maple, u: 3.5, c: 0.3, p: 1.4826 })).toBeCloseTo(0.15, 6);
  });
});

test('whatever the play was, a lid planed so has what was wanted on its dampest day', () => {
  const numbers = fc.record({
    W: fc.double({ min: 40, max: 300, noNaN: true }),
    u: fc.double({ min: 0, max: 6, noNaN: true }),
    c: fc.double({ min: 0, max: 1, noNaN: true }),
    p: fc.double({ min: -2, max: 2, noNaN: true }),
  });
  fc.assert(
    fc.property(numbers, (given) => {
      const C = cherry.flatSawn;
      const off = offEachEdge.compute({ ...given, C });
      const left = playAtDampest.compute({ p: given.p + 2 * off, W: given.W, C, u: given.u });
      expect(left).toBeCloseTo(given.c, 9);
    }),
  );
});

test('planed to the same play of 0.9 mm, a lid of 100 mm jams if that was the driest week, and has 2.1 mm in winter if it was the dampest', () => {
  // Cherry, 4.8 points between 30 and 60 % (Table 4-2 at 21.1 °C: 6.2 and 11.0): 1.19 mm over the year.
  const lid = { W: 100, C: cherry.flatSawn };
  expect(playAtDampest.compute({ ...lid, p: 0.9, u: 4.8 })).toBeCloseTo(-0.29, 2);
  expect(dry.compute({ ...lid, p: 0.9, f: 4.8 })).toBeCloseTo(2.09, 2);
});

describe('what is loose up and down', () => {
  test('a groove of 4.5 mm with an edge of 4 mm takes a strip of 0.2 mm and keeps 0.3 mm of slip', () => {
    expect(shimThickness.compute({ d: 4.5, T: 4, c: 0.3 })).toBeCloseTo(0.2, 9);
  });

  test('an edge of 6 mm moves 0.06 mm in its thickness over 4 points, upright rings or not within a factor of two (common practice says 0.06)', () => {
    expect(thicknessOverYear.compute({ T: 6, C_t: cherry.flatSawn, M_d: 7, M_w: 11 })).toBeCloseTo(0.06, 2);
    expect(thicknessOverYear.compute({ T: 6, C_t: cherry.quarterSawn, M_d: 7, M_w: 11 })).toBeCloseTo(
      0.03,
      2,
    );
  });
});

/** Groove margins, against the reference tables, arithmetic by hand and geometry done another way. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cornerHoles,
  fingerAboveGroove,
  grooveStep,
  grooveStop,
  grooveWidth,
} from '../../../src/calc/grooves/groove-corner.ts';
import { grooveShare, web, webStiffness, webStrength } from '../../../src/calc/grooves/groove-web.ts';
import * as grooves from '../../../src/calc/grooves/grooves.ts';

const inch = 25.4;
/** Black walnut pulled across the grain, 12 % MC, MPa: Wood Handbook Table 5-3a, as in content/data/mechanical-properties.csv. */
const walnut = 4.8;
const size = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });

describe('a lip beside a groove', () => {
  // Worked table of this project's reference notes, D1: σ m²/(6 d) with σ = 4.8 MPa, done apart from this code.
  // Rows and columns in sixteenths of an inch; the last figure printed is the tolerance.
  test.each([
    [1, 1, 1.27, 0.005],
    [1, 2, 0.64, 0.006],
    [1, 3, 0.42, 0.005],
    [2, 1, 5.08, 0.005],
    [2, 2, 2.54, 0.005],
    [2, 3, 1.69, 0.005],
    [3, 1, 11.4, 0.05],
    [3, 2, 5.71, 0.006],
    [3, 3, 3.81, 0.005],
    [4, 1, 20.3, 0.05],
    [4, 2, 10.2, 0.05],
    [4, 3, 6.77, 0.006],
  ])('of %i/16 in walnut, loaded %i/16 in out, breaks at %f N/mm', (m, d, expected, within) => {
    const found = grooves.lipLoad.compute({ sigma_t: walnut, m: (m * inch) / 16, d: (d * inch) / 16 });
    expect(Math.abs(found - expected)).toBeLessThanOrEqual(within);
  });

  // Same notes: capacities at d = 1/8 in, thumb 10 mm wide.
  test.each([
    [1, 10],
    [2, 42],
    [3, 93],
  ])('of %i/16 in walnut takes a push of %i N at the mouth of a 1/8 in groove', (m, expected) => {
    const d = inch / 8;
    const q = grooves.lipLoad.compute({ sigma_t: walnut, m: (m * inch) / 16, d });
    expect(Math.abs(grooves.lipPush.compute({ q, a: grooves.thumbWidth, d }) - expected)).toBeLessThanOrEqual(
      0.5,
    );
  });

  // The pushes of the same notes the other way round; they are printed to whole newtons.
  test.each([
    [1, 10],
    [2, 42],
    [3, 93],
  ])('of %i/16 in walnut is the thinnest that takes %i N beside a 1/8 in groove', (m, push) => {
    const thin = grooves.lipForPush.compute({
      F: push,
      sigma_t: walnut,
      a: grooves.thumbWidth,
      d: inch / 8,
    });
    expect(thin / ((m * inch) / 16)).toBeCloseTo(1, 1);
  });

  test('twice as thick takes four times the load, twice as far out half of it', () => {
    fc.assert(
      fc.property(size(1, 10), size(0.5, 10), size(0.5, 7), (sigma_t, m, d) => {
        const plain = grooves.lipLoad.compute({ sigma_t, m, d });
        expect(grooves.lipLoad.compute({ sigma_t, m: 2 * m, d }) / plain).toBeCloseTo(4, 9);
        expect(grooves.lipLoad.compute({ sigma_t, m, d: 2 * d }) / plain).toBeCloseTo(0.5, 9);
      }),
    );
  });

  test('is slender until its shear is half its bending stress', () => {
    fc.assert(
      fc.property(size(0.5, 20), size(0.5, 15), (m, d) => {
        expect(grooves.isSlender(m, d)).toBe(m <= 2 * d);
        if (grooves.isSlender(m, d)) expect(grooves.lipShear.compute({ m, d })).toBeLessThanOrEqual(0.5);
        else expect(grooves.lipShear.compute({ m, d })).toBeGreaterThan(0.5);
      }),
    );
  });

  test('counts as twice its arm and no thicker once it is stubbier than that, and never promises more than beam theory', () => {
    fc.assert(
      fc.property(size(1, 10), size(0.5, 12), size(1, 3), (sigma_t, d, more) => {
        const stubby = grooves.stubbyLipLoad.compute({ sigma_t, d });
        expect(stubby).toBeCloseTo(grooves.lipLoad.compute({ sigma_t, m: 2 * d, d }), 9);
        expect(stubby).toBeLessThanOrEqual(grooves.lipLoad.compute({ sigma_t, m: 2 * d * more, d }) + 1e-9);
      }),
    );
  });

  test('breaks at the table strength from a check of about 1.8 mm in walnut', () => {
    // Reference notes D1, first caveat: K = 0.4 MPa√m (Wood Handbook range, from memory), σ = 4.8 MPa.
    expect(grooves.criticalFlaw.compute({ K: 0.4, sigma_t: walnut })).toBeCloseTo(1.8, 1);
  });
});

describe('the contents', () => {
  // Reference notes D1: 9.81 N over 640 mm, by hand.
  test('of 1 kg press 0.015 N on each mm of lip around a panel of 200 by 120 mm', () => {
    expect(grooves.contentsLoad.compute({ W: 9.81, l: 200, b: 120 })).toBeCloseTo(0.015, 3);
  });

  test('press 1.55 N/mm when the box falls half a meter and stops in 5 mm: more than a 1/16 in lip takes, less than a 1/8 in one', () => {
    const drop = grooves.dropLoad.compute({ W: 9.81, l: 200, b: 120, h: 500, s: 5 });
    expect(drop).toBeCloseTo(1.55, 2);
    const lip = (m: number) => grooves.lipLoad.compute({ sigma_t: walnut, m, d: inch / 8 });
    expect(drop).toBeGreaterThan(lip(inch / 16));
    expect(drop).toBeLessThan(lip(inch / 8));
  });
});

describe('the web behind a groove', () => {
  // Reference notes D2: (1 - g/t)² and (1 - g/t)³ at a third and at a half.
  test.each([
    [3, 44.4, 29.6],
    [2, 25, 12.5],
  ])(
    'of a wall grooved 1/%i deep keeps %f %% of the strength and %f %% of the stiffness',
    (part, strength, stiffness) => {
      const t = 10;
      const w = web.compute({ t, g: t / part });
      expect(webStrength.compute({ w, t })).toBeCloseTo(strength, 1);
      expect(webStiffness.compute({ w, t })).toBeCloseTo(stiffness, 1);
      expect(grooveShare.compute({ g: t / part, t })).toBeCloseTo(100 / part, 9);
    },
  );

  test('has the strength and stiffness of a rectangle as thick as it is', () => {
    // Section modulus b h²/6 and second moment b h³/12 of any strength-of-materials book, from the two sections.
    fc.assert(
      fc.property(size(3, 25), size(0, 1), (t, share) => {
        const w = t * share;
        const modulus = (h: number) => h ** 2 / 6;
        const second = (h: number) => h ** 3 / 12;
        expect(webStrength.compute({ w, t })).toBeCloseTo((100 * modulus(w)) / modulus(t), 8);
        expect(webStiffness.compute({ w, t })).toBeCloseTo((100 * second(w)) / second(t), 8);
      }),
    );
  });
});

describe('a groove at a corner of fingers', () => {
  test('inside the second finger shows on the second pair of walls alone', () => {
    expect(cornerHoles(10, 4, 8)).toEqual([{ pair: 'second', from: 10, to: 14 }]);
  });

  test('across a boundary shows on both pairs', () => {
    expect(cornerHoles(5, 4, 8)).toEqual([
      { pair: 'first', from: 5, to: 8 },
      { pair: 'second', from: 8, to: 9 },
    ]);
  });

  test('that starts or ends on a boundary, in mm or in inch fractions, stays inside one finger', () => {
    expect(cornerHoles(8, 4, 8)).toHaveLength(1);
    expect(cornerHoles(4, 4, 8)).toHaveLength(1);
    expect(cornerHoles((3 * inch) / 32, (3 * inch) / 32, (3 * inch) / 16)).toHaveLength(1);
    expect(cornerHoles(0.3, 0.05, 0.1)).toHaveLength(1);
  });

  test('leaves no height out: sampled heights lie in the hole of the finger that stands there', () => {
    fc.assert(
      fc.property(size(0, 25), size(2, 20), size(2, 25), size(0.001, 0.999), (bottom, width, finger, at) => {
        const height = bottom + at * width;
        const holes = cornerHoles(bottom, width, finger).filter(
          ({ from, to }) => from <= height && height <= to,
        );
        const onBoundary = Math.abs(height / finger - Math.round(height / finger)) < 1e-6;
        if (!onBoundary) {
          expect(holes).toHaveLength(1);
          // Fingers alternate with a period of two; the first pair has the lower half of each.
          expect(holes[0]!.pair).toBe(height % (2 * finger) < finger ? 'first' : 'second');
        }
      }),
    );
  });

  test('crosses a boundary exactly where no finger is left above it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 50 }),
        fc.integer({ min: 4, max: 40 }),
        fc.integer({ min: 4, max: 50 }),
        (m, b, f) => {
          const left = fingerAboveGroove.compute({ m: m / 2, b: b / 2, f: f / 2 });
          expect(cornerHoles(m / 2, b / 2, f / 2).length === 1).toBe(left >= 0);
        },
      ),
    );
  });

  test('stops 6.7 mm from the end for a groove 3.3 mm deep in 10 mm walls', () => {
    // Geometry: the neighbor covers 10 mm, and the panel's edge reaches 3.3 mm into it.
    expect(grooveStop.compute({ t: 10, g: 3.3 })).toBeCloseTo(6.7, 9);
  });

  test('steps by as much as the walls differ in height when the fence measured from the far edge', () => {
    expect(grooveStep.compute({ h_1: 40.6, h_2: 40 })).toBeCloseTo(0.6, 9);
  });
});

test('a groove for a 5.6 mm panel with 0.25 mm slip is 5.85 mm wide', () => {
  // Common practice, no source: 0.2 to 0.3 mm more than the panel as measured.
  expect(grooveWidth.compute({ p: 5.6, s: 0.25 })).toBeCloseTo(5.85, 9);
});

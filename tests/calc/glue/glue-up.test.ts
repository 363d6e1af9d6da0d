/** The clock, the film and the water of a glue-up. Expected values by hand, or by a grid of cells worked in the test. */
import { describe, expect, test } from 'vitest';
import {
  filmInFingers,
  filmOfSpread,
  glueCube,
  glueVolume,
  squeezeOut,
} from '../../../src/calc/glue/film.ts';
import { facesToGlue, glueUpTime } from '../../../src/calc/glue/glue-up.ts';
import {
  besideLine,
  slowerWhenCold,
  sunkenLine,
  waterAtLine,
  waterLeft,
  waterReach,
} from '../../../src/calc/glue/water.ts';

describe('the clock', () => {
  test('four corners of fifteen fingers have 56 faces to spread', () => {
    expect(facesToGlue.compute({ m: 14 })).toBe(56);
  });

  test('56 faces at 8 seconds and ten steps at 20 take 648 seconds', () => {
    expect(glueUpTime.compute({ N: 56, s_f: 8, k: 10, s_k: 20 })).toBeCloseTo(648 / 60, 9);
  });

  test('the trial is the glue-up without its faces', () => {
    expect(glueUpTime.compute({ N: 0, s_f: 8, k: 10, s_k: 20 })).toBeCloseTo(200 / 60, 9);
  });
});

describe('films', () => {
  test('165 g on a square meter at 1.1 g/cm³ is 0.15 mm', () => {
    expect(filmOfSpread.compute({ s: 165, rho: 1100 })).toBeCloseTo(0.15, 9);
  });

  test('a liter covers a square meter one millimeter thick', () => {
    expect(glueVolume.compute({ A: 1e6, w: 1 })).toBe(1e6);
  });

  test('a cube of 8 mm, 512 mm³, covers 5,120 mm² a tenth of a millimeter thick', () => {
    expect(glueCube.compute({ A: 5120, w: 0.1 })).toBeCloseTo(8, 9);
  });

  test('half the play of a finger lies on either side of it', () => {
    expect(filmInFingers.compute({ c: 0.1 })).toBeCloseTo(0.05, 9);
  });

  test('what a thinner film no longer holds is pressed out', () => {
    expect(squeezeOut.compute({ A: 832, w_1: 0.18, w_2: 0.1 })).toBeCloseTo(66.56, 6);
  });
});

describe('the water of the glue', () => {
  const [s, k, rho, D] = [200, 0.5, 550, 2.5] as const;

  test('all of it lies under the bell: 0.1 kg of water on a square meter, whatever the day', () => {
    for (const t of [1, 5, 20]) {
      const top = waterAtLine.compute({ s, k, r: 1, rho, D, t });
      let water = 0;
      for (let x = -80; x <= 80; x += 0.05) water += 0.05e-3 * (top / 100) * besideLine(x, D, t) * rho;
      expect(water).toBeCloseTo(0.1, 5);
    }
  });

  test('a grid of cells across a wall and along it comes to the same moisture at the line', () => {
    const [wall, long, h, surface, days] = [8, 30, 0.5, 8.64, 1] as const;
    const [deep, wide] = [wall / h, long / h] as const;
    const step = 0.02;
    /** All the water stands in the two columns beside the line at first. */
    let cells = Array.from({ length: deep }, () =>
      Array.from({ length: wide }, (_, i) =>
        i === wide / 2 || i === wide / 2 - 1 ? (100 * k * s) / rho / (2 * h) : 0,
      ),
    );
    /** From the middle of an outermost cell through half of it and the film of air. */
    const out = 1 / (h / 2 / D + 1 / surface);
    for (let n = 0; n < days / step; n++)
      cells = cells.map((line, j) =>
        line.map((u, i) => {
          const along = (line[i - 1] ?? u) + (line[i + 1] ?? u) - 2 * u;
          const faces = [j - 1, j + 1].reduce((sum, at) => {
            const next = cells[at]?.[i];
            return sum + (next === undefined ? (-out * u) / h : (D * (next - u)) / h ** 2);
          }, 0);
          return u + step * ((D * along) / h ** 2 + faces);
        }),
      );
    const mean = (column: number) => cells.reduce((sum, line) => sum + line[column]!, 0) / deep;
    const atLine = (mean(wide / 2) + mean(wide / 2 - 1)) / 2;
    const told = waterAtLine.compute({ s, k, r: waterLeft(wall, D, surface, days), rho, D, t: days });
    expect(Math.abs(told / atLine - 1)).toBeLessThan(0.03);
  });

  test('a wall of 8 mm that is 1.946 points wetter at the line sinks by 0.0213 mm on each face', () => {
    expect(sunkenLine.compute({ T: 8, C: 0.00274, dM: 1.946 })).toBeCloseTo(0.02133, 5);
  });

  test('it gets seven times as far in a day as in half an hour: the root of 48', () => {
    const far = (t: number) => waterReach.compute({ D, t });
    expect(far(1) / far(1 / 48)).toBeCloseTo(6.928, 3);
    expect(far(1)).toBeCloseTo(2.236, 3);
  });

  test('two thirds of the bell lie within that distance', () => {
    const reach = waterReach.compute({ D, t: 3 });
    const sum = (to: number) => {
      let all = 0;
      for (let x = -to; x <= to; x += 0.01) all += besideLine(x, D, 3);
      return all;
    };
    expect(sum(reach) / sum(60)).toBeCloseTo(0.683, 2);
  });

  test('in the cold it is slower, at 20 °C as told, in heat quicker', () => {
    // The reference's formula for bound water, 7e-6 exp(−(38500 − 290 M)/(R T)), at 283.15 and 293.15 K and 9 %.
    const coefficient = (kelvin: number) => 7e-6 * Math.exp(-(38500 - 290 * 9) / (8.314 * kelvin));
    expect(slowerWhenCold.compute({ theta: 10, M: 9 })).toBeCloseTo(
      coefficient(293.15) / coefficient(283.15),
      9,
    );
    expect(slowerWhenCold.compute({ theta: 20, M: 9 })).toBe(1);
    expect(slowerWhenCold.compute({ theta: 30, M: 9 })).toBeLessThan(1);
  });

  test('of a wall without meaning nothing is left', () => {
    expect(waterLeft(0, D, 8.64, 1)).toBeNaN();
    expect(waterLeft(8, D, 8.64, 0)).toBe(1);
  });
});

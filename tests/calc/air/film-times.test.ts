/** Times and swings of a piece behind a film, against the exact series, the exact wave and the physics note's tables. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { daysUntil, waveKept } from '../../../src/calc/air/diffusion-series.ts';
import { ninetyTimeBehindFilm, seasonKept } from '../../../src/calc/air/film-times.ts';

/** m/s and m²/s to mm/day and mm²/day. */
const speed = (metersPerSecond: number) => metersPerSecond * 86_400e3;
const spread = (squareMeters: number) => squareMeters * 86_400e6;

describe('nine tenths of a change', () => {
  // Physics note B3, days, surface coefficient 1e-7 m/s; printed to two figures.
  test.each([
    [3, 3e-11, 1.1],
    [6, 3e-11, 3.7],
    [10, 3e-11, 9.4],
    [20, 3e-11, 35],
    [6, 1e-10, 1.6],
    [20, 1e-10, 12],
  ])('%d mm with D %d takes %d days', (T, d, days) => {
    const found = ninetyTimeBehindFilm.compute({ T, D: spread(d), S: speed(1e-7) });
    // 2 % of the relation and 3.2 % of the printed figure: half a unit in the second figure of 1.6.
    expect(Math.abs(found / days - 1)).toBeLessThan(0.052);
  });

  test('is within 3 % of the series wherever the relation may be used', () => {
    const { T, D, S } = ninetyTimeBehindFilm.inputs;
    const any = ({ range: [min, max] }: { range: readonly [number, number] }) =>
      fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(any(T), any(D), any(S), (thickness, diffusion, surface) => {
        const exact = daysUntil(0.9, { thickness, diffusion, surface });
        if (typeof exact !== 'number') throw new Error(exact.refused);
        const found = ninetyTimeBehindFilm.compute({ T: thickness, D: diffusion, S: surface });
        expect(Math.abs(found / exact - 1)).toBeLessThan(0.03);
      }),
    );
  });

  test('four times as long for twice the thickness where the faces resist nothing to speak of', () => {
    const [thin, thick] = [10, 20].map((T) => ninetyTimeBehindFilm.compute({ T, D: 2.6, S: 100 }));
    expect(thick! / thin!).toBeCloseTo(4, 0);
  });
});

describe('a year’s swing', () => {
  // Physics note B4, D 3e-11 m²/s: share kept, bare (1e-7 m/s), three coats of varnish (6e-9), two-component polyurethane (2e-9).
  test.each([
    [6, 1e-7, 100],
    [6, 6e-9, 99],
    [6, 2e-9, 95],
    [20, 1e-7, 96],
    [20, 6e-9, 87],
  ])('%d mm behind a surface of %d m/s keeps %d %%', (T, s, kept) => {
    const found = seasonKept.compute({ T, D: spread(3e-11), S: speed(s), P: 365 });
    expect(Math.abs(found - kept)).toBeLessThan(1.5);
  });

  test('is within 5 points of the exact wave wherever the relation may be used', () => {
    const { T, D, S, P } = seasonKept.inputs;
    const any = ({ range: [min, max] }: { range: readonly [number, number] }) =>
      fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(any(T), any(D), any(S), any(P), (thickness, diffusion, surface, period) => {
        const exact = waveKept({ thickness, diffusion, surface }, period);
        if ('refused' in exact) throw new Error(exact.refused);
        const found = seasonKept.compute({ T: thickness, D: diffusion, S: surface, P: period });
        expect(Math.abs(found - 100 * exact.kept)).toBeLessThan(5);
        if (thickness ** 2 < 0.5 * diffusion * period)
          expect(Math.abs(found - 100 * exact.kept)).toBeLessThan(1.2);
      }),
      { numRuns: 500 },
    );
  });
});

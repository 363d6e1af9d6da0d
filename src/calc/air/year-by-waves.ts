/**
 * The settled year of a piece without stepping through its days: the air's year taken apart into waves, each wave
 * damped and delayed as `waveKept` says, and the waves put together again.
 *
 *   M(day) = m₀ + Σ kept_n · [a_n cos(n ω (day − lag_n)) + b_n sin(n ω (day − lag_n))],   ω = 2π/365
 *
 * Symbols: M mean moisture of the piece (%), m₀ mean of the air's year, a_n and b_n its waves, n times a year.
 * Held fixed: as in `diffusion.ts`, whose solver it must agree with; both faces alike, or one of them sealed.
 * It costs a twentieth of `settledYear`, so a slider can drive it.
 */

import { firstRefusal, isRefused, type Refused } from '../core/refusal.ts';
import { type EvenSlab, waveKept } from './diffusion-series.ts';
import { DAYS_IN_YEAR } from './year.ts';

/** Waves a year that are kept: down to 15 days. The rest of a curve through twelve months is below 0.005 % MC. */
const WAVES = 24;

/** Cosines of a turn in 365 steps; all waves fall on these steps. */
const TURN = Float64Array.from({ length: DAYS_IN_YEAR }, (_, i) =>
  Math.cos((2 * Math.PI * i) / DAYS_IN_YEAR),
);
const SIDE = Float64Array.from({ length: DAYS_IN_YEAR }, (_, i) =>
  Math.sin((2 * Math.PI * i) / DAYS_IN_YEAR),
);

/** A year taken apart. Index 0 holds the mean, index n the wave that comes n times a year; % MC. */
export interface Waves {
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
}

/** Takes a year apart. @param air one value a day, days 0 to 364; further values are not looked at. */
export function wavesOf(air: ArrayLike<number>): Waves | Refused {
  const bad = firstRefusal(['number of days', air.length, DAYS_IN_YEAR, 40_000, '']);
  if (bad) return bad;
  const [cosine, sine] = [new Float64Array(WAVES + 1), new Float64Array(WAVES + 1)];
  for (let n = 0; n <= WAVES; n++) {
    let [along, across] = [0, 0];
    for (let day = 0; day < DAYS_IN_YEAR; day++) {
      const step = (n * day) % DAYS_IN_YEAR;
      along += air[day]! * TURN[step]!;
      across += air[day]! * SIDE[step]!;
    }
    const share = (n === 0 ? 1 : 2) / DAYS_IN_YEAR;
    cosine[n] = along * share;
    sine[n] = across * share;
  }
  return Number.isFinite(cosine[0]!)
    ? { cosine, sine }
    : { refused: 'The moisture of the air is not a number on some day.' };
}

/**
 * Mean moisture (%) of the piece through its settled year, days 0 to 365; the last equals the first.
 * @param slab both faces alike. For a piece with one face sealed give twice its thickness: no water crosses its middle.
 */
export function settledMean({ cosine, sine }: Waves, slab: EvenSlab): Float64Array | Refused {
  const mean = new Float64Array(DAYS_IN_YEAR + 1).fill(cosine[0]!);
  for (let n = 1; n < cosine.length; n++) {
    const wave = waveKept(slab, DAYS_IN_YEAR / n);
    if (isRefused(wave)) return wave;
    const turn = (2 * Math.PI * n * wave.lag) / DAYS_IN_YEAR;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const along = wave.kept * (cosine[n]! * c - sine[n]! * s);
    const across = wave.kept * (cosine[n]! * s + sine[n]! * c);
    for (let day = 0; day <= DAYS_IN_YEAR; day++) {
      const step = (n * day) % DAYS_IN_YEAR;
      mean[day]! += along * TURN[step]! + across * SIDE[step]!;
    }
  }
  return mean;
}

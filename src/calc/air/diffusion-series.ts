/**
 * Closed answers for moisture in a slab: how far a sudden change has got, how long half of it takes, and how
 * much of a daily, weekly or yearly wave gets through. They are also the yardstick of the numeric solver.
 *
 *   E = 1 − Σ 2 Bi² exp(−b² D t / l²) / [b² (b² + Bi² + Bi)],   b tan b = Bi,   Bi = S l / D
 *   kept = |(tanh z / z) / (1 + z tanh z / Bi)|,   z = (1 + i) l √(π / (D P))
 *
 * Symbols: E fraction of the final change of the mean (0 to 1), l half the thickness (mm), D diffusion (mm²/day),
 * S surface coefficient (mm/day, the same on both faces), t time (day), P period (day).
 * Held fixed: D, temperature; both faces meet the same air.
 * Source: Crank, The Mathematics of Diffusion, ch. 4 (from memory, not seen); the wave is derived.
 */
import { firstRefusal, type Refused } from '../core/refusal.ts';
import { relation } from '../core/relation.ts';

/** Both faces alike. mm, mm²/day, mm/day; a surface of `Infinity` has no resistance. */
export interface EvenSlab {
  readonly thickness: number;
  readonly diffusion: number;
  readonly surface: number;
}

const diffusion = { name: 'diffusion coefficient', unit: 'mm^2/day', range: [0.5, 20] } as const;

/** Time to half of a sudden change, by adding the two delays. */
export const halfTime = relation({
  id: 'moisture-half-time',
  title: 'Days until half of a change in moisture has happened',
  result: { symbol: 't_50', name: 'time to half the change', unit: 'day' },
  inputs: {
    T: { name: 'thickness', unit: 'mm', range: [3, 100] },
    D: diffusion,
    S: { name: 'surface coefficient', unit: 'mm/day', range: [0.02, 100] },
  },
  expression: '0.2 (T / 2)^2 / D + 0.7 (T / 2) / S',
  compute: ({ T, D, S }) => (0.2 * (T / 2) ** 2) / D + (0.7 * T) / 2 / S,
  evidence: 'from memory',
  source: 'choong-skaar-1969',
  limits:
    'Both faces alike. Within 4 % of the exact series. The diffusion coefficient is known to a factor of about two, so is the time.',
});

/** Time to nine tenths of a sudden change when nothing covers the wood: thickness squared. */
export const ninetyTime = relation({
  id: 'moisture-ninety-time',
  title: 'Days until nine tenths of a change has happened, bare wood in moving air',
  result: { symbol: 't_90', name: 'time to nine tenths of the change', unit: 'day' },
  inputs: { T: { name: 'thickness', unit: 'mm', range: [3, 100] }, D: diffusion },
  expression: '0.2120 T^2 / D',
  compute: ({ T, D }) => (0.212 * T * T) / D,
  evidence: 'derived',
  source: 'The series for a slab whose faces follow the air at once.',
  limits: 'No finish and no still air: real pieces take longer. Good to the factor of two in D.',
});

/** The nth positive root (from 0) of b tan b = Bi, by halving in its own interval. */
export function root(n: number, biot: number): number {
  if (biot === Number.POSITIVE_INFINITY) return (n + 0.5) * Math.PI;
  let [low, high] = [n * Math.PI, (n + 0.5) * Math.PI];
  for (let halving = 0; halving < 60; halving++) {
    const b = (low + high) / 2;
    if (b * Math.tan(b) < biot) low = b;
    else high = b;
  }
  return (low + high) / 2;
}

/** Refuses a slab without thickness or diffusion, or sealed on both faces. */
function refuseEven({ thickness, diffusion: d, surface }: EvenSlab): Refused | undefined {
  if (!(surface > 0)) return { refused: 'With both faces sealed the moisture never changes.' };
  return firstRefusal(
    ['thickness', thickness, 0.5, 100, ' mm'],
    ['diffusion coefficient', d, 0.1, 100, ' mm²/day'],
  );
}

/**
 * Fraction of the final change of the mean moisture that has happened `days` after a sudden change of air.
 * @returns 0 to 1, or a refusal for a slab without meaning.
 */
export function fractionDone(slab: EvenSlab, days: number): number | Refused {
  const bad = refuseEven(slab) ?? firstRefusal(['time', days, 0, 1e6, ' days']);
  return bad ?? done(slab, days);
}

/** `fractionDone` of a slab that has been looked at. */
function done({ thickness, diffusion: d, surface }: EvenSlab, days: number): number {
  if (days === 0) return 0;
  const half = thickness / 2;
  const biot = (surface * half) / d;
  const time = (d * days) / (half * half);
  // Before the two faces feel each other, an open slab is two half-spaces.
  if (biot === Number.POSITIVE_INFINITY && time < 0.04) return 2 * Math.sqrt(time / Math.PI);
  let left = 0;
  for (let n = 0; n < 500; n++) {
    const b = root(n, biot);
    const share =
      biot === Number.POSITIVE_INFINITY
        ? 2 / b ** 2
        : (2 * biot ** 2) / (b ** 2 * (b ** 2 + biot ** 2 + biot));
    const term = share * Math.exp(-b * b * time);
    left += term;
    if (term < 1e-10) break;
  }
  return Math.max(0, 1 - left);
}

/** Days until `fraction` (0.01 to 0.999) of a sudden change has happened: 0.5 and 0.9 are the usual questions. */
export function daysUntil(fraction: number, slab: EvenSlab): number | Refused {
  const bad = refuseEven(slab) ?? firstRefusal(['share of the change', fraction, 0.01, 0.999, '']);
  if (bad) return bad;
  let high = 1;
  while (done(slab, high) < fraction && high < 1e6) high *= 2;
  let low = 0;
  for (let halving = 0; halving < 50; halving++) {
    const middle = (low + high) / 2;
    if (done(slab, middle) < fraction) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * What a wave of air moisture of the given period (days) leaves of itself in the mean of the piece.
 * @returns `kept` 0 to 1 of its swing, and `lag` in days behind the air.
 */
export function waveKept(
  slab: EvenSlab,
  period: number,
): { readonly kept: number; readonly lag: number } | Refused {
  const bad = refuseEven(slab) ?? firstRefusal(['period', period, 0.01, 40_000, ' days']);
  if (bad) return bad;
  const { thickness, diffusion: d, surface } = slab;
  const half = thickness / 2;
  const reach = half * Math.sqrt(Math.PI / (d * period));
  // tanh z for z = reach (1 + i), then (tanh z / z) / (1 + z tanh z / Bi), in real and imaginary parts.
  // Past 20 the hyperbolic tangent is 1 to the last digit, and its parts would overflow.
  const deep = Math.min(reach, 20);
  const below = Math.cosh(2 * deep) + Math.cos(2 * deep);
  const [x, y] = [Math.sinh(2 * deep) / below, Math.sin(2 * deep) / below];
  const resist = (reach * d) / (surface * half);
  const [topX, topY] = [(x + y) / (2 * reach), (y - x) / (2 * reach)];
  const [underX, underY] = [1 + resist * (x - y), resist * (x + y)];
  const kept = Math.hypot(topX, topY) / Math.hypot(underX, underY);
  const behind = Math.atan2(underY, underX) - Math.atan2(topY, topX);
  return { kept, lag: (behind / (2 * Math.PI)) * period };
}

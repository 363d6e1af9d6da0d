/**
 * A piece weighed day by day: whether it has settled, and where it is going.
 *
 *   m(t) = m_e + (m_0 − m_e) e^(−t/τ)        t_x = τ ln(d / (x m_e/100))
 *
 * Symbols: m mass (g), m_0 at the start, m_e at the end, d = |m − m_e|, t time (day), τ time constant (day), x nearness (% of m_e).
 * Held fixed: the air. The later part of drying or taking up through the faces goes that way (the slowest term of the
 * series in `diffusion-series.ts`); the first part is faster, so an early guess of the end falls short.
 * Over 150 lines: the relations and the search that puts them to use are read together.
 */
import { isRefused, type Refused } from '../core/refusal.ts';
import { relation } from '../core/relation.ts';
import { WEIGHING, weighingChange } from './acclimatize.ts';

const m_e = { name: 'mass at the end', unit: 'g', range: [1, 20_000] } as const;
const tau = { name: 'time constant', unit: 'day', range: [0.1, 1000], tex: '\\tau' } as const;

/** Mass on its way to the end, g. */
export const massOnTheWay = relation({
  id: 'mass-on-the-way',
  title: 'Mass of a piece on its way to the end',
  result: { symbol: 'm', name: 'mass', unit: 'g' },
  inputs: {
    m_e,
    m_0: { name: 'mass at the start', unit: 'g', range: [1, 20_000] },
    t: { name: 'time since the start', unit: 'day', range: [0, 3650] },
    tau,
  },
  expression: 'm_e + (m_0 - m_e) * exp(-t / tau)',
  compute: ({ m_e, m_0, t, tau }) => m_e + (m_0 - m_e) * Math.exp(-t / tau),
  evidence: 'derived',
  source: 'The slowest term of the series for a slab in air that stays as it is.',
  limits: 'The first part of the way is faster, and air that changes moves the end.',
});

/** Days until the mass is within x % of its end; above 0 while it is farther off. */
export const daysUntilNear = relation({
  id: 'days-until-near',
  title: 'Days until the mass is near its end',
  result: { symbol: 't_x', name: 'days still to wait', unit: 'day' },
  inputs: {
    d: { name: 'mass still to lose or to gain', unit: 'g', range: [0.001, 20_000] },
    m_e,
    tau,
    x: { name: 'nearness', unit: '%', range: [0.01, 5] },
  },
  expression: 'tau * log(d / (x / 100 * m_e))',
  compute: ({ d, m_e, tau, x }) => tau * Math.log(d / ((x / 100) * m_e)),
  evidence: 'derived',
  source: 'The way to the end, solved for the time.',
  limits: massOnTheWay.limits!,
});

/** Day, counted from any day, and mass in g. In order of the days, one a day. */
export type Weighing = readonly [day: number, mass: number];

/** Days between the two weighings that are compared: thicker wood changes so slowly that three seem settled early. */
export const thinUpTo = 12;
export const daysApart = (thickness: number): number => (thickness <= thinUpTo ? WEIGHING.apart : 7);

/** The last weighing beside the latest one that lies long enough before it. */
export interface Settled {
  readonly days: number;
  /** Change over these days, and for one of them, %. */
  readonly change: number;
  readonly perDay: number;
  readonly settled: boolean;
}

/** Whether a series has settled: within `WEIGHING.within` percent over `apart` days or more (common practice). */
export function settledBy(series: readonly Weighing[], apart: number): Settled | Refused {
  const last = series.at(-1);
  const before = last && series.findLast(([day]) => day <= last[0] - apart);
  if (!before) return { refused: `It takes two weighings that lie ${apart} days apart or more.` };
  const change = weighingChange.compute({ m_1: before[1], m_2: last[1] });
  const days = last[0] - before[0];
  // A thousandth of the limit is no more than arithmetic.
  const settled = Math.abs(change) <= WEIGHING.within * 1.001;
  return { days, change, perDay: change / days, settled };
}

/** Where a series is going. */
export interface Ending {
  /** g and days. */
  readonly mass: number;
  readonly tau: number;
  /** The ends that fit the weighings as well as the scale reads, g. */
  readonly between: readonly [low: number, high: number];
}

interface Fit {
  readonly mass: number;
  readonly tau: number;
  readonly off: number;
}

/** For one time constant the best end and start are a straight line over e^(−t/τ). */
function fitWith(tau: number, series: readonly Weighing[]): Fit | undefined {
  const n = series.length;
  const shares = series.map(([day]) => Math.exp(-(day - series[0]![0]) / tau));
  const mean = (of: readonly number[]) => of.reduce((sum, one) => sum + one, 0) / n;
  const [ms, mm] = [mean(shares), mean(series.map(([, mass]) => mass))];
  let [spread, both] = [0, 0];
  series.forEach(([, mass], at) => {
    spread += (shares[at]! - ms) ** 2;
    both += (shares[at]! - ms) * (mass - mm);
  });
  if (!(spread > 1e-12)) return undefined;
  const slope = both / spread;
  const off = Math.sqrt(
    series.reduce((sum, [, mass], at) => sum + (mass - mm - slope * (shares[at]! - ms)) ** 2, 0) / n,
  );
  return { mass: mm - slope * ms, tau, off };
}

/** Golden section between two time constants: the fit has one valley there. */
function bestBetween(low: number, high: number, series: readonly Weighing[]): Fit | undefined {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [Math.log(low), Math.log(high)];
  const off = (at: number) => fitWith(Math.exp(at), series)?.off ?? Infinity;
  for (let step = 0; step < 60; step++) {
    const [left, right] = [b - golden * (b - a), a + golden * (b - a)];
    if (off(left) <= off(right)) b = right;
    else a = left;
  }
  return fitWith(Math.exp((a + b) / 2), series);
}

const steps = 160;
const fewest = 4;

/**
 * Estimates where a series ends, by an exponential approach.
 * @param reads what the scale reads to, g
 * @returns a refusal where the weighings do not bear it: too few, up and down, hardly a change, or too early to tell
 */
export function endingOf(series: readonly Weighing[], reads: number): Ending | Refused {
  if (series.length < fewest)
    return { refused: `It takes ${fewest} weighings or more to say where it is going.` };
  const masses = series.map(([, mass]) => mass);
  const way = masses.at(-1)! - masses[0]!;
  const back = masses.some((mass, at) =>
    masses.slice(at + 1).some((later) => (mass - later) * way > 2 * reads * Math.abs(way)),
  );
  if (back)
    return {
      refused:
        'The mass goes up and down: the air changes, or the piece was not always the same. There is no end to tell yet.',
    };
  if (Math.abs(way) < 5 * reads)
    return {
      refused: 'The whole change is hardly more than the scale can read, so there is no course to follow.',
    };
  const span = series.at(-1)![0] - series[0]![0];
  const [low, high] = [span / 40, span * 20];
  const fits: Fit[] = [];
  for (let step = 0; step <= steps; step++) {
    const fit = fitWith(low * (high / low) ** (step / steps), series);
    if (fit) fits.push(fit);
  }
  const best = fits.reduce((a, b) => (b.off < a.off ? b : a), fits[0]!);
  const ratio = (high / low) ** (1 / steps);
  const fine = bestBetween(best.tau / ratio, best.tau * ratio, series) ?? best;
  if (fine.off > 2 * reads && fine.off > 0.05 * Math.abs(way))
    return {
      refused:
        'The weighings do not lie on a course toward one end: the air changes, or one of them is misread.',
    };
  const ends = fits.filter(({ off }) => off <= Math.max(reads / 2, 1.5 * fine.off)).map(({ mass }) => mass);
  const between = [Math.min(fine.mass, ...ends), Math.max(fine.mass, ...ends)] as const;
  if (between[1] - between[0] > Math.abs(way) / 2)
    return {
      refused:
        'It is too early to say where it ends: ends far apart fit these weighings as well. Go on weighing.',
    };
  return { mass: fine.mass, tau: fine.tau, between };
}

/** Days until the mass is within `x` % of its end; 0 where it is. */
export function daysLeft(ending: Ending | Refused, now: number, x: number): number | undefined {
  if (isRefused(ending)) return undefined;
  return Math.max(
    0,
    daysUntilNear.compute({ d: Math.abs(now - ending.mass), m_e: ending.mass, tau: ending.tau, x }),
  );
}

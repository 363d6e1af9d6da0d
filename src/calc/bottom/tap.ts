/**
 * What a tap leaves of the panel's notes: how long they ring, which of them a soft knuckle starts, how far they swing.
 *
 *   T60 = 3 ln 10 / (pi eta f)                         until a swing is a thousandth (60 decibels less)
 *   W = |cos(pi f T) / (1 - 4 f^2 T^2)|                of a half-sine push that lasts T, against a push of no length
 *   v/v_0 = (h_0/h) W(f h/h_0) / W(f)                  speed of the first note, same push in the middle
 *   y/y_0 = (h_0/h) v/v_0                              how far it swings: the thicker one swings h/h_0 times as often
 *
 * eta: loss factor, share of its energy that a swing loses in a radian: about 0.006 to 0.01 along and 0.02 across the
 * grain at room moisture (Brémaud and others 2012, seen in the abstract). T: how long the knuckle stays on the wood, 1 to 3 ms by estimate; no measured
 * value was found. Cremer, Heckl and Petersson, Structure-Borne Sound.
 */
import { relation } from '../core/relation.ts';

/** Share of its energy that a swing of wood loses in a radian, across the grain. */
export const lossOfWood = 0.02;

const frequency = { unit: 'Hz', range: [20, 6000] } as const;
const contact = { unit: 'ms', range: [0.3, 5], name: 'time the knuckle stays on the wood' } as const;
const thickness = { unit: 'mm', range: [1, 25] } as const;

/** Time until a note has faded to a thousandth of its swing, s. */
export const ringTime = relation({
  id: 'tap-ring-time',
  title: 'How long a note rings',
  result: { symbol: 'T_60', tex: 'T_{60}', name: 'time until a thousandth is left', unit: 's' },
  inputs: {
    f: { ...frequency, name: 'frequency' },
    eta: { name: 'loss factor', unit: '1', range: [0.002, 0.1], tex: '\\eta' },
  },
  expression: '3 log(10) / (pi eta f)',
  compute: ({ f, eta }) => (3 * Math.LN10) / (Math.PI * eta * f),
  evidence: 'derived',
  source:
    'Fading of a swing with a loss factor (Cremer, Heckl and Petersson); for wood 0.006 to 0.02 (Brémaud and others 2012).',
  limits: 'The wood’s own loss. A loose edge, a lining and what the box stands on take more.',
});

/** Share of a push that acts at a frequency, 0 to 1: 1 for a push of no length. `T` in ms. */
function reach(f: number, T: number): number {
  const turns = (f * T) / 1000;
  const below = 1 - 4 * turns ** 2;
  // Where both are zero the share is a quarter of pi.
  return Math.abs(below) < 1e-9 ? Math.PI / 4 : Math.abs(Math.cos(Math.PI * turns) / below);
}

/** How much of a note a soft push starts, % of what a push of no length would. */
export const knuckleReach = relation({
  id: 'knuckle-reach',
  title: 'What a knuckle starts of a note',
  result: { symbol: 'W', name: 'share of the note that is started', unit: '%' },
  inputs: { f: { ...frequency, name: 'frequency' }, T: contact },
  expression: '100 abs(cos(pi f T) / (1 - 4 f^2 T^2))',
  compute: ({ f, T }) => 100 * reach(f, T),
  evidence: 'derived',
  source: 'Spectrum of a half-sine push. How long a knuckle stays on wood was not found measured.',
  limits:
    'A push that rises and falls as half a sine. A real knuckle is less regular, so the dips are less deep.',
});

const twoBottoms = {
  h: { ...thickness, name: 'bottom thickness' },
  h_0: { ...thickness, name: 'thickness to compare with' },
  f_0: { unit: 'Hz', range: [20, 1200], name: 'lowest note of the other' },
  T: contact,
} as const;
/** Highest note of the other, Hz: short of the first dip of the push, where there would be nothing to compare with. */
const beforeDip = (T: number) => 1400 / T;

/** How far the lowest note swings after a tap in the middle, % of another bottom's. */
export const firstSwing = relation({
  id: 'tap-first-swing',
  title: 'How far the lowest note swings',
  result: { symbol: 'y', name: 'swing against the other bottom', unit: '%' },
  inputs: twoBottoms,
  rangesGiven: ({ T }) => ({ f_0: [0, beforeDip(T)] }),
  expression:
    '100 (h_0 / h)^2 * abs(cos(pi f_0 T h / h_0) / (1 - 4 (f_0 T h / h_0)^2)) / abs(cos(pi f_0 T) / (1 - 4 f_0^2 T^2))',
  compute: ({ h, h_0, f_0, T }) => (100 * (h_0 / h) ** 2 * reach((f_0 * h) / h_0, T)) / reach(f_0, T),
  evidence: 'derived',
  source: 'One swing under a half-sine push: mass goes with h, frequency with h.',
  limits: 'Same wood, size, edges and push.',
});

/** How fast the wood moves in the lowest note after a tap in the middle, % of another bottom's. */
export const firstSpeed = relation({
  id: 'tap-first-speed',
  title: 'How fast the lowest note moves the wood',
  result: { symbol: 'v', name: 'speed against the other bottom', unit: '%' },
  inputs: twoBottoms,
  rangesGiven: ({ T }) => ({ f_0: [0, beforeDip(T)] }),
  expression:
    '100 h_0 / h * abs(cos(pi f_0 T h / h_0) / (1 - 4 (f_0 T h / h_0)^2)) / abs(cos(pi f_0 T) / (1 - 4 f_0^2 T^2))',
  compute: ({ h, h_0, f_0, T }) => (((100 * h_0) / h) * reach((f_0 * h) / h_0, T)) / reach(f_0, T),
  evidence: 'derived',
  source: 'One swing under a half-sine push: mass goes with h, frequency with h.',
  limits: 'Same wood, size, edges and push. How much of it the air makes audible is not in it.',
});

/** How far a bottom sags, % of another of thickness h_0 under the same load. */
export const sagShare = relation({
  id: 'sag-share',
  title: 'Sag against thickness',
  result: { symbol: 's', name: 'sag against the other bottom', unit: '%' },
  inputs: {
    h: { ...thickness, name: 'bottom thickness' },
    h_0: { ...thickness, name: 'thickness to compare with' },
  },
  expression: '100 (h_0 / h)^3',
  compute: ({ h, h_0 }) => 100 * (h_0 / h) ** 3,
  evidence: 'derived',
  source: 'Stiffness of a thin plate goes with h³ (Timoshenko and Woinowsky-Krieger, ch. 4).',
  limits: 'Same wood, size, edges and load; thinner than about 1/20 of the short side.',
});

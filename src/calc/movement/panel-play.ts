/**
 * The gap a maker has chosen, judged: what width it leaves, and what is left of it on the dampest day.
 *
 *   width  W = B − p          play on the dampest day  p_w = p − W C u          rise it allows  u = T/(W C)
 *
 * Symbols: W width of panel or lid (mm), B groove bottom to groove bottom (mm), p play today, both sides together
 * (mm), C movement per 1 % MC, u rise in moisture content (points), T taken off the width in all (mm).
 * Held fixed: the grooves, because walls do not change length. Exact here; widths are rounded down, gaps up.
 */
import { relation } from '../core/relation.ts';

const W = { name: 'width across the grain', unit: 'mm', range: [10, 600] } as const;
const C = { name: 'movement per 1 % moisture content', unit: '1', range: [0.0001, 0.006] } as const;
const p = { name: 'play today in all', unit: 'mm', range: [0, 20] } as const;

/** Width, mm, of a panel or lid that leaves so much play today. */
export const widthBesidePlay = relation({
  id: 'width-beside-play',
  title: 'Width that leaves the play you want',
  result: { symbol: 'W', name: W.name, unit: 'mm' },
  inputs: { B: { name: 'groove bottom to groove bottom', unit: 'mm', range: [20, 600] }, p },
  expression: 'B - p',
  compute: ({ B, p }) => B - p,
  evidence: 'geometry',
  source: 'What the panel does not fill is play.',
});

/** Play today, mm, both sides together, of a panel of that width. */
export const playBesideWidth = relation({
  id: 'play-beside-width',
  title: 'Play that a width leaves',
  result: { symbol: 'p', name: p.name, unit: 'mm' },
  inputs: { B: { name: 'groove bottom to groove bottom', unit: 'mm', range: [20, 600] }, W },
  expression: 'B - W',
  compute: ({ B, W }) => B - W,
  evidence: 'geometry',
  source: 'What the panel does not fill is play.',
});

/** Length, mm, of a panel held in grooves at both of its ends. */
export const lengthInGrooves = relation({
  id: 'length-in-grooves',
  title: 'Length of a panel held at both ends',
  result: { symbol: 'L', name: 'length along the grain', unit: 'mm' },
  inputs: {
    l: { name: 'inside length, wall to wall', unit: 'mm', range: [10, 1000] },
    g: { name: 'groove depth', unit: 'mm', range: [0, 20] },
    e: { name: 'room at both ends together', unit: 'mm', range: [0, 10] },
  },
  expression: 'l + 2 g - e',
  compute: ({ l, g, e }) => l + 2 * g - e,
  evidence: 'geometry',
  source: 'It reaches into both grooves and keeps a little room: wood hardly moves along the grain.',
});

/** Length of a sliding lid, mm: closed, it lies flush with the front and reaches into the groove of the back. */
export const slidingLength = relation({
  id: 'sliding-lid-length',
  title: 'Length of a sliding lid',
  result: { symbol: 'L', name: 'length of the lid', unit: 'mm' },
  inputs: {
    l: { name: 'inside length', unit: 'mm', range: [20, 1000] },
    t: { name: 'wall thickness', unit: 'mm', range: [2, 30] },
    g: { name: 'groove depth', unit: 'mm', range: [0, 20] },
  },
  expression: 'l + t + g',
  compute: ({ l, t, g }) => l + t + g,
  evidence: 'geometry',
  source: 'The inside, the front wall, and the depth of the back’s groove.',
});

/** Thickness, mm, of a panel’s edge that goes into a groove so wide. */
export const thicknessInGroove = relation({
  id: 'thickness-in-groove',
  title: 'Thickness that runs in the groove',
  result: { symbol: 'T', name: 'thickness of the edge', unit: 'mm' },
  inputs: {
    d: { name: 'width of the groove', unit: 'mm', range: [1, 30] },
    s: { name: 'slip', unit: 'mm', range: [0, 2] },
  },
  expression: 'd - s',
  compute: ({ d, s }) => d - s,
  evidence: 'geometry',
  source: 'A lid is thinner than its groove by 0.2 to 0.4 mm: common practice.',
});

/** Play on the dampest day, both sides together, mm; below zero the panel presses on its grooves. */
export const playAtDampest = relation({
  id: 'play-at-dampest',
  title: 'Play on the dampest day, both sides together',
  result: { symbol: 'p_w', name: 'play on the dampest day', unit: 'mm' },
  inputs: {
    p,
    W,
    C,
    u: { name: 'rise in moisture content from today', unit: '%', points: true, range: [0, 30] },
  },
  expression: 'p - W * C * u',
  compute: ({ p, W, C, u }) => p - W * C * u,
  evidence: 'derived',
  source: 'The play of today less what the panel grows.',
  limits:
    'The movement per point must hold for both moisture contents: the printed coefficient does from 6 to 14 %, the one taken from the total shrinkage from 0 to 30 %.',
});

/** Rise in moisture content, points, that uses up `T` mm taken off a panel: the swing a saying assumes without saying so. */
export const riseForAllowance = relation({
  id: 'rise-for-allowance',
  title: 'The rise that a given amount off allows',
  result: { symbol: 'u', name: 'rise in moisture content', unit: '%', points: true },
  inputs: {
    T: { name: 'taken off the width in all', unit: 'mm', range: [0.2, 20] },
    W,
    C,
  },
  expression: 'T / (W * C)',
  compute: ({ T, W, C }) => T / (W * C),
  evidence: 'derived',
  source: 'The coefficient method, solved for the moisture.',
  limits: 'Past 14 % moisture content the coefficient no longer holds.',
});

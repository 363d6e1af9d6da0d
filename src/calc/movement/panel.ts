/**
 * Panels and sliding lids in grooves: the gap that keeps them free in damp air and held in dry air.
 *
 *   play today  p = W C u + c            width to cut  W = (B − c)/(1 + C u)
 *   held central: engagement g − p/2 − W C f/2         crept to one side: g − p − W C f
 *
 * Symbols: W width of panel or lid (mm), C its movement per 1 % MC, u and f how many points of moisture content it
 * rises and falls from today over the year, c running allowance in all (mm), B groove bottom to groove bottom (mm),
 * g groove depth (mm). Held fixed: the grooves, because walls do not change length.
 * Gaps and depths are exact here; the caller rounds gaps and depths up, panels down.
 */
import { relation } from '../core/relation.ts';

/** Allowances and least engagements, mm: common practice, no source. */
export const panelPractice = {
  /** Free play left at each side of a panel on the dampest day. */
  panelAllowancePerSide: 0.25,
  /** Free play left in all beside a sliding lid on the dampest day. */
  lidAllowance: 0.3,
  /** Engagement at each side on the driest day, panel held central. */
  panelEngagement: 3,
  /** The same at the worse side, panel crept. */
  panelEngagementCrept: 1.5,
  /** Engagement of a sliding lid on the driest day at the worse side; a lid cannot be held central. */
  lidEngagement: 2,
} as const;

const W = { name: 'width across the grain', unit: 'mm', range: [10, 600] } as const;
const C = { name: 'movement per 1 % moisture content', unit: '1', range: [0.0001, 0.006] } as const;
const u = { name: 'rise in moisture content from today', unit: '%', points: true, range: [0, 30] } as const;
const f = { name: 'fall in moisture content from today', unit: '%', points: true, range: [0, 30] } as const;
const c = { name: 'running allowance in all', unit: 'mm', range: [0, 2] } as const;
const p = { name: 'play today in all', unit: 'mm', range: [0, 20] } as const;
const g = { name: 'groove depth', unit: 'mm', range: [1, 20] } as const;
const E_d = { name: 'engagement wanted on the driest day', unit: 'mm', range: [0.5, 6] } as const;
const derived = {
  evidence: 'derived',
  source:
    'The coefficient method, with the allowance that must be left on the dampest or the engagement on the driest day.',
  limits:
    'The movement per point must hold for both moisture contents: the printed coefficient does from 6 to 14 %, the one taken from the total shrinkage from 0 to 30 %.',
} as const;

/** Gap to leave today at each side of a panel, mm: half of what it will swell, and half the allowance (0.5 mm in all is common practice). */
export const gapPerSide = relation({
  id: 'gap-per-side',
  title: 'Gap to leave at each side of a panel',
  result: { symbol: 'a', name: 'gap per side today', unit: 'mm' },
  inputs: { W, C, u, c },
  expression: '(W * C * u + c) / 2',
  compute: ({ W, C, u, c }) => (W * C * u + c) / 2,
  ...derived,
});

/** Play to leave today beside a panel or sliding lid, both sides together, mm (allowance for a lid: 0.3 mm, common practice). */
export const playToday = relation({
  id: 'play-today',
  title: 'Play to leave today, both sides together',
  result: { symbol: 'p', name: p.name, unit: 'mm' },
  inputs: { W, C, u, c },
  expression: 'W * C * u + c',
  compute: ({ W, C, u, c }) => W * C * u + c,
  ...derived,
});

/** Play on the driest day, both sides together, mm. */
export const playAtDriest = relation({
  id: 'play-at-driest',
  title: 'Play on the driest day, both sides together',
  result: { symbol: 'p_d', name: 'play on the driest day', unit: 'mm' },
  inputs: { W, C, f, p },
  expression: 'p + W * C * f',
  compute: ({ W, C, f, p }) => p + W * C * f,
  ...derived,
});

/** Width to cut today, mm, so that on the dampest day the allowance is left between the groove bottoms. */
export const widthToCut = relation({
  id: 'width-to-cut',
  title: 'Width to cut today',
  result: { symbol: 'W', name: W.name, unit: 'mm' },
  inputs: { B: { name: 'groove bottom to groove bottom', unit: 'mm', range: [20, 600] }, C, u, c },
  expression: '(B - c) / (1 + C * u)',
  compute: ({ B, C, u, c }) => (B - c) / (1 + C * u),
  ...derived,
});

/** Engagement at each side on the driest day, panel held central, mm; below zero it has dropped out. */
export const engagementCentral = relation({
  id: 'engagement-central',
  title: 'Engagement on the driest day, panel held central',
  result: { symbol: 'E_d', name: 'engagement on the driest day', unit: 'mm' },
  inputs: { g, p, W, C, f },
  expression: 'g - (p + W * C * f) / 2',
  compute: ({ g, p, W, C, f }) => g - (p + W * C * f) / 2,
  ...derived,
});

/** Engagement at the worse side on the driest day, panel or lid crept to the other, mm. */
export const engagementCrept = relation({
  id: 'engagement-crept',
  title: 'Engagement on the driest day, crept to one side',
  result: { symbol: 'E_d', name: 'engagement on the driest day', unit: 'mm' },
  inputs: { g, p, W, C, f },
  expression: 'g - (p + W * C * f)',
  compute: ({ g, p, W, C, f }) => g - (p + W * C * f),
  ...derived,
});

/** Groove depth, mm, that keeps the wanted engagement on the driest day with the panel held central (3 mm is common practice). */
export const grooveDepthCentral = relation({
  id: 'groove-depth-central',
  title: 'Groove depth for a panel held central',
  result: { symbol: 'g', name: g.name, unit: 'mm' },
  inputs: { p, W, C, f, E_d },
  expression: 'E_d + (p + W * C * f) / 2',
  compute: ({ p, W, C, f, E_d }) => E_d + (p + W * C * f) / 2,
  ...derived,
});

/** Groove depth, mm, that keeps the wanted engagement with the panel crept (1.5 mm) or with a sliding lid (2 mm, common practice). */
export const grooveDepthCrept = relation({
  id: 'groove-depth-crept',
  title: 'Groove depth for a panel free to creep, or a sliding lid',
  result: { symbol: 'g', name: g.name, unit: 'mm' },
  inputs: { p, W, C, f, E_d },
  expression: 'E_d + p + W * C * f',
  compute: ({ p, W, C, f, E_d }) => E_d + p + W * C * f,
  ...derived,
});

/** Widest panel, mm, for which taking `T` mm off its width in all is enough. Use a rise above 0: with none, any width will do. */
export const widestForAllowance = relation({
  id: 'widest-for-allowance',
  title: 'Widest panel for which a given amount off is enough',
  result: { symbol: 'W', name: 'widest panel', unit: 'mm' },
  inputs: {
    T: { name: 'taken off the width in all', unit: 'mm', range: [0.2, 6] },
    C,
    u: { ...u, range: [0.1, 30] },
    c,
  },
  expression: '(T - c) / (C * u)',
  compute: ({ T, C, u, c }) => (T - c) / (C * u),
  ...derived,
});

/**
 * Glue area of one corner by kind of joint, and what kind of grain meets there.
 *
 *   finger     A = (n − 1) t²                     long grain on long grain, at the cheeks
 *   dovetail   A = N t² √(1 + 1/s²)               the same, slanted 1 in s
 *   miter      A = H t √2                         end grain on end grain
 *   butt       A = H t                            end grain on side grain
 *   rabbet     A = H (2 t − r)                    end grain on side grain, at both of its faces
 *
 * Symbols: A area (mm²), H height of the corner (mm), t thickness of both walls (mm), n fingers of both walls together,
 * N slanted cheeks, s slope as 1 in s, r what the rabbet leaves of its wall (mm).
 * A finger joint also has H t of end grain on side grain, at the bottoms of its slots.
 * Held fixed: both walls are equally thick, the grain runs along them, fingers reach through.
 */
import { relation } from '../core/relation.ts';

const H = { name: 'height of the corner', unit: 'mm', range: [10, 600] } as const;
const t = { name: 'wall thickness', unit: 'mm', range: [1, 30] } as const;

/** Long grain on long grain in a finger joint, mm². One finger alone has none: that is a butt joint. */
export const fingerGlueArea = relation({
  id: 'finger-glue-area',
  title: 'Long-grain glue area of a finger joint',
  result: { symbol: 'A', name: 'long-grain glue area', unit: 'mm^2' },
  inputs: { n: { name: 'number of fingers', unit: '1', range: [1, 200], whole: true }, t },
  expression: '(n - 1) t^2',
  compute: ({ n, t }) => (n - 1) * t ** 2,
  evidence: 'geometry',
  source: 'Between two neighbors lies one cheek, as long and as deep as the wall is thick.',
  limits: 'Counts area only. How strong the glue is depends on fit, pressure and wood.',
});

/** End grain on end grain in a plain miter, mm². */
export const miterGlueArea = relation({
  id: 'miter-glue-area',
  title: 'Glue area of a plain miter',
  result: { symbol: 'A', name: 'end-grain glue area', unit: 'mm^2' },
  inputs: { H, t },
  expression: 'H t sqrt(2)',
  compute: ({ H, t }) => H * t * Math.SQRT2,
  evidence: 'geometry',
  source: 'The cut at 45° is √2 times as wide as the wall is thick.',
});

/** End grain on side grain in a butt joint, mm²; also at the slot bottoms of a finger joint. */
export const buttGlueArea = relation({
  id: 'butt-glue-area',
  title: 'Glue area of a butt joint',
  result: { symbol: 'A', name: 'end-to-side glue area', unit: 'mm^2' },
  inputs: { H, t },
  expression: 'H t',
  compute: ({ H, t }) => H * t,
  evidence: 'geometry',
  source: 'The end of one wall against the face of the other.',
});

/** End grain on side grain in a rabbet joint, mm². */
export const rabbetGlueArea = relation({
  id: 'rabbet-glue-area',
  title: 'Glue area of a rabbet joint',
  result: { symbol: 'A', name: 'end-to-side glue area', unit: 'mm^2' },
  inputs: { H, t, r: { name: 'thickness left beside the rabbet', unit: 'mm', range: [0.5, 30] } },
  expression: 'H * (2 t - r)',
  compute: ({ H, t, r }) => H * (2 * t - r),
  evidence: 'geometry',
  source: 'The end of one wall on the rabbet’s floor, and its face against the shoulder, t − r wide.',
});

/** Long grain on long grain in a through dovetail, mm². The slope adds almost nothing: 1.4 % at 1 in 6. */
export const dovetailGlueArea = relation({
  id: 'dovetail-glue-area',
  title: 'Long-grain glue area of a through dovetail',
  result: { symbol: 'A', name: 'long-grain glue area', unit: 'mm^2' },
  inputs: {
    N: { name: 'slanted cheeks', unit: '1', range: [2, 100], whole: true },
    t,
    s: { name: 'slope, 1 in', unit: '1', range: [3, 12] },
  },
  expression: 'N t^2 sqrt(1 + 1 / s^2)',
  compute: ({ N, t, s }) => N * t ** 2 * Math.sqrt(1 + 1 / s ** 2),
  evidence: 'geometry',
  source: 'A cheek that slants 1 in s is longer by that root.',
});

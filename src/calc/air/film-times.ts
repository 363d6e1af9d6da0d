/**
 * Two closed answers for a piece behind a film, of still air or of finish: how long a change takes, and how much of a
 * season gets through. Each adds the delay inside the wood to the delay at its faces.
 *
 *   t_90 = 0.212 T²/D + 1.15 T/S
 *   kept = 100/√(1 + x²),   x = (π T/P) (1/S + T/(6 D))
 *
 * Symbols: T thickness (mm), D diffusion (mm²/day), S surface coefficient of each face (mm/day), P period (day).
 * Held fixed: both faces alike and in the same air, D, temperature. Both are checked against the exact series and the
 * exact wave of `diffusion-series.ts`.
 */
import { relation } from '../core/relation.ts';

const T = { name: 'thickness', unit: 'mm', range: [2, 100] } as const;
const D = { name: 'diffusion coefficient', unit: 'mm^2/day', range: [0.5, 20] } as const;
const S = { name: 'surface coefficient', unit: 'mm/day', range: [0.02, 100] } as const;

/** Time to nine tenths of a sudden change, the film of air or finish counted. */
export const ninetyTimeBehindFilm = relation({
  id: 'moisture-ninety-time-behind-film',
  title: 'Days until nine tenths of a change in moisture has happened',
  result: { symbol: 't_90', name: 'time to nine tenths of the change', unit: 'day' },
  inputs: { T, D, S },
  expression: '0.2120 T^2 / D + 1.15 T / S',
  compute: ({ T, D, S }) => (0.212 * T * T) / D + (1.15 * T) / S,
  evidence: 'derived',
  source: 'The two limits of the series for a slab, all resistance inside and all at the faces, added.',
  limits:
    'Both faces alike. Within 3 % of the series, but the diffusion coefficient is known to a factor of about two, and so is the time.',
});

/** Share of a yearly swing that the mean moisture of the piece keeps. */
export const seasonKept = relation({
  id: 'season-kept',
  title: 'Share of a season’s swing that the wood still makes',
  result: { symbol: 'k', name: 'share of the swing kept', unit: '%' },
  inputs: {
    T: { ...T, range: [2, 30] },
    D,
    S,
    P: { name: 'period', unit: 'day', range: [300, 800] },
  },
  expression: '100 / sqrt(1 + (pi T / P * (1 / S + T / (6 D)))^2)',
  compute: ({ T, D, S, P }) => 100 / Math.sqrt(1 + ((Math.PI * T * (1 / S + T / (6 * D))) / P) ** 2),
  evidence: 'derived',
  source: 'The wave of a slab whose inside and faces resist one behind the other.',
  limits:
    'Both faces alike. Within 1.2 points of the exact wave while T² is under half of D P (25 mm in a wood such as cherry), and within 5 points for thicker or denser pieces; not meant for days and weeks. A film without cracks.',
});

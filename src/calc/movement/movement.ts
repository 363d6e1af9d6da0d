/**
 * Movement: how much wood changes size when its moisture changes. (Over 150 lines: two methods, their link, the
 * ring angle and the choice between the methods are one subject, and the choice needs all of them.)
 *
 *   ΔD = D · C · (M_f − M_i)                         coefficient method, 6 to 14 % MC
 *   ΔD = D · (M_f − M_i) / (3000/S − 30 + M_i)       shrinkage method, 0 to 30 % MC
 *   C  = (S/3000) / (1 − (S/100)·20/30)              the same line, referred to the size at 10 % MC
 *   C(θ) = C_T cos²θ + C_R sin²θ                     rings at θ to the face: 0° flat-sawn, 90° quarter-sawn
 *
 * Symbols: D size today (mm), ΔD its change (mm), M_i and M_f moisture content before and after (%), C change per
 * 1 % MC as a fraction, S shrinkage green to oven-dry (%), T along the rings, R across them, θ ring angle (degrees).
 * Held fixed: the piece is free to move and equally moist throughout; the rings run straight across it.
 */
import type { Refused } from '../core/refusal.ts';
import { relation } from '../core/relation.ts';
import type { Wood } from '../core/wood.ts';

/** Moisture contents, %, between which the printed coefficients hold (Wood Handbook Table 13-5). */
export const coefficientRange = [6, 14] as const;
/** Moisture content, %, at which wood stops growing, taken for calculation (Wood Handbook eq. 4-9). */
export const fiberSaturation = 30;

const D = { name: 'size today', unit: 'mm', range: [1, 1000] } as const;
const C = { name: 'movement per 1 % moisture content', unit: '1', range: [0.0001, 0.006] } as const;
const S = { name: 'shrinkage green to oven-dry', unit: '%', range: [1, 15] } as const;
const moisture = (name: string, range: readonly [number, number]) => ({ name, unit: '%', range }) as const;
const change = { symbol: 'dD', tex: '\\Delta D', name: 'change of size', unit: 'mm' } as const;
const theta = {
  name: 'angle of the rings to the face',
  unit: 'deg',
  range: [0, 90],
  tex: '\\theta',
} as const;
const e_T = { name: 'movement along the rings', unit: '1', range: [0, 0.15] } as const;
const e_R = { name: 'movement across the rings', unit: '1', range: [0, 0.1] } as const;
const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** Change of size, mm, by the printed coefficient; both moisture contents within 6 to 14 % (Wood Handbook eq. 13-2). */
export const changeByCoefficient = relation({
  id: 'change-by-coefficient',
  title: 'Change of size by the coefficient method',
  result: change,
  inputs: {
    D,
    C,
    M_i: moisture('moisture content now', coefficientRange),
    M_f: moisture('moisture content then', coefficientRange),
  },
  expression: 'D * C * (M_f - M_i)',
  compute: ({ D, C, M_i, M_f }) => D * C * (M_f - M_i),
  evidence: 'published',
  source: 'wood-handbook-2010',
  limits: 'Holds from 6 to 14 % moisture content; the coefficient is an average, and single boards differ.',
});

/** Change of size, mm, from the shrinkage green to oven-dry; 0 to 30 % MC (Wood Handbook eq. 13-3; the formula from memory, and exact for eq. 4-9). */
export const changeByShrinkage = relation({
  id: 'change-by-shrinkage',
  title: 'Change of size by the shrinkage method',
  result: change,
  inputs: {
    D,
    S,
    M_i: moisture('moisture content now', [0, fiberSaturation]),
    M_f: moisture('moisture content then', [0, fiberSaturation]),
  },
  expression: 'D * (M_f - M_i) / (3000 / S - 30 + M_i)',
  compute: ({ D, S, M_i, M_f }) => (D * (M_f - M_i)) / (3000 / S - 30 + M_i),
  evidence: 'derived',
  source: 'wood-handbook-2021',
  limits:
    'Takes shrinkage as a straight line from 30 % moisture content down to 0. Not for western redcedar, northern white-cedar, redwood, teak or mahogany, which stop growing well below 30 %.',
});

/** Coefficient per 1 % MC from the shrinkage, %: the straight line of eq. 4-9 referred to the size at 10 % MC. Not for woods of low fiber saturation. */
export const coefficientFromShrinkage = relation({
  id: 'coefficient-from-shrinkage',
  title: 'Coefficient from shrinkage',
  result: { symbol: 'C', name: C.name, unit: '1' },
  inputs: { S },
  expression: '(S / 3000) / (1 - (S / 100) * 20 / 30)',
  compute: ({ S }) => S / 3000 / (1 - ((S / 100) * 20) / 30),
  evidence: 'derived',
  source: 'wood-handbook-2021',
  limits: changeByShrinkage.limits!,
});

/** Shrinkage, %, from the coefficient: the inverse of `coefficientFromShrinkage`. */
export const shrinkageFromCoefficient = relation({
  id: 'shrinkage-from-coefficient',
  title: 'Shrinkage from coefficient',
  result: { symbol: 'S', name: S.name, unit: '%' },
  inputs: { C },
  expression: '3000 * C / (1 + 20 * C)',
  compute: ({ C }) => (3000 * C) / (1 + 20 * C),
  evidence: 'derived',
  source: 'wood-handbook-2021',
  limits: changeByShrinkage.limits!,
});

/** Movement per 1 % MC as a fraction of the size at `M_i` % MC: the shrinkage method, in the form that the relations of `panel.ts` take. */
export const perPointFromShrinkage = relation({
  id: 'per-point-from-shrinkage',
  title: 'Movement per point by the shrinkage method',
  result: { symbol: 'C', name: C.name, unit: '1' },
  inputs: { S, M_i: moisture('moisture content now', [0, fiberSaturation]) },
  expression: '1 / (3000 / S - 30 + M_i)',
  compute: ({ S, M_i }) => 1 / (3000 / S - 30 + M_i),
  evidence: 'derived',
  source: 'wood-handbook-2021',
  limits: changeByShrinkage.limits!,
});

const ringAngle = {
  inputs: { e_T, e_R, theta },
  evidence: 'derived',
  source: 'The two movements turned through the ring angle, as any strain is turned.',
  limits:
    'Takes the rings as straight across the piece, so the piece must be small against its distance from the pith.',
} as const;

/** Movement across the width of a board whose rings meet the face at θ degrees, 0 to 90; any of coefficient, shrinkage or strain in, the same out. */
export const movementOfWidth = relation({
  id: 'movement-of-width',
  title: 'Movement of the width by ring angle',
  result: { symbol: 'e_w', name: 'movement of the width', unit: '1' },
  expression: 'e_T * cos(theta)^2 + e_R * sin(theta)^2',
  compute: ({ e_T, e_R, theta }) => e_T * Math.cos(radians(theta)) ** 2 + e_R * Math.sin(radians(theta)) ** 2,
  ...ringAngle,
});

/** Movement of the thickness of the same board. */
export const movementOfThickness = relation({
  id: 'movement-of-thickness',
  title: 'Movement of the thickness by ring angle',
  result: { symbol: 'e_t', name: 'movement of the thickness', unit: '1' },
  expression: 'e_T * sin(theta)^2 + e_R * cos(theta)^2',
  compute: ({ e_T, e_R, theta }) => e_T * Math.sin(radians(theta)) ** 2 + e_R * Math.cos(radians(theta)) ** 2,
  ...ringAngle,
});

/** Share of the movement of a flat-sawn width that a quarter-sawn one of the same wood does not make, %. */
export const quarterSawnSaving = relation({
  id: 'quarter-sawn-saving',
  title: 'What quarter-sawn wood saves of the movement',
  result: { symbol: 'q', name: 'share of the movement saved', unit: '%' },
  inputs: { e_T: { ...e_T, range: [0.0001, 0.15] }, e_R },
  expression: '100 (1 - e_R / e_T)',
  compute: ({ e_T, e_R }) => 100 * (1 - e_R / e_T),
  evidence: 'derived',
  source: 'The movement of the width at 90° beside that at 0°.',
  limits: 'Printed figures are averages of a wood; single boards differ.',
});

/** How far a square corner leaves square (diamonding), mm per mm of face (radians), when `e_T` and `e_R` are the movements of the change in question. */
export const outOfSquare = relation({
  id: 'out-of-square',
  title: 'How far a square strip leaves square',
  result: { symbol: 'gamma', tex: '\\gamma', name: 'out of square, per mm of face', unit: '1' },
  expression: '(e_T - e_R) * sin(2 * theta)',
  compute: ({ e_T, e_R, theta }) => (e_T - e_R) * Math.sin(2 * radians(theta)),
  ...ringAngle,
});

/** Whether both moisture contents, %, lie where the printed coefficient holds. */
export const coefficientHolds = (from: number, to: number): boolean =>
  Math.min(from, to) >= coefficientRange[0] && Math.max(from, to) <= coefficientRange[1];

/** What is known about one direction of one wood. */
export interface DirectionFigures {
  /** Fraction per 1 % MC. */
  readonly coefficient?: number | undefined;
  /** Green to oven-dry, %. */
  readonly shrinkage?: number | undefined;
  /** See `Wood.lowFiberSaturation`. */
  readonly lowFiberSaturation?: boolean | undefined;
}

/** The figures for the width of a board of this wood whose rings meet the face at `angle` degrees: 0 flat-sawn, 45 rift-sawn, 90 quarter-sawn. */
export function widthFigures(wood: Wood, angle: number): DirectionFigures {
  const turned = (tangential: number | undefined, radial: number | undefined) =>
    tangential === undefined || radial === undefined
      ? undefined
      : movementOfWidth.compute({ e_T: tangential, e_R: radial, theta: angle });
  return {
    coefficient: turned(wood.tangentialCoefficient?.value, wood.radialCoefficient?.value),
    shrinkage: turned(wood.tangentialShrinkage?.value, wood.radialShrinkage?.value),
    lowFiberSaturation: wood.lowFiberSaturation,
  };
}

/** A change of size, how it was found and why that way. */
export interface Movement {
  /** mm; growth is positive. */
  readonly change: number;
  readonly method: 'coefficient' | 'shrinkage';
  /** One sentence for the page. */
  readonly because: string;
}

/**
 * Change of a size of `dimension` mm from `from` to `to` % MC, by the method that is valid there: the coefficient
 * when both lie within 6 to 14 % and one is known, else the shrinkage. Refuses above fiber saturation (30 %),
 * below 0, for a size that is not above 0, for anything that is no number, and where no valid figure is known.
 */
export function movement(
  dimension: number,
  from: number,
  to: number,
  figures: DirectionFigures,
): Movement | Refused {
  if (!(dimension > 0 && dimension < Infinity)) return { refused: 'The size must be more than 0.' };
  if (Number.isNaN(from) || Number.isNaN(to))
    return { refused: 'Both moisture contents must be numbers, in percent.' };
  if (from < 0 || to < 0) return { refused: 'Moisture content cannot be below 0 %: that is oven-dry wood.' };
  if (from > fiberSaturation || to > fiberSaturation)
    return {
      refused:
        'Above about 30 % the cell walls are full and wood no longer changes size. Give moisture contents of 30 % or less.',
    };
  const { coefficient, shrinkage, lowFiberSaturation } = figures;
  const inside = coefficientHolds(from, to);
  if (inside && coefficient !== undefined)
    return {
      change: changeByCoefficient.compute({ D: dimension, C: coefficient, M_i: from, M_f: to }),
      method: 'coefficient',
      because: 'Both moisture contents lie between 6 and 14 %, where the printed coefficient holds.',
    };
  if (lowFiberSaturation)
    return {
      refused: `This wood stops growing well below 30 % moisture content, so the shrinkage method would understate its movement${inside ? ', and no coefficient is known for it' : ', and its coefficient holds only from 6 to 14 %'}.`,
    };
  if (shrinkage !== undefined)
    return {
      change: changeByShrinkage.compute({ D: dimension, S: shrinkage, M_i: from, M_f: to }),
      method: 'shrinkage',
      because: inside
        ? 'No coefficient is known for this wood, so its total shrinkage is taken as a straight line.'
        : 'A moisture content lies outside 6 to 14 %, where the coefficient does not hold, so the total shrinkage is taken as a straight line from 30 % down.',
    };
  return {
    refused: inside
      ? 'No movement figure is known for this wood.'
      : 'The coefficient holds only from 6 to 14 % moisture content, and no shrinkage figure is known for this wood.',
  };
}

/** How far a piece moves in a year, mm, from what it grows and what it shrinks from today. */
export const yearlySwing = relation({
  id: 'yearly-swing',
  title: 'How far a piece moves in a year',
  result: { symbol: 'x', name: 'movement over the year', unit: 'mm' },
  inputs: {
    u: { name: 'change from today to the dampest', unit: 'mm', range: [-100, 100] },
    d: { name: 'change from today to the driest', unit: 'mm', range: [-100, 100] },
  },
  expression: 'u - d',
  compute: ({ u, d }) => u - d,
  evidence: 'geometry',
  source: 'Growth counts up, shrinkage down.',
});

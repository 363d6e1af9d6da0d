/**
 * Is the fence of a cross-cut square to the blade? Four edges of a panel are cut in turn, each edge just cut held to the
 * fence for the next cut; the fifth cut takes a strip off the first edge. Each turn adds the fence's error, so the strip
 * carries it four times.
 *
 *   e = atan((A − B) / L) / 4       error of the fence
 *   u = √2 m / (4 L)                how far e may be off, where each width is measured to ± m
 *   x = P tan e                     how far to move the fence
 *
 *   the strip:   A ┌───────────────────────────┐ B      A at the end that was cut first, B at the other
 *                  └───────────────────────────┘        L apart
 *
 * Symbols: A and B widths of the strip, L the distance between them, m error of a measured width, P from the fence's
 * pivot to where it is moved (mm); e and u degrees. e is above zero where the strip is wider at the end cut first.
 * Held fixed: the panel is stiff and its edges are straight, no dust lies between edge and fence, the blade does not bend.
 */
import { relation } from '../core/relation.ts';

const degrees = 180 / Math.PI;
const width = { unit: 'mm', range: [1, 60] } as const;
const A = { ...width, name: 'width of the strip at the end cut first' } as const;
const B = { ...width, name: 'width of the strip at its other end' } as const;
const L = { name: 'length between the two measurements', unit: 'mm', range: [100, 1500] } as const;
/** The strip is nearly of one width: more than this is no error of a fence. */
const nearly = (A: number) => [A - 10, A + 10] as const;
const source = 'Four turns by a right angle and the error each; the fifth cut shows their sum.';
const limits =
  'The panel must be stiff and its edges straight; dust at the fence or a blade that bends spoils it.';

/** Error of the fence, degrees. */
export const fenceError = relation({
  id: 'fence-error',
  title: 'Error of the fence, by five cuts',
  result: { symbol: 'e', name: 'error of the fence', unit: 'deg' },
  inputs: { A, B, L },
  rangesGiven: ({ A }) => ({ B: nearly(A) }),
  expression: 'atan((A - B) / L) / 4',
  compute: ({ A, B, L }) => (degrees * Math.atan((A - B) / L)) / 4,
  evidence: 'derived',
  source,
  limits,
});

/** How far the error may be off, degrees, from the error of a measured width. */
export const fenceUncertainty = relation({
  id: 'fence-uncertainty',
  title: 'How sure the five cuts are',
  result: { symbol: 'u', name: 'uncertainty of the error', unit: 'deg' },
  inputs: { m: { name: 'error of a measured width', unit: 'mm', range: [0, 1] }, L },
  expression: 'atan(sqrt(2) * m / L) / 4',
  compute: ({ m, L }) => (degrees * Math.atan((Math.SQRT2 * m) / L)) / 4,
  evidence: 'derived',
  source: 'Two widths, each off by its own error: their difference is off by √2 times as much.',
  limits: 'Only what the measuring adds. Bowed edges and dust come on top.',
});

/** How far to move the fence, mm, at a distance from its pivot. */
export const fenceMove = relation({
  id: 'fence-move',
  title: 'How far to move the fence',
  result: { symbol: 'x', name: 'move at the far end of the fence', unit: 'mm' },
  inputs: { P: { name: 'from the pivot to where it is moved', unit: 'mm', range: [100, 1500] }, A, B, L },
  rangesGiven: ({ A }) => ({ B: nearly(A) }),
  expression: 'P * tan(atan((A - B) / L) / 4)',
  compute: ({ P, A, B, L }) => P * Math.tan(Math.atan((A - B) / L) / 4),
  evidence: 'derived',
  source,
  limits,
});

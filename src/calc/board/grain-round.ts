/**
 * By how much a line of the figure misses its continuation at a corner of the box.
 *
 *   e_k = k tan a                           neighbors that lay one saw cut apart
 *   e_4 = (2 (L + W) + 3 k) tan a           the fourth corner of one strip: its end meets its beginning
 *   e_b = (k + 2 p) / tan r                 a corner where two leaves of one board meet, opened like a book
 *
 * Symbols: k what the cut takes off the face (mm), a slope of the line to the edge of the board (degrees), L, W outside
 * length and width (mm), p planed off each of the two sawn faces (mm), r angle of the rings to the face (degrees).
 * Held fixed: the line is straight over the length in question, and the rings are flat over the few mm between the leaves.
 * All are shifts up or down the corner. A wavy line comes back by chance; a straight one does not.
 */
import { relation } from '../core/relation.ts';

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const size = { unit: 'mm', range: [20, 2000] } as const;
const k = { name: 'taken off the face by a saw cut', unit: 'mm', range: [0.2, 10] } as const;
const a = { name: 'slope of the figure to the edge', unit: 'deg', range: [0, 20] } as const;
const result = { symbol: 'e', name: 'step of the line at the corner', unit: 'mm' } as const;

/** Step of a line between two walls that one saw cut parted, mm. */
export const stepAtCut = relation({
  id: 'step-at-cut',
  title: 'Step of the figure at a cut',
  result,
  inputs: { k, a },
  expression: 'k * tan(a)',
  compute: ({ k, a }) => k * Math.tan(radians(a)),
  evidence: 'geometry',
  source: 'The line rises by its slope over the wood that became dust.',
});

/** Step of a line where the end of a strip meets its beginning, mm. */
export const stepAtFourth = relation({
  id: 'step-at-fourth',
  title: 'Step of the figure at the fourth corner',
  result,
  inputs: { L: { ...size, name: 'outside length' }, W: { ...size, name: 'outside width' }, k, a },
  expression: '(2 (L + W) + 3 k) * tan(a)',
  compute: ({ L, W, k, a }) => (2 * (L + W) + 3 * k) * Math.tan(radians(a)),
  evidence: 'geometry',
  source: 'The line rises by its slope over the whole strip.',
  limits: 'A straight line. A wavy one may come back by chance.',
});

/** Step of the figure where two leaves meet that were opened like a book, mm. */
export const stepBetweenLeaves = relation({
  id: 'step-between-leaves',
  title: 'Step of the figure between two leaves',
  result,
  inputs: {
    k: { ...k, name: 'kerf of the resaw' },
    p: { name: 'planed off each sawn face', unit: 'mm', range: [0, 10] },
    r: { name: 'angle of the rings to the face', unit: 'deg', range: [15, 90] },
  },
  expression: '(k + 2 p) / tan(r)',
  // The tangent of 90° is only nearly without end: the sum of the other angle gives a clean 0.
  compute: ({ k, p, r }) => (k + 2 * p) * Math.tan(radians(90 - r)),
  evidence: 'geometry',
  source: 'A ring that leans runs sideways through the wood that is gone between the two faces.',
  limits:
    'Rings flatter than 15° to the face bend too much within the cut: the leaves then show two figures.',
});

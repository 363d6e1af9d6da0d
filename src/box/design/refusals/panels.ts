/** What makes the bottom, the lid's panel or their grooves impossible. */

import { practice } from '../../core/practice.ts';
import type { Values } from '../../whole/index.ts';
import { both, type Condition } from '../refusal.ts';

const inGroove = (v: Values) => v.bottomSeat === 'groove';
const slides = (v: Values) => v.kind === 'sliding';
/** Least lips that makers accept, mm: common practice, 5 mm below a bottom and 1/8 in beside a lid. */
const leastLip = { bottomLip: 5, lidLip: 3.2 } as const;
/** Least lid that can be worked, mm: ours. */
const leastLid = 3;

/** Anything below this counts as nothing, mm: finer than wood is worked. */
const leastSize = 0.1;

/** A size that must be more than nothing; `to` mends it. */
const something = (
  id: string,
  field: 'bottomThickness' | 'bottomTongue' | 'bottomLip' | 'lidLip' | 'grooveDepth' | 'lidGrooveDepth',
  what: string,
  to: (v: Values) => number,
  applies: (v: Values) => boolean = () => true,
): Condition => ({
  id,
  breaks: (v) => applies(v) && !(v[field] >= leastSize),
  what: () => what,
  field: () => field,
  limit: 'least',
  to,
});

const throughWall = (id: string, field: 'grooveDepth' | 'lidGrooveDepth', name: string): Condition => ({
  id,
  breaks: (v) => v.wall > 0 && v[field] >= v.wall,
  what: (v) =>
    `The ${name} is ${both(v[field])} deep and the wall ${both(v.wall)} thick: it comes out of the other face.`,
  field: () => field,
  limit: 'most',
  // A third of the wall is common practice.
  to: (v) => v.wall / 3,
});

/** A gap that leaves nothing of the panel in its groove. */
const fallsOut = (
  id: string,
  field: 'bottomGap' | 'lidPlay',
  sides: 1 | 2,
  depth: 'grooveDepth' | 'lidGrooveDepth',
  name: string,
  applies: (v: Values) => boolean,
): Condition => ({
  id,
  breaks: (v) => applies(v) && v[depth] > 0 && v[field] / sides >= v[depth],
  what: (v) =>
    `The ${name} falls out: ${both(v[field] / sides)} of room on each side, and grooves ${both(v[depth])} deep.`,
  field: () => field,
  limit: 'most',
  to: (v) => (sides * v[depth]) / 4,
});

const negativeGap = (
  id: string,
  field: 'bottomGap' | 'lidPlay',
  name: string,
  applies: (v: Values) => boolean,
): Condition => ({
  id,
  breaks: (v) => applies(v) && v[field] < 0,
  what: () => `The ${name} is wider than the room between its grooves.`,
  field: () => field,
  limit: 'least',
  to: () => 0,
});

const floats = (v: Values) => v.bottomFit === 'floating';

export const panelConditions: readonly Condition[] = [
  something('no-bottom', 'bottomThickness', 'Without thickness there is no bottom.', () => 4),
  something('no-tongue', 'bottomTongue', 'Nothing of the bottom enters its groove.', (v) =>
    v.bottomThickness >= leastSize ? Math.min(v.bottomThickness, 4) : 4,
  ),
  {
    id: 'tongue-thicker-than-bottom',
    breaks: (v) => inGroove(v) && v.bottomThickness >= leastSize && v.bottomTongue > v.bottomThickness + 1e-6,
    what: (v) =>
      `The bottom is ${both(v.bottomThickness)} thick and cannot have an edge of ${both(v.bottomTongue)}.`,
    field: () => 'bottomTongue',
    limit: 'most',
    to: (v) => v.bottomThickness,
  },
  something(
    'no-lip-below-bottom',
    'bottomLip',
    'No wood is left below the bottom’s groove, so the bottom would fall out.',
    () => leastLip.bottomLip,
    inGroove,
  ),
  {
    id: 'bottom-hangs-below',
    breaks: (v) => v.bottomLip + v.bottomTongue < v.bottomThickness - 1e-6,
    what: (v) =>
      `The bottom would hang ${both(v.bottomThickness - v.bottomLip - v.bottomTongue)} below the walls.`,
    field: () => 'bottomLip',
    limit: 'least',
    to: (v) => v.bottomThickness - v.bottomTongue,
  },
  something('no-groove', 'grooveDepth', 'The bottom has no groove to stand in.', () => 2),
  throughWall('groove-through-wall', 'grooveDepth', 'bottom’s groove'),
  {
    id: 'rabbet-floating',
    breaks: (v) => v.bottomSeat === 'rabbet' && floats(v),
    what: () => 'A bottom that floats in a rabbet falls out: nothing holds it from below.',
    field: () => 'bottomFit',
    limit: 'choose',
    to: () => 'glued',
  },
  negativeGap('bottom-too-wide', 'bottomGap', 'bottom', floats),
  fallsOut('bottom-falls-out', 'bottomGap', 1, 'grooveDepth', 'bottom', floats),

  {
    id: 'no-lid',
    breaks: (v) => !(v.lidThickness > practice.lidSlip),
    what: (v) =>
      `A lid’s groove ${both(v.lidThickness)} wide leaves no lid: it must be ${both(practice.lidSlip)} thinner to move.`,
    field: () => 'lidThickness',
    limit: 'least',
    to: () => leastLid,
  },
  something(
    'no-lip-above-lid',
    'lidLip',
    'No wood is left above the lid’s groove, so nothing holds the lid down.',
    () => leastLip.lidLip,
  ),
  something('no-lid-groove', 'lidGrooveDepth', 'The lid has no groove to run in.', () => 2),
  throughWall('lid-groove-through-wall', 'lidGrooveDepth', 'lid’s groove'),
  negativeGap('lid-too-wide', 'lidPlay', 'lid', slides),
  fallsOut('lid-falls-out', 'lidPlay', 2, 'lidGrooveDepth', 'lid', slides),
];

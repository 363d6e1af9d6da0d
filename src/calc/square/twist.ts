/**
 * Twist (wind): the four corners of a rim are not in one plane.
 *
 *   e = atan(h / b)     turn of one end against the other
 *   r = S h / b         what two winding sticks of length S show at their tips
 *   g = h / 2           gap under a flat lid at two corners, lying balanced on the other two
 *
 *   corners of the rim over the plate:   0 ── 0          three corners touch, the fourth stands h above it
 *                                        │    │          balanced, two touch and two stand h/2 above it
 *                                        0 ── h
 *
 * Symbols: h rock, the gap under the free corner while the other three touch; b width of the box, S length of a
 * winding stick (mm); e degrees.
 * Held fixed: the walls are straight and the plate is flat. The diagonals say nothing about it.
 */
import { relation } from '../core/relation.ts';

const h = { name: 'rock, the gap under the free corner', unit: 'mm', range: [0, 10] } as const;
const b = { name: 'width of the box', unit: 'mm', range: [20, 1000] } as const;

/** Turn of one end of the box against the other, degrees. */
export const twistAngle = relation({
  id: 'twist-angle',
  title: 'Turn of one end against the other',
  result: { symbol: 'e', name: 'twist over the length', unit: 'deg' },
  inputs: { h, b },
  expression: 'atan(h / b)',
  compute: ({ h, b }) => (Math.atan(h / b) * 180) / Math.PI,
  evidence: 'geometry',
  source: 'One end lies on the plate; the other rises by the rock over the width.',
});

/** What winding sticks show, mm: the height of one tip of the far stick over the near one. */
export const windingSticksReading = relation({
  id: 'winding-sticks-reading',
  title: 'What winding sticks show',
  result: { symbol: 'r', name: 'reading at the tips', unit: 'mm' },
  inputs: { h, b, S: { name: 'length of a winding stick', unit: 'mm', range: [50, 1000] } },
  expression: 'S * h / b',
  compute: ({ h, b, S }) => (S * h) / b,
  evidence: 'geometry',
  source: 'Two straight sticks across the ends carry the slope of the rim out to their tips.',
});

/** Gap under a flat lid at the two corners it does not touch, mm, lying balanced. */
export const lidGapOfTwist = relation({
  id: 'lid-gap-of-twist',
  title: 'Gap under a flat lid on a twisted rim',
  result: { symbol: 'g', name: 'gap at two corners', unit: 'mm' },
  inputs: { h },
  expression: 'h / 2',
  compute: ({ h }) => h / 2,
  evidence: 'geometry',
  source: 'A flat lid touches at two corners across from each other; the rock is shared by the other two.',
  limits: 'A thin lid bends and hides some of it.',
});

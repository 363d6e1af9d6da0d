/** The parts of a design as solids to draw, and sentences about its size. */

import type { Design } from '../../box/design/design.ts';
import type { Part } from '../../box/design/part.ts';
import { frontCutsFingers } from '../../box/subjects/joints/corners.ts';
import type { Values } from '../../box/whole/index.ts';
import type { Vector } from '../../geometry/convex.ts';
import { viewFrom } from '../../geometry/view.ts';
import type { Shown } from '../../geometry/visible.ts';
import { said } from '../parts/Quantity.tsx';

/** Equal scale on all three axes, the front at the left, the left side at the right. */
export const isometric = viewFrom(45, (Math.atan(Math.SQRT1_2) * 180) / Math.PI);

/** Every piece of every part, moved by what `move` says for it. */
export const shownParts = (
  { parts }: Design,
  move: (part: Part, opens: boolean) => Shown<Part>['move'] = () => undefined,
): Shown<Part>[] =>
  parts.flatMap((part) => part.pieces.map((solid) => ({ name: part, solid, move: move(part, solid.opens) })));

/** Moves a solid along. */
export const shifted =
  (by: Vector) =>
  ([x, y, z]: Vector): Vector => [x + by[0], y + by[1], z + by[2]];

/** Whether a hole stays open in each side, above the lowered front. */
export const hasHole = (v: Values): boolean => frontCutsFingers(v) && v.frontHole > 0;

/** A length for a description. */
export const spokenSize = (value: number): string => said(value, 'length', { as: 'size' });

const words = {
  sliding: 'sliding lid',
  'lift-off': 'lift-off lid',
  sawn: 'hinged lid',
} as const;
const jointWords = {
  finger: 'finger joints',
  dovetail: 'through dovetails',
  mitre: 'miters',
  'keyed-mitre': 'miters with keys',
  'splined-mitre': 'miters with splines',
  rabbet: 'rabbet joints',
  butt: 'butt joints',
} as const;

/** "A box with a sliding lid and finger joints, outside length 209 mm, 8 7/32 in; width …; height …", and what gapes. */
export const described = ({ values }: Design): string =>
  `A box with a ${words[values.kind]} and ${jointWords[values.joint]}, outside length ${spokenSize(values.outsideLength)}; ` +
  `width ${spokenSize(values.outsideWidth)}; height ${spokenSize(values.outsideHeight)}.` +
  (hasHole(values)
    ? ` In each side a hole ${spokenSize(values.frontHole)} high stays open above the front.`
    : '');

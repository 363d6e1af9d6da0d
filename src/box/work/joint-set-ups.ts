/** Set-ups of the four corners: stops for the lengths, and what each kind of joint needs. */

import { INCH } from '../../units/index.ts';
import type { Corner } from '../design/joints/joint.ts';
import { keyLeg, splineSection } from '../design/joints/miter.ts';
import { isMitered } from '../subjects/joints/corners.ts';
import { type Amount, say, size, type Words } from './say.ts';
import type { SetUp } from './set-ups.ts';
import type { Planned } from './step.ts';

const angle = (value: number): Amount => ({ value, kind: 'angle', digits: 1 });
/** What a caliper reads: 1/64 in would hide a fit. */
const caliper = (value: number): Amount => ({ value, kind: 'length', as: 'exact' });
/** A cutter that is sold by a fraction keeps its name; a key that is 7/64 in thick does not hold in what is called 1/8 in. */
const cutter = (value: number): Amount =>
  Number.isInteger((value * 64) / INCH)
    ? { value, kind: 'length', digits: 2, denominator: 64 }
    : caliper(value);

/** Stops for cutting the walls to length; opposite walls come off one stop. */
export function lengthSetUps(design: Planned): SetUp[] {
  const { parts } = design;
  const lengthOf = (name: string) => parts.find((part) => part.name === name)?.finished.length ?? 0;
  return [
    {
      id: 'lengths',
      cut: say`walls to length`,
      settings: [
        { what: 'stop for the sides', value: size(lengthOf('left')) },
        { what: 'stop for the ends', value: size(lengthOf('front')) },
        ...(isMitered(design.box) ? [{ what: 'saw tilt', value: angle(45) }] : []),
      ],
      note: isMitered(design.box)
        ? say`Lengths from point to point, on the outside. One stop for each pair.`
        : say`One stop for each pair; every wall with the same edge against the fence.`,
    },
  ];
}

/** The corner the joint is set out from: the tallest of the box. */
const tallest = ({ corners }: Planned): Corner | undefined =>
  [...corners].sort((a, b) => b.endHeight - a.endHeight)[0];

/** Heights of the keys from the lower edge. */
const heights = (corner: Corner): Words =>
  corner.keys.flatMap(({ from, to }, index) => [...(index ? [', '] : []), size((from + to) / 2)]);

export function jointSetUps(design: Planned): SetUp[] {
  const { box, plan } = design;
  const corner = tallest(design);
  if (!corner) return [];
  const { wall } = plan;
  switch (box.joint) {
    case 'finger':
      return [
        {
          id: 'fingers',
          cut: say`fingers on all walls`,
          settings: [
            { what: 'cutter, and pin of the jig', value: caliper(plan.values.slotWidth) },
            { what: 'cutter to pin', value: caliper(plan.values.cutterToPin) },
            { what: 'depth', value: size(wall) },
            { what: 'slot minus finger', value: caliper(box.fingerFit) },
          ],
          note: say`If a test slot comes out wider or narrower, set the distance to that slot less the play, put half of both together into the box as the finger width, and print again: the layout follows. Lower edge against the pin. Sides begin with a finger, ends with a slot. For ends that stand proud add ${caliper(0.4)} to ${caliper(0.8)} to the depth.`,
        },
      ];
    case 'dovetail': {
      const tail = corner.segments.find(({ owner }) => owner === 'side');
      return [
        {
          id: 'dovetails',
          cut: say`tails on the sides, pins on the ends`,
          settings: [
            { what: 'slope', value: angle((Math.atan(1 / box.dovetailSlope) * 180) / Math.PI) },
            { what: 'gauge line, from the end', value: size(wall) },
            { what: 'tail, wide side', value: size(tail ? tail.to - tail.from : 0) },
            { what: 'pin, narrow side', value: size(box.pinWidth) },
          ],
          note: say`Cut the tails first and mark the pins from them. Half a pin at each edge.`,
        },
      ];
    }
    case 'rabbet':
      return [
        {
          id: 'rabbets',
          cut: say`rabbet at both ends of each side, inside face`,
          settings: [
            { what: 'depth', value: size(wall / 2) },
            { what: 'width', value: size(wall) },
          ],
          note: say`The ends stand in it; they get no cut.`,
        },
      ];
    case 'keyed-mitre':
      return [
        {
          id: 'keys',
          cut: say`slots for keys, across the glued corners`,
          settings: [
            { what: 'cutter', value: cutter(box.keyThickness) },
            { what: 'depth, along the diagonal', value: size(wall) },
            { what: 'shows on each wall', value: size(keyLeg(wall)) },
            { what: 'cradle', value: angle(45) },
          ],
          note: corner.keys.length
            ? say`Middles of the slots from the lower edge: ${heights(corner)}.`
            : say`No key fits between the grooves.`,
        },
      ];
    case 'splined-mitre': {
      const section = splineSection(plan);
      return section
        ? [
            {
              id: 'splines',
              cut: say`spline grooves in all miter faces`,
              settings: [
                { what: 'cutter', value: cutter(box.keyThickness) },
                { what: 'depth', value: size(section.depth) },
                {
                  what: 'from the heel (inner edge)',
                  value: size(wall * Math.SQRT2 - section.to),
                },
              ],
              note: say`Square to the miter face, all eight with the heel on the same side of the cutter.`,
            },
          ]
        : [];
    }
    default:
      return [];
  }
}

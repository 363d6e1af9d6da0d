/** Keys and splines: small parts let into miters, in place. */

import { twiceArea } from '../../geometry/polygon.ts';
import { between, mirrored, type Prism, raised, type Solid } from '../../geometry/solid.ts';
import { areaOf } from '../../geometry/volume.ts';
import type { Frame } from './frames.ts';
import { keyLeg, keySlot, splineSection, splineSlot } from './joints/miter.ts';
import type { Part, Piece } from './part.ts';
import type { Plan } from './plan.ts';

/** What a convex outline fills, as its bounding block with the corners cut away. The outline goes round counterclockwise. */
function filled({ from, to, outline }: Prism): Solid {
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const x = [Math.min(...xs), Math.max(...xs)] as const;
  const y = [Math.min(...ys), Math.max(...ys)] as const;
  const cuts = outline.flatMap((start, index): Prism[] => {
    const end = outline[(index + 1) % outline.length]!;
    // The corner of the block that lies outside this edge.
    const corner: readonly [number, number] = [
      end[1] > start[1] ? x[1] : x[0],
      end[0] > start[0] ? y[0] : y[1],
    ];
    const slanted = end[0] !== start[0] && end[1] !== start[1];
    return slanted ? [{ axis: 'z', from, to, outline: [start, corner, end] }] : [];
  });
  return { block: { x, y, z: [from, to] }, cuts };
}

/** A solid at the front left corner, at all four corners. */
function atCorners(plan: Plan, prisms: Readonly<Record<'front' | 'back', readonly Prism[]>>): Solid[] {
  return (['front', 'back'] as const).flatMap((end) =>
    prisms[end].flatMap((prism) =>
      [prism, mirrored(prism, 'y', plan.width)].map((one) =>
        filled(counterclockwise(end === 'front' ? one : mirrored(one, 'x', plan.length))),
      ),
    ),
  );
}

const counterclockwise = (prism: Prism): Prism =>
  twiceArea(prism.outline) < 0 ? { ...prism, outline: [...prism.outline].reverse() } : prism;

/** A solid of the frame as glued up, in its place in the finished box. */
function placed({ values, rim, sawn }: Plan, { of, height }: Frame, solid: Solid): Piece[] {
  if (values.kind !== 'sawn') return [{ ...solid, opens: of === 'lid' }];
  const both = [
    { ...between(solid, 0, rim, 0), opens: false },
    { ...between(solid, rim + sawn, height, -sawn), opens: true },
  ];
  return both.filter(({ block }) => block.z[1] > block.z[0]);
}

/** The keys of all frames as one line of the cut list. */
export function keyParts(plan: Plan, all: readonly Frame[]): Part[] {
  const { wall, values } = plan;
  if (values.joint !== 'keyed-mitre') return [];
  const keyed = all.map((frame) => {
    const at = (end: 'front' | 'back') =>
      frame.corners[end].keys.map((key) => raised(keySlot(wall, key), frame.low));
    return { frame, solids: atCorners(plan, { front: at('front'), back: at('back') }) };
  });
  const count = keyed.reduce((sum, { solids }) => sum + solids.length, 0);
  if (count === 0) return [];
  // A triangle: the grain runs along its long edge, across the miter.
  const finished = { length: keyLeg(wall) * Math.SQRT2, width: wall, thickness: values.keyThickness };
  return [
    {
      name: 'keys',
      label: 'keys',
      count,
      material: 'solid',
      grain: 'across the miter',
      finished,
      round: 'nearest',
      rough: { ...finished, length: finished.length + 6, width: finished.width + 3 },
      pieces: keyed.flatMap(({ frame, solids }) => solids.flatMap((solid) => placed(plan, frame, solid))),
      volume: count * areaOf(keySlot(wall, { from: 0, to: 0 }).outline) * values.keyThickness,
      note: 'Glued in after the corners, then cut flush. The size is the triangle’s long edge and its height.',
    },
  ];
}

/** The splines of all frames as one line of the cut list for each frame. */
export function splineParts(plan: Plan, all: readonly Frame[]): Part[] {
  const { values } = plan;
  const section = splineSection(plan);
  if (values.joint !== 'splined-mitre' || !section) return [];
  return all.map((frame) => {
    const at = (height: number) => {
      const prism = splineSlot(plan, height);
      return prism ? [raised(prism, frame.low)] : [];
    };
    const solids = atCorners(plan, { front: at(frame.frontHeight), back: at(frame.height) });
    const finished = { length: 2 * section.depth, width: frame.height, thickness: values.keyThickness };
    return {
      name: 'splines',
      label: frame.of === 'lid' ? 'splines, lid' : 'splines',
      count: 4,
      material: 'solid',
      grain: 'across the miter',
      finished,
      round: 'nearest',
      rough: { ...finished, width: finished.width + 6 },
      pieces: solids.flatMap((solid) => placed(plan, frame, solid)),
      // Two at the front, two at the back; the saw line is lost.
      volume: finished.length * finished.thickness * 2 * (frame.height + frame.frontHeight - 2 * plan.sawn),
      note:
        frame.frontHeight < frame.height
          ? 'Grain runs across the miter. The two at the front are as high as the front.'
          : 'Grain runs across the miter.',
    };
  });
}

/** Joints and grooves: which comes first depends on the joint. */

import { fine, panel, say, size, type Words } from './say.ts';
import type { Planned, Step } from './step.ts';

/** Cuts of the joint before the glue-up; keys come after it. */
export function jointSteps(design: Planned): Step[] {
  const { box, plan, corners } = design;
  switch (box.joint) {
    case 'finger': {
      const count = Math.max(0, ...corners.map(({ segments }) => segments.length));
      const odd = count % 2 === 1 && corners.every(({ sliver }) => sliver === undefined);
      const end = stopAtFront(design);
      return [
        {
          id: 'joint-test',
          picture: 'joint test',
          does: say`Set up the finger jig and cut a test corner in scrap of the same thickness and height.`,
          check: say`It slides home by hand and holds itself: slot minus finger ${fine(box.fingerFit)}.`,
          caution: 'upright',
          rule: 'finger-fit',
        },
        {
          id: 'joint',
          picture: 'joint',
          does: odd
            ? say`Cut the fingers, the same marked edge first on every wall. The number is odd: cut half from one edge, turn the part around and cut the rest from the other.${end}`
            : say`Cut the fingers, the same marked edge first on every wall, each step clamped.${end}`,
          check: say`The lower edges of all four walls meet level at every corner.`,
          caution: 'upright',
          rule: odd ? 'turn-the-part-round' : 'step-error-adds-up',
        },
      ];
    }
    case 'dovetail':
      return [
        {
          id: 'joint',
          picture: 'joint',
          does: say`Gauge ${size(plan.wall)} around every end. Saw the tails on the sides, mark the pins from them with a knife, saw and chop the pins.`,
          check: say`Each corner goes together halfway by hand. Do not close it fully more than once.`,
          caution: 'chisel',
        },
      ];
    case 'rabbet':
      return [
        {
          id: 'joint',
          picture: 'joint',
          does: say`Cut the rabbets at both ends of each side, ${size(plan.wall / 2)} deep and ${size(plan.wall)} wide, the side held to a sled or miter gauge with a backing block behind it.`,
          check: say`The end stands flush with the side’s end, inside face tight.`,
          caution: 'groove',
        },
      ];
    case 'splined-mitre':
      return [
        {
          id: 'joint',
          picture: 'joint',
          does: say`Cut the spline grooves in all miter faces from one setting.`,
          check: say`Held together dry, the two grooves of a corner face each other along their whole length.`,
          caution: 'upright',
        },
        {
          id: 'splines',
          picture: 'splines',
          does: say`Make the splines, ${panel(box.keyThickness)} thick, their grain across the miter: crosscut them from the end of a wide board, then fit each to its groove.`,
          check: say`Each slides in by hand, and the outer points of the miter meet.`,
          caution: 'smallStock',
        },
      ];
    default:
      return [];
  }
}

/** Above a lowered front the sides keep their wood: slots cut there for fingers that are ripped off would stay open. */
function stopAtFront({ box, plan, corners }: Planned): Words {
  const front = corners.find(({ of, end }) => of === 'box' && end === 'front');
  const last = front?.segments.filter(({ owner }) => owner === 'end').at(-1);
  if (box.kind !== 'sliding' || !last) return [];
  const top = last.socketTo ?? last.to;
  return top + box.fingerWidth < plan.height - 0.01
    ? say` At the front ends of the sides cut no slot above ${size(top)}: the front is lower there.`
    : [];
}

/** Grooves, on the strip or on the parts. */
export function grooveSteps({ grooves }: Planned, onStrip: boolean): Step[] {
  if (grooves.length === 0) return [];
  const stopped = grooves.some(({ startOpen, stopOpen }) => !startOpen || !stopOpen);
  const through = grooves.filter(({ startOpen, stopOpen }) => startOpen && stopOpen);
  const steps: Step[] = [];
  if (through.length > 0 || onStrip)
    steps.push({
      id: 'grooves',
      picture: onStrip ? 'strip grooves' : 'grooves',
      does: onStrip
        ? say`Cut the grooves along the whole strip, inside face, while it is still long.`
        : say`Cut the through grooves, inside faces only, each edge as the set-up says.`,
      check: say`A scrap as thick as the panel’s edge (of plywood: of the same sheet) slides in without force, and the depth is the same at both ends.`,
      caution: 'groove',
      rule: 'groove-order',
    });
  if (stopped)
    steps.push({
      id: 'stopped-grooves',
      picture: 'stopped grooves',
      does: say`Cut the stopped grooves; square their ends with a chisel.`,
      check: say`Dry corner together: the groove runs on without a step, and no hole shows outside.`,
      caution: 'stopped',
      rule: 'groove-inside-one-finger',
    });
  return steps;
}

/** A sliding lid leaves over the front: the front is lower than the other walls. */
export function frontStep(design: Planned): Step[] {
  const { box, plan } = design;
  if (box.kind !== 'sliding') return [];
  return [
    {
      id: 'front',
      picture: 'front',
      does: say`Rip the front to ${size(plan.frontTop)}, the underside of the lid’s groove${
        box.joint === 'finger' ? '; its joint is cut already' : ''
      }.`,
      check: say`A straightedge laid in both lid grooves passes just over it.`,
      caution: 'shortRip',
    },
  ];
}

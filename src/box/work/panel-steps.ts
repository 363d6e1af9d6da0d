/** The panels and other loose parts, made ready before the glue-up. */
import { shortestMachineLength } from '../../calc/stock.ts';
import type { FittedPanel } from '../parts/panel-hold.ts';
import { practice } from '../practice.ts';
import type { Planned, Step } from './step.ts';
import { gap, mm, panel, say } from './words.ts';

/** A panel shorter along its length than 12 in, or thinner than most planers take, needs a hand plane, a carrier or a sled. */
const cautionFor = (length: number, thickness: number) =>
  length < shortestMachineLength || thickness < thinnestMachined
    ? ('shortPanel' as const)
    : ('machines' as const);
/** Thinner stock goes through few planers: common practice; the machine's manual decides. mm */
const thinnestMachined = 6;

export function panelSteps(design: Planned): Step[] {
  const { bottom, lid, box, plan } = design;
  const steps: Step[] = [];
  if (bottom && bottom.material === 'solid')
    steps.push({
      id: 'bottom-thickness',
      does: say`Plane the panel for the bottom to ${panel(plan.bottomThickness)}, both faces equally.`,
      check: say`Flat on a flat table, and the same at all four corners within ${mm(0.1, { digits: 1 })}.`,
      caution: cautionFor(bottom.length, plan.bottomThickness),
      rule: 'bottom-thickness',
    });
  if (bottom)
    steps.push({
      id: 'bottom',
      does: say`Cut the bottom to ${panel(bottom.length)} by ${panel(bottom.width)}${
        plan.bottomThickness > bottom.tongue + 0.01 ? ' and rabbet its tongue as the set-up says' : ''
      }.`,
      check: bottom.glued
        ? say`It drops into its place without force.`
        : say`In its place: ${gap(bottom.gapAcross)} free at each side across the grain, and it slides by hand.`,
      caution: cautionFor(bottom.length, plan.bottomThickness),
      rule: bottom.glued ? 'solid-floats-plywood-may-be-glued' : 'gap-beside-the-bottom',
    });
  if (lid && box.kind !== 'sliding')
    steps.push({
      id: 'lid-panel',
      does:
        lid.material === 'solid'
          ? say`Plane the lid panel to ${panel(lid.tongue)} and cut it to ${panel(lid.length)} by ${panel(lid.width)}.`
          : say`Cut the lid panel to ${panel(lid.length)} by ${panel(lid.width)}.`,
      check: say`${gap(lid.gapAcross)} free at each side across the grain.`,
      caution: cautionFor(lid.length, lid.tongue),
      rule: 'never-glue-across-the-grain',
    });
  if (bottom || (lid && box.kind !== 'sliding'))
    steps.push({
      id: 'panel-finish',
      does: say`Sand and finish ${
        bottom && lid && box.kind !== 'sliding'
          ? 'bottom and lid panel, each on both faces'
          : bottom
            ? 'both faces of the bottom'
            : 'both faces of the lid panel'
      }, now: later their edges cannot be reached.${bottom?.glued ? ' None where glue goes.' : ''}`,
      check: say`Dry as the label says before the glue-up.`,
      caution: 'panelFinish',
      rule: 'both-faces-or-cup-for-days',
    });
  if (lid && box.kind === 'sliding') steps.push(...slidingLid(design, lid));
  if (box.joint === 'splined-mitre')
    steps.push({
      id: 'splines',
      does: say`Make the splines, ${panel(box.keyThickness)} thick, their grain across the miter: crosscut them from the end of a wide board, then fit each to its groove.`,
      check: say`Each slides in by hand, and the outer points of the miter meet.`,
      caution: 'smallStock',
    });
  return steps;
}

/** The lid is made ready before any finish, and fitted after it. */
function slidingLid({ box, lidRun }: Planned, lid: FittedPanel): Step[] {
  const steps: Step[] = [
    {
      id: 'lid',
      does: say`Plane the lid to ${panel(lid.tongue)} and cut it to length, ${panel(lid.length)}. Its final width is ${panel(lid.width)}: rip it ${mm(1)} wider than that, because it is fitted last.`,
      check: say`Flat on a flat table, with the grain along the way it slides.`,
      caution: cautionFor(lid.length, lid.tongue),
    },
  ];
  if (box.pull === 'notch' && lidRun?.notch)
    steps.push({
      id: 'notch',
      does: say`Cut the thumb notch in the lid, before any finish.`,
      check: say`At least ${mm(3)} of wood is left under it.`,
      caution: 'chisel',
    });
  if (box.pull === 'hole')
    steps.push({
      id: 'finger-hole',
      does: say`Bore the finger hole, ${mm(practice.fingerHole)} wide, its middle ${mm(practice.holeFromEnd)} from the front end, before any finish; ease both rims.`,
      check: say`No tear-out on either face.`,
      caution: 'boring',
    });
  if (box.pull === 'glued')
    steps.push({
      id: 'pull',
      does: say`Glue the pull across the front end of the lid, in its middle third only, before any finish: its grain crosses the lid’s.`,
      check: say`It passes between the sides with the lid’s play on both.`,
      caution: 'smallStock',
    });
  return steps;
}

/** The panels and other loose parts, made ready before the glue-up. */
import { shortestMachineLength } from '../../calc/board/stock.ts';
import { practice } from '../core/practice.ts';
import type { FittedPanel } from '../design/panel-hold.ts';
import type { CautionName } from './cautions.ts';
import { fine, gap, panel, say, size, sizeOf } from './say.ts';
import type { Planned, Step } from './step.ts';

/** Plywood is cut, not planed. Solid wood shorter than 12 in, or thinner than most planers take, needs a hand plane, a carrier or a sled. */
export const cautionForPanel = (
  material: FittedPanel['material'],
  length: number,
  thickness: number,
): CautionName =>
  material === 'plywood'
    ? 'plywood'
    : length < shortestMachineLength || thickness < thinnestMachined
      ? 'shortPanel'
      : 'machines';
/** Thinner stock goes through few planers: common practice; the machine's manual decides. mm */
const thinnestMachined = 6;

export function panelSteps(design: Planned): Step[] {
  const { bottom, lid, box, plan } = design;
  const steps: Step[] = [];
  if (bottom && bottom.material === 'solid')
    steps.push({
      id: 'bottom-thickness',
      picture: 'bottom thickness',
      does: say`Plane the panel for the bottom to ${panel(plan.bottomThickness)}, both faces equally.`,
      check: say`Flat on a flat table, and the same at all four corners within ${fine(0.1)}.`,
      caution: cautionForPanel(bottom.material, bottom.length, plan.bottomThickness),
      rule: 'bottom-thickness',
    });
  if (bottom)
    steps.push({
      id: 'bottom',
      picture: 'bottom',
      does: say`Cut the bottom to ${panel(bottom.length)} by ${panel(bottom.width)}${
        plan.bottomThickness > bottom.tongue + 0.01 ? ' and rabbet its tongue as the set-up says' : ''
      }.`,
      check: bottom.glued
        ? say`It drops into its place without force.`
        : say`In its place: ${gap(bottom.gapAcross)} free at each side across the grain, and it slides by hand.`,
      caution: cautionForPanel(bottom.material, bottom.length, plan.bottomThickness),
      rule: bottom.glued ? 'solid-floats-plywood-may-be-glued' : 'gap-beside-the-bottom',
    });
  if (lid && box.kind !== 'sliding')
    steps.push({
      id: 'lid-panel',
      picture: 'lid panel',
      does:
        lid.material === 'solid'
          ? say`Plane the lid panel to ${panel(lid.tongue)} and cut it to ${panel(lid.length)} by ${panel(lid.width)}.`
          : say`Cut the lid panel to ${panel(lid.length)} by ${panel(lid.width)}.`,
      check: say`${gap(lid.gapAcross)} free at each side across the grain.`,
      caution: cautionForPanel(lid.material, lid.length, lid.tongue),
      rule: 'never-glue-across-the-grain',
    });
  if (bottom || (lid && box.kind !== 'sliding'))
    steps.push({
      id: 'panel-finish',
      picture: 'panel finish',
      does: say`Sand and finish ${
        bottom && lid && box.kind !== 'sliding'
          ? 'bottom and lid panel, each on both faces'
          : bottom
            ? 'both faces of the bottom'
            : 'both faces of the lid panel'
      }, now: later their edges cannot be reached.${bottom?.glued ? ' None where glue goes.' : ''} No drying oil on a face that will be inside.`,
      check: say`Dry as the label says before the glue-up.`,
      caution: 'panelFinish',
      rule: 'both-faces-or-cup-for-days',
    });
  if (lid && box.kind === 'sliding') steps.push(...slidingLid(design, lid));
  return steps;
}

/** The lid is made ready before any finish, and fitted after it. */
function slidingLid({ box, lidRun, parts }: Planned, lid: FittedPanel): Step[] {
  const steps: Step[] = [
    {
      id: 'lid',
      picture: 'lid',
      does: say`${lid.material === 'solid' ? say`Plane the lid to ${panel(lid.tongue)} and cut it` : 'Cut the lid'} to length, ${panel(lid.length)}. Its final width is ${panel(lid.width)}: rip it ${fine(1)} wider than that, because it is fitted last.`,
      check: say`Flat on a flat table, with ${lid.material === 'solid' ? 'the grain' : 'the grain of its faces'} along the way it slides.`,
      caution: cautionForPanel(lid.material, lid.length, lid.tongue),
    },
  ];
  if (box.pull === 'notch' && lidRun?.notch)
    steps.push({
      id: 'notch',
      picture: 'grip',
      does: say`Cut the thumb notch in the lid, before any finish.`,
      check: say`At least ${size(practice.notchFloor)} of wood is left under it.`,
      caution: 'chisel',
    });
  if (box.pull === 'hole')
    steps.push({
      id: 'finger-hole',
      picture: 'grip',
      does: say`Bore the finger hole, ${size(practice.fingerHole)} wide, its middle ${size(practice.holeFromEnd)} from the front end, before any finish; ease both rims.`,
      check: say`No tear-out on either face.`,
      caution: 'boring',
    });
  const pull = parts.find(({ name }) => name === 'pull');
  if (pull)
    steps.push({
      id: 'pull',
      picture: 'pull',
      does: say`Plane a strip to ${sizeOf(pull, 'thickness')} by ${sizeOf(pull, 'width')} and saw the pull off it, ${sizeOf(pull, 'length')} long. Glue it across the front end of the lid, in its middle third only, before any finish: its grain crosses the lid’s.`,
      check: say`It passes between the sides with the lid’s play on both.`,
      caution: 'smallStock',
    });
  return steps;
}

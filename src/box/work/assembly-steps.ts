/** Panels, dry fit, glue. */
import { angleFromDiagonals } from '../../calc/squareness.ts';
import { shortestMachineLength } from '../../calc/stock.ts';
import type { FittedPanel } from '../parts/panel-hold.ts';
import { practice } from '../practice.ts';
import type { Amounts } from './amounts.ts';
import type { Planned, Step } from './step.ts';
import { openTime } from './times.ts';
import { gap, mm, panel, say } from './words.ts';

/** Diagonals may differ by this, mm: aim and limit, common practice. */
export const diagonals = { aim: 0.5, most: 1 } as const;

const amount = (value: number, kind: 'mass' | 'force', digits: 0 | 2 = 0) =>
  ({ value, kind, digits }) as const;

/** Cut from solid wood: to thickness first, while it is large; by hand where it is short. */
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
        plan.bottomThickness > bottom.tongue + 0.01 ? ' and rabbet its tongue' : ''
      }. Sand and finish both faces now: later they cannot be reached.`,
      check: bottom.glued
        ? say`It drops into its place without force.`
        : say`In its place: ${gap(bottom.gapAcross)} free at each side across the grain, and it slides by hand.`,
      caution: 'panelFinish',
      rule: bottom.glued ? 'solid-floats-plywood-may-be-glued' : 'gap-beside-the-bottom',
    });
  if (lid && box.kind !== 'sliding')
    steps.push({
      id: 'lid-panel',
      does: say`Plane the lid panel to ${panel(lid.tongue)} and cut it to ${panel(lid.length)} by ${panel(lid.width)}. Sand and finish both faces.`,
      check: say`${gap(lid.gapAcross)} free at each side across the grain.`,
      caution: 'panelFinish',
      rule: 'never-glue-across-the-grain',
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

export function glueSteps({ box, plan, bottom }: Planned, amounts: Amounts): Step[] {
  const [a, b] = [plan.length - 2 * plan.wall, plan.width - 2 * plan.wall];
  const lean = { value: angleFromDiagonals(a, b, diagonals.most), kind: 'angle', digits: 2 } as const;
  const frame = box.kind === 'lift-off' ? 'box and lid, each' : 'the box';
  return [
    {
      id: 'inside',
      does: say`Sand and finish the inside faces. Tape the joints first: no finish where glue goes.`,
      check: say`Bare wood on every glued face.`,
      caution: 'panelFinish',
    },
    {
      id: 'dry-fit',
      does: say`Put ${frame} together dry: bottom in, clamps set, blocks taped on. Write down the order and time it.`,
      check: say`Done in under half the glue’s open time, ${String(openTime.low / 2)} to ${String(openTime.high / 2)} minutes for white or yellow glue. Diagonals within ${mm(diagonals.aim, { digits: 1 })}; ${mm(diagonals.most)} is the limit and means ${lean} off square.`,
      rule: 'dry-fit-in-half-the-open-time',
    },
    {
      id: 'glue',
      does: say`Spread a thin even film, in all ${amount(amounts.glue.low, 'mass', 2)} to ${amount(amounts.glue.high, 'mass', 2)}. ${
        bottom?.glued ? 'Glue in the bottom.' : 'Bottom in, without glue in its groove.'
      } Clamp with even contact; joints that fit need little force.`,
      check: say`Diagonals again, top and bottom, while the glue is wet: squeeze the longer one by hand or with one light clamp; never press a tight panel home with clamps. On a flat plate the box rocks by no more than ${mm(0.2, { digits: 1 })}.`,
      caution: undefined,
      rule: 'solid-floats-plywood-may-be-glued',
    },
    ...(box.joint === 'keyed-mitre'
      ? [
          {
            id: 'keys',
            does: say`After 24 hours saw the slots for the keys. Saw the keys from a strip planed to ${panel(box.keyThickness)}, their grain along the long edge, glue them in, and trim them flush from the outside in.`,
            check: say`Each key touches the bottom of its slot before glue goes in.`,
            caution: 'keys' as const,
          },
        ]
      : []),
  ].map(({ caution, ...step }) => (caution ? { ...step, caution } : step)) as Step[];
}

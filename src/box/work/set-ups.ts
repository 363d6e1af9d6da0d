/** Set-ups: what to set on the saw, the router table and the jig before each kind of cut. */

import { bottomRabbet } from '../design/panels.ts';
import type { Groove } from '../design/part.ts';
import { jointSetUps, lengthSetUps } from './joint-set-ups.ts';
import { linerSetUps } from './liner-set-ups.ts';
import { type Amount, fine, panel, say, size, type Words } from './say.ts';
import { groovesOnStrip, type Planned } from './step.ts';

export interface Setting {
  readonly what: string;
  readonly value: Amount;
}

export interface SetUp {
  readonly id: string;
  /** The cut, and the parts it is made on. */
  readonly cut: Words;
  readonly settings: readonly Setting[];
  /** What else belongs to it: which edge runs on the fence, which part first. */
  readonly note: Words;
}

/** Grooves that one setting of cutter, fence and depth makes. */
function sameSetting(grooves: readonly Groove[]): Groove[][] {
  const sets = new Map<string, Groove[]>();
  for (const groove of grooves) {
    const { edge, width, depth, fromEdge, part } = groove;
    const upon = part.startsWith('lid-') ? 'lid' : 'box';
    const key = [groove.for, upon, edge, ...[width, depth, fromEdge].map((value) => value.toFixed(3))].join();
    sets.set(key, [...(sets.get(key) ?? []), groove]);
  }
  return [...sets.values()];
}

const nameOf = (groove: Groove) => groove.part.replace('lid-', 'lid ').replaceAll('-', ' ');

/** Where a groove starts and stops on its part, from the part's left end as seen from inside the box. */
function runOf(groove: Groove): Words {
  const { startOpen, stopOpen, start, stop } = groove;
  if (startOpen && stopOpen) return say`${nameOf(groove)}: through`;
  const from = startOpen ? say`runs in at the left end` : say`starts ${size(start)} from the left end`;
  const to = stopOpen ? say`runs out at the right` : say`stops at ${size(stop)}`;
  return say`${nameOf(groove)}: ${from}, ${to}`;
}

const joined = (parts: readonly Words[], between: string): Words =>
  parts.flatMap((part, index) => (index === 0 ? [...part] : [between, ...part]));

function grooveSetUps({ grooves, box }: Planned): SetUp[] {
  return sameSetting(grooves).map((set, index) => {
    const [first] = set as [Groove];
    const { seat, edge, fromEdge, width, depth } = first;
    const stopped = set.some(({ startOpen, stopOpen }) => !startOpen || !stopOpen);
    return {
      id: `groove-${first.for}-${index}`,
      cut: say`${seat} for the ${first.for}, inside faces: ${set.map(nameOf).join(', ')}`,
      settings: [
        { what: 'width', value: fine(width, 'up') },
        { what: 'depth', value: size(depth) },
        ...(seat === 'groove' ? [{ what: `fence, from the ${edge} edge`, value: size(fromEdge) }] : []),
      ],
      note: say`The ${edge} edge runs on the fence. ${
        stopped
          ? say`Ends, seen from inside: ${joined(set.map(runOf), '; ')}.`
          : box.kind === 'sliding' && first.for === 'lid'
            ? 'Through; the front has none.'
            : 'Through on every wall.'
      }`,
    };
  });
}

/** The tongue on the bottom's edge, the room for a notch, the line of a sawn lid. */
function panelSetUps({ plan, bottom, lid, lidRun, saw, hinges, box }: Planned): SetUp[] {
  const found: SetUp[] = [];
  if (bottom && box.bottomSeat === 'groove' && plan.bottomThickness > bottom.tongue + 0.01)
    found.push({
      id: 'tongue',
      cut: say`rabbet under all four edges of the bottom`,
      settings: [
        { what: 'depth', value: fine(plan.bottomThickness - bottom.tongue, 'up') },
        { what: 'leaves a tongue of', value: panel(bottom.tongue) },
        { what: 'width', value: size(bottomRabbet(plan), 'up') },
      ],
      note: say`Try it in the real groove on an offcut first.`,
    });
  if (lid && lidRun?.notch)
    found.push({
      id: 'notch',
      cut: say`thumb notch in the lid`,
      settings: [
        { what: 'width', value: size(lidRun.notch.width) },
        { what: 'deepest', value: panel(lidRun.notch.depth) },
        { what: 'steep side from the front end', value: size(lidRun.notch.fromEnd) },
        { what: 'slope', value: size(lidRun.notch.run) },
      ],
      note: say`Cut the steep side first, then slope up to it from behind.`,
    });
  if (saw)
    found.push({
      id: 'saw-line',
      cut: say`sawing off the lid`,
      settings: [
        { what: 'line, from the table', value: size(saw.from) },
        { what: 'kerf', value: fine(saw.to - saw.from) },
      ],
      note: say`The box is glued up one kerf higher than it will be.`,
    });
  if (hinges)
    found.push({
      id: 'hinges',
      cut: say`hinges on the ${hinges.wall === 'right' ? 'right side' : 'back'}`,
      settings: [
        { what: 'leaf', value: size(hinges.length) },
        { what: 'from each end', value: size(hinges.places[0]?.[0] ?? hinges.length) },
        { what: 'longest screw', value: panel(plan.wall - 1) },
      ],
      note: say`Each leaf is let in just under half the knuckle.`,
    });
  return found;
}

/** In the order in which they are used. */
export function setUpsOf(design: Planned): SetUp[] {
  const grooves = grooveSetUps(design);
  const joint = jointSetUps(design);
  const first = groovesOnStrip(design);
  return [
    ...(first ? grooves : []),
    ...lengthSetUps(design),
    ...joint,
    ...(first ? [] : grooves),
    ...panelSetUps(design),
    ...linerSetUps(design),
  ];
}

/** Before the joints: air, wood, thickness, marks, lengths. */
import { INCH } from '../../units/index.ts';
import { stockOf } from '../stock/stock.ts';
import { isMitered } from '../subjects/joints/corners.ts';
import { fine, say, size, type Words } from './say.ts';
import type { Planned, Step } from './step.ts';

const percent = (value: number) => ({ value, kind: 'percent', digits: 0 }) as const;

/** When wood of this thickness, mm, has settled: two weighings close together say nothing about the core of a thick piece. */
const settled = (thickness: number): Words =>
  thickness <= weighedIn3Days
    ? say`Two weighings 3 days apart agree within 0.3 %`
    : say`Two weighings, one or two weeks apart because it is thick, agree within 0.3 %`;
/** Up to 12 mm, or 1/2 in, three days show what is still to come: see the rule on waiting. */
const weighedIn3Days = INCH / 2;

/** How the walls are brought to thickness. */
function planed({ box, plan }: Planned): Words {
  const thick = size(plan.wall + 2 * box.planing, 'up');
  return box.wallsFrom === 'bookmatched'
    ? say`Open the pair like a book and mark it. Plane both halves, all faces equally, from ${thick} to ${size(plan.wall)}, still joined end to end.`
    : say`Plane one face and one edge true, then each strip for walls from ${thick} to ${size(plan.wall)}, both faces equally, before it is cut into walls.`;
}

/** Slices out of the thickness of a board, if it is thick enough for more than one. */
function resawing(design: Planned): Step[] {
  const { slices } = stockOf(design);
  const first = slices[0];
  const rough = slices.filter(({ board }) => board === first?.board).map(({ sawn }) => size(sawn, 'up'));
  if (rough.length < 2) return [];
  const list = rough.flatMap((one, index) => [
    ...(index ? [index === rough.length - 1 ? ' and ' : ', '] : []),
    one,
  ]);
  return [
    {
      id: 'resaw',
      picture: 'slices',
      does: say`Resaw the board on edge into slices of ${list}, each with what will be planed off. Stand them on edge with air on both sides for some days: a fresh inner face is damper than the outer one.`,
      check: say`${settled(Math.max(...slices.map(({ sawn }) => sawn)))}, and no slice bends any more.`,
      caution: 'resaw',
      rule: 'cut-oversize-and-rest',
    },
  ];
}

export function stockSteps(design: Planned): Step[] {
  const { box, plan } = design;
  return [
    {
      id: 'air',
      picture: 'air',
      does: say`Read the hygrometer where the wood lies and write it on this sheet. The gaps assume ${percent(box.humidityToday)}.`,
      check: say`More than 5 % off: put the new number into the box and print again.`,
      rule: 'write-the-humidity',
    },
    {
      id: 'settle',
      picture: 'boards',
      does: say`Cut the board no shorter than the runs of parts need, as drawn above. Stand it on edge with air on both sides, and weigh an offcut.`,
      check: say`${settled(box.boardThickness)}.`,
      caution: 'crosscut',
      rule: 'short-pieces-stay-joined',
    },
    ...resawing(design),
    {
      id: 'thickness',
      picture: 'thickness',
      does: planed(design),
      check: say`All walls equally thick within ${fine(0.1)}, at both ends.`,
      caution: 'machines',
      rule: 'one-thickness-all-round',
    },
    {
      id: 'marks',
      picture: 'marks',
      does:
        box.wallsFrom === 'bookmatched'
          ? say`Mark one half front and side, the other back and side. Draw a triangle over the upper edges; write in, out and up on every face.`
          : say`Mark the walls along ${box.kind === 'lift-off' ? 'each' : 'the'} strip: front, side, back, side. Draw a triangle over the upper edges; write in, out and up on every face.`,
      check: say`Every part shows which face is in and which edge is up.`,
    },
    {
      id: 'height',
      picture: 'height',
      does:
        box.kind === 'lift-off'
          ? say`Rip the walls of the box to ${size(plan.rim)}, those of the lid to ${size(plan.height - plan.rim)}, each set from one setting.`
          : say`Rip all walls to one height, ${size(plan.height + plan.sawn)}, from one setting.`,
      check: say`All edges level when the walls stand side by side.`,
      caution: 'machines',
    },
  ];
}

/** First ends, checked, before any second end. */
export function lengthSteps(design: Planned): Step[] {
  const { box, parts, plan } = design;
  const of = (name: string) => parts.find((part) => part.name === name)?.finished.length ?? 0;
  const tilt = isMitered(box);
  const liftsOff = box.kind === 'lift-off';
  const highest = liftsOff ? Math.max(plan.rim, plan.height - plan.rim) : plan.height + plan.sawn;
  return [
    ...(tilt
      ? [
          {
            id: 'miter-test',
            picture: 'miter test' as const,
            does: say`Set the saw to 45°. Cut eight scraps as wide as the walls and close a frame of them.`,
            check: say`No light at the last corner: it shows eight times the error of the setting. Open outside means under 45°, open inside over.`,
            caution: 'crosscut' as const,
            rule: 'eight-cuts-of-a-miter',
          },
        ]
      : []),
    {
      id: 'first-ends',
      picture: 'first ends',
      does: tilt ? say`Miter the first end of every wall.` : say`Cut the first end of every wall square.`,
      check: tilt
        ? say`Square across the width, against the light, before any second end is cut.`
        : say`Square to the marked edge and to the face, against the light: within ${fine(0.1)} over ${size(highest)}. Only then the second end.`,
      caution: 'crosscut',
      rule: 'first-end-square-before-the-second',
    },
    {
      id: 'second-ends',
      picture: 'second ends',
      does: say`Set a stop and${liftsOff ? ', for the box and for its lid,' : ''} cut both sides to ${size(of('left'))}, then both ends to ${size(of('front'))}.`,
      check: say`Opposite walls, held together, differ by no more than ${fine(0.1)}.`,
      caution: 'crosscut',
    },
  ];
}

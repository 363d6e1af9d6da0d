/** What makes the way the box opens impossible: notch, hole, liner, saw line, hinges. Over 150 lines: one table. */
import { practice } from '../../core/practice.ts';
import type { Values } from '../../whole/index.ts';
import { both, type Condition } from '../refusal.ts';

const notched = (v: Values) => v.kind === 'sliding' && v.pull === 'notch';
const lifts = (v: Values) => v.kind === 'lift-off';
const separate = (v: Values) => v.kind !== 'sliding';
const sawn = (v: Values) => v.kind === 'sawn';
/** Shallowest notch a thumb finds, mm: ours. */
export const leastNotch = 1;
/** Shortest lid with room for a notch, mm: twice what the notch takes. */
export const shortestNotched = 2 * (practice.notchFromEnd + practice.notchRun);
/** Whether a finger hole fits the lid: three diameters across, and clear of both ends. */
export const holeFits = (length: number, insideWidth: number): boolean =>
  insideWidth >= 3 * practice.fingerHole && length >= 2 * (practice.holeFromEnd + practice.fingerHole);
/** Least wood between panel and rim, mm: ours. */
const someWall = 3;

const upToPanel = (v: Values) => v.lidLip + v.lidThickness;
const aboveFloor = (v: Values) => v.outsideHeight - v.bottomLip - v.bottomTongue;
const insideLid = (v: Values) => v.lidHeight - upToPanel(v);
const narrower = (v: Values) => Math.min(v.insideLength, v.insideWidth);
/** A liner as thick as half of what a given outside leaves between the walls. */
export const linerFills = (v: Values, wallToWall: number) =>
  lifts(v) && v.sizeFrom === 'outside' && wallToWall > 0 && 2 * v.linerThickness >= wallToWall;
const back = (v: Values) => Math.max(v.outsideLength, v.outsideWidth);

export const openingConditions: readonly Condition[] = [
  {
    id: 'notch-through-lid',
    breaks: (v) =>
      notched(v) &&
      v.lidThickness > practice.lidSlip &&
      v.lidThickness - practice.lidSlip < practice.notchFloor + leastNotch - 1e-9,
    what: (v) =>
      `A thumb notch leaves less than ${both(practice.notchFloor)} of a lid ${both(v.lidThickness - practice.lidSlip)} thick.`,
    field: () => 'lidThickness',
    limit: 'least',
    to: () => practice.notchFloor + leastNotch + practice.lidSlip,
  },
  {
    id: 'lid-too-small-for-notch',
    breaks: (v) =>
      notched(v) && (v.outsideLength < shortestNotched || v.insideWidth < 2 * practice.notchWidth),
    what: (v) =>
      `The lid, ${both(v.outsideLength)} by ${both(v.insideWidth)}, is too small for a thumb notch ${both(practice.notchWidth)} wide.`,
    field: () => 'pull',
    limit: 'choose',
    to: () => 'glued',
  },
  {
    id: 'lid-too-small-for-hole',
    breaks: (v) => v.kind === 'sliding' && v.pull === 'hole' && !holeFits(v.outsideLength, v.insideWidth),
    what: (v) =>
      `The lid, ${both(v.outsideLength)} by ${both(v.insideWidth)}, is too small for a finger hole ${both(practice.fingerHole)} wide.`,
    field: () => 'pull',
    limit: 'choose',
    to: () => 'glued',
  },
  {
    id: 'no-pull',
    breaks: (v) => v.kind === 'sliding' && v.pull === 'glued' && !(v.pullThickness > 0),
    what: () => 'A pull without thickness gives the thumb nothing.',
    field: () => 'pullThickness',
    limit: 'least',
    to: () => 3,
  },
  {
    id: 'lid-walls-too-low',
    breaks: (v) => separate(v) && !(insideLid(v) > 0),
    what: (v) =>
      `The lid’s walls are ${both(v.lidHeight)} high, and its panel with the wood above it takes ${both(upToPanel(v))}.`,
    field: () => 'lidHeight',
    limit: 'least',
    to: (v) => upToPanel(v) + someWall,
  },
  {
    id: 'lid-walls-too-high',
    breaks: (v) => separate(v) && aboveFloor(v) > 0 && v.lidHeight >= aboveFloor(v),
    what: (v) =>
      `The lid’s walls are ${both(v.lidHeight)} high, and the box only ${both(aboveFloor(v))} from its floor to the top.`,
    field: () => 'lidHeight',
    limit: 'most',
    to: (v) => aboveFloor(v) / 2,
  },
  {
    id: 'no-liner',
    breaks: (v) => lifts(v) && !(v.linerThickness > 0),
    what: () => 'Without a liner the lid slides off.',
    field: () => 'linerThickness',
    limit: 'least',
    to: () => 3,
  },
  {
    id: 'liner-fills-box',
    breaks: (v) => linerFills(v, narrower(v)),
    what: (v) => `Two liners of ${both(v.linerThickness)} fill an inside ${both(narrower(v))} wide.`,
    field: () => 'linerThickness',
    limit: 'most',
    to: (v) => narrower(v) / 4,
  },
  {
    id: 'no-liner-rise',
    breaks: (v) => lifts(v) && !(v.linerRise > 0),
    what: () => 'The liner does not rise above the box, so it does not hold the lid.',
    field: () => 'linerRise',
    limit: 'least',
    to: () => 3,
  },
  {
    id: 'liner-too-high',
    breaks: (v) => lifts(v) && insideLid(v) > 0 && v.linerRise > insideLid(v) + 1e-6,
    what: (v) =>
      `The liner rises ${both(v.linerRise)} and the lid is only ${both(insideLid(v))} deep inside: the lid would not close.`,
    field: () => 'linerRise',
    limit: 'most',
    to: insideLid,
  },
  {
    id: 'no-room-for-lid',
    breaks: (v) => lifts(v) && v.lidRoom < 0,
    what: () => 'The liner is wider than the lid that should slip over it.',
    field: () => 'lidRoom',
    limit: 'least',
    to: () => 0.3,
  },
  {
    id: 'room-eats-liner',
    breaks: (v) => lifts(v) && v.linerThickness > 0 && v.lidRoom >= v.linerThickness,
    what: (v) =>
      `The room of ${both(v.lidRoom)} around the liner leaves nothing of its ${both(v.linerThickness)} above the rim.`,
    field: () => 'lidRoom',
    limit: 'most',
    to: (v) => v.linerThickness / 4,
  },
  {
    id: 'negative-kerf',
    breaks: (v) => sawn(v) && v.kerf < 0,
    what: () => 'A saw takes wood away; the kerf cannot be less than nothing.',
    field: () => 'kerf',
    limit: 'least',
    to: () => 0.3,
  },
  {
    id: 'no-hinge',
    breaks: (v) => sawn(v) && !(v.hingeLength > 0),
    what: () => 'A hinge without length holds no lid.',
    field: () => 'hingeLength',
    limit: 'least',
    to: () => 8,
  },
  {
    id: 'hinges-too-long',
    breaks: (v) => sawn(v) && v.hingeLength > 0 && 4 * v.hingeLength > back(v) + 1e-6,
    what: (v) =>
      `Two hinges of ${both(v.hingeLength)}, each one hinge length from its end, need a wall of ${both(4 * v.hingeLength)}; the back is ${both(back(v))}.`,
    field: () => 'hingeLength',
    limit: 'most',
    to: (v) => back(v) / 4,
  },
];

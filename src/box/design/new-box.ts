/**
 * A whole box from three answers: what goes in, how it opens, which wood in which air.
 *
 * Everything else is chosen for the reader, on their own ruler: walls a twenty-fifth of the longer side, grooves half of
 * them, fingers by a cutter and odd in number, gaps as the wood and the air of the day ask. Where a solid bottom or lid
 * would hardly hold, plywood takes its place; what is chosen always can be built, and breaks no rule.
 */

import type { Refused } from '../../calc/core/refusal.ts';
import type { Arrangement } from '../../calc/size/packing.ts';
import { type Ruler, toMark } from '../../units/index.ts';
import { clean } from '../../units/rounding.ts';
import type { Item } from '../core/field.ts';
import { exampleFor } from '../subjects/example.ts';
import { type Box, fields } from '../subjects/inputs.ts';
import { evaluate } from '../whole/index.ts';
import { bestOnMarks, isWithinFields, type OnMarks } from './best-on-marks.ts';
import { mendRefusal } from './mend-refusal.ts';
import { cutterStep } from './onto-marks.ts';
import { refusalsOf } from './refusals/index.ts';
import { standingOf } from './standing.ts';
import { blockOf, waysToLie, whyNoWay } from './ways-to-lie.ts';

export interface NewBoxAnswers {
  readonly name: string;
  readonly items: readonly Item[];
  readonly kind: Box['kind'];
  readonly joint: Box['joint'];
  readonly species: Box['species'];
  /** % relative humidity, and °C. */
  readonly air: Pick<Box, 'humidityDry' | 'humidityDamp' | 'humidityToday' | 'temperature'>;
}

/** The longer side outside to the thickness of the walls, and the walls there are, mm: common practice. */
const sideToWall = 25;
const [thinnest, thickest] = [6, 13];

/** What cannot be built, what breaks, and what is not usual, in this order. */
const cost = (box: Box): number => {
  if (!isWithinFields(box)) return 1e9;
  const { ranks, refused } = standingOf(box);
  let sum = refused.size * 1e6;
  for (const rank of ranks.values()) sum += rank === 2 ? 1e3 : rank;
  return sum;
};
type Found = Pick<OnMarks, 'box' | 'cost'>;
const isSound = (sum: number) => sum < 1e3;

/** Of the ways to lay the things the first, which wastes least, that makes a box lower than half its width; else the lowest. */
const flattest = (ways: readonly Arrangement[]): Arrangement | undefined => {
  const heightToWidth = (way: Arrangement) => blockOf(way).contentsHeight / blockOf(way).contentsWidth;
  return (
    ways.find((way) => heightToWidth(way) <= 1 / 3) ??
    ways.toSorted((one, other) => heightToWidth(one) - heightToWidth(other))[0]
  );
};

/** Sizes near what is usual, before they are brought onto marks; walls so many times as thick. */
function firstSizes(box: Box, ruler: Ruler, times: number): Box {
  const side = Math.max(box.contentsLength, box.contentsWidth) + 2 * box.clearance + box.fingerRoom;
  const wall = toMark(times * Math.min(thickest, Math.max(thinnest, side / sideToWall)), ruler.mark);
  const depth = toMark(wall / 2, ruler.mark, 'down');
  const step = cutterStep(ruler);
  const fingerWidth = Math.max(fields.fingerWidth.low, toMark(wall, step, 'down'));
  return { ...box, wall, grooveDepth: depth, lidGrooveDepth: depth, fingerWidth };
}

/** The gaps that wood and air ask for on the day it is built; nothing to leave where the wood has no figure. */
function withGaps(box: Box, { fit }: Ruler): Box {
  const { bottomGapNeeded: gap, lidPlayNeeded: play } = evaluate(box);
  return {
    ...box,
    ...(gap > 0 && { bottomGap: clean(toMark(gap, fit / 2, 'up')) }),
    ...(play > 0 && { lidPlay: clean(toMark(play, fit, 'up')) }),
  };
}

/** Other ways to build it, the nearest to the first first; and walls so many times as thick. */
const instead: readonly Partial<Box>[] = [
  {},
  { bottom: 'plywood' },
  { bottom: 'plywood', bottomFit: 'glued' },
  { lid: 'plywood' },
  { bottom: 'plywood', bottomFit: 'glued', lid: 'plywood' },
  // For low walls with keys; the other joints have none.
  { keyCount: 1, lidHeight: 30 },
];
const thicker = [1, 1.3, 1.7];

/** Takes what its refusals name, as long as there is something, and brings it onto marks again. */
function mended(found: Found, ruler: Ruler): Found {
  let best = found;
  for (let round = 0; round < 4 && !isSound(best.cost); round++) {
    const changes = refusalsOf(evaluate(best.box)).flatMap((one) => mendRefusal(best.box, one, ruler) ?? []);
    const next = changes
      .map(({ inputs }) => bestOnMarks({ ...best.box, ...inputs }, ruler, cost))
      .reduce<Found>((one, other) => (other.cost < one.cost ? other : one), best);
    if (next === best) break;
    best = next;
  }
  return best;
}

/**
 * The box that three answers make, for a reader with this ruler.
 * @returns refused where the things fit into no box there can be
 */
export function newBox(answers: NewBoxAnswers, ruler: Ruler): Box | Refused {
  const { items, name, kind, joint, species, air } = answers;
  const start: Box = {
    ...exampleFor(ruler.system),
    name,
    items,
    kind,
    joint,
    species,
    ...air,
    sizeFrom: 'contents',
  };
  const way = flattest(waysToLie(start, items));
  if (!way) return { refused: whyNoWay(start, items) };
  const laid = { ...start, ...blockOf(way) };
  let best: Found | undefined;
  for (const times of thicker)
    for (const other of instead) {
      const first = withGaps({ ...firstSizes(laid, ruler, times), ...other }, ruler);
      const found = mended(bestOnMarks(first, ruler, cost), ruler);
      if (!best || found.cost < best.cost - 1) best = found;
      if (isSound(best.cost)) return tidy(best.box);
    }
  // A joint that can be cut in no such box gives way too.
  return joint === 'finger' ? tidy(best!.box) : newBox({ ...answers, joint: 'finger' }, ruler);
}

/** Without the noise of arithmetic. */
const tidy = (box: Box): Box =>
  Object.fromEntries(
    Object.entries(box).map(([name, value]) => [name, typeof value === 'number' ? clean(value) : value]),
  ) as unknown as Box;

/** Takes back what a rule cannot spare, until nothing is lost: as few sizes as can be found stay off the ruler. */

import type { Ruler } from '../../units/index.ts';
import { type Box, fields, type NumberName } from '../subjects/inputs.ts';
import { evaluate } from '../whole/index.ts';
import { heightOntoMarks } from './onto-marks.ts';
import { offRuler } from './ruler-sizes.ts';

/** Sizes that hold one another: the front's edge against its fingers, the grooves against the wall. */
const together: readonly (readonly NumberName[])[] = [
  ['fingerWidth', 'lidLip', 'lidThickness', 'lidHeight'],
  ['wall', 'grooveDepth', 'lidGrooveDepth'],
  ['grooveDepth', 'bottomGap'],
  ['lidGrooveDepth', 'lidPlay'],
];

const numbers = (Object.keys(fields) as (keyof Box)[]).filter(
  (name): name is NumberName => fields[name].type === 'number',
);

/** Boxes in which one more number, or one more set of them, is as it was. */
function backwards(now: Box, box: Box, ruler: Ruler): Box[] {
  const moved = numbers.filter((name) => now[name] !== box[name]);
  const sets = [
    ...moved.map((name) => [name]),
    ...together.filter((set) => set.some((name) => moved.includes(name))),
  ];
  return sets.flatMap((set) => {
    const back = { ...now, ...Object.fromEntries(set.map((name) => [name, box[name]])) };
    return box.joint === 'finger' ? [back, heightOntoMarks(back, ruler)] : [back];
  });
}

/**
 * @param tried boxes on the marks, each of which loses something
 * @param costOf 0 for what loses nothing, as the box as it was does
 */
export function givingBack(tried: readonly Box[], box: Box, ruler: Ruler, costOf: (box: Box) => number): Box {
  const offOf = (one: Box) => offRuler(evaluate(one), ruler).length;
  const settled = tried.map((start) => {
    let [now, cost] = [start, costOf(start)];
    // Each round takes something back; a chain that finds no way ends with the box as it was.
    for (let round = 0; cost > 0 && round < mostRounds; round++) {
      const back = backwards(now, box, ruler)
        .map((one) => ({ one, cost: costOf(one) }))
        .sort((a, b) => a.cost - b.cost || offOf(a.one) - offOf(b.one));
      if (back.length === 0) break;
      [now, cost] = [back[0]!.one, back[0]!.cost];
    }
    return cost > 0 ? box : now;
  });
  return settled.sort((a, b) => offOf(a) - offOf(b))[0]!;
}

const mostRounds = 6;

/** The best box on the marks of a ruler, by what it costs: from the nearest marks downhill, one size at a time. */

import type { Ruler } from '../../units/index.ts';
import { type Box, fields, type NumberName } from '../subjects/inputs.ts';
import { evaluate } from '../whole/index.ts';
import { descend } from './descend.ts';
import { givingWay } from './gives-way.ts';
import {
  cutterStep,
  heightOntoMarks,
  inputsOntoMarks,
  insideOntoMarks,
  panelMarks,
  panelOntoMark,
} from './onto-marks.ts';
import { isMarked, markedInputs } from './ruler-sizes.ts';

/** Most boxes looked at from one start; each costs a tenth of a millisecond or two. */
const mostTries = 120;

/** Whether every number of a box may stand in its field. */
export const isWithinFields = (box: Box): boolean =>
  Object.entries(fields).every(
    ([name, field]) =>
      field.type !== 'number' ||
      (box[name as NumberName] >= field.low - 1e-9 && box[name as NumberName] <= field.high + 1e-9),
  );

const panels = ['bottom', 'lid'] as const;

/** Panels cut to the coarsest mark at which no rule is lost. */
function panelsDown(box: Box, ruler: Ruler, costOf: (box: Box) => number): Box {
  let best = box;
  for (const panel of panels) {
    const v = evaluate(best);
    const tried = panelMarks(ruler).map((mark) => ({ ...best, ...panelOntoMark(best, v, panel, mark) }));
    const costs = tried.map(costOf);
    best = tried[costs.indexOf(Math.min(...costs))]!;
  }
  return best;
}

/** Boxes one mark away in one size, what gives way included. */
function* besideMarks(box: Box, ruler: Ruler): Iterable<Box> {
  const v = evaluate(box);
  for (const marks of [1, -1, 2, -2])
    for (const name of markedInputs) {
      if (!isMarked(name, box)) continue;
      const step = name === 'fingerWidth' ? cutterStep(ruler) : ruler.mark;
      const value = box[name] + marks * step;
      if (value < fields[name].low || value > fields[name].high) continue;
      yield { ...box, ...givingWay(v, name, value, ruler) };
    }
  for (const by of [ruler.mark, -ruler.mark]) yield* roomier(box, by);
  for (const more of [2, -2]) yield heightOntoMarks(box, ruler, more);
  for (const mark of panelMarks(ruler))
    for (const by of [1, -1]) {
      yield { ...box, bottomGap: Math.max(0, box.bottomGap + (by * mark) / 2) };
      yield { ...box, lidPlay: Math.max(0, box.lidPlay + by * mark) };
    }
}

/** More room around the contents, or less: both ways, along and across. */
function* roomier(box: Box, by: number): Iterable<Box> {
  const more = (value: number, of = by) => Math.max(0, value + of);
  if (box.sizeFrom === 'contents') {
    yield { ...box, clearance: more(box.clearance, by / 2) };
    yield { ...box, fingerRoom: more(box.fingerRoom) };
    return;
  }
  const [wantedLength, wantedWidth] = [more(box.wantedLength), more(box.wantedWidth)];
  yield { ...box, wantedLength, wantedWidth };
  yield { ...box, wantedLength };
  yield { ...box, wantedWidth };
}

/** The whole box on the marks, panels down. */
function ontoMarks(box: Box, ruler: Ruler, costOf: (box: Box) => number): Box {
  const sized = heightOntoMarks(insideOntoMarks(inputsOntoMarks(box, ruler), ruler), ruler);
  return panelsDown(sized, ruler, costOf);
}

/** Ways to begin: the nearest marks, then walls one mark off, and fingers of the next cutters. */
function* starts(box: Box, ruler: Ruler): Iterable<Box> {
  const v = evaluate(box);
  const cutters = box.joint === 'finger' ? [0, -1, 1] : [0];
  for (const walls of [0, 1, -1])
    for (const cutter of cutters) {
      const wall = box.wall + walls * ruler.mark;
      const fingerWidth = box.fingerWidth + cutter * cutterStep(ruler);
      if (wall < fields.wall.low || wall > fields.wall.high || fingerWidth < fields.fingerWidth.low) continue;
      yield { ...box, ...(walls !== 0 && givingWay(v, 'wall', wall, ruler)), fingerWidth };
    }
}

export interface OnMarks {
  readonly box: Box;
  readonly cost: number;
  /** Where something is still wrong with it: what else was tried, the nearest marks first. */
  readonly tried: readonly Box[];
}

/**
 * The best box on the marks that is found: from each start downhill, until one costs nothing.
 * @param costOf 0 where nothing is wrong
 */
export function bestOnMarks(box: Box, ruler: Ruler, costOf: (box: Box) => number): OnMarks {
  const tried: Box[] = [];
  let best = { box, cost: Number.POSITIVE_INFINITY };
  for (const start of starts(box, ruler)) {
    const on = ontoMarks(start, ruler, costOf);
    const found = descend(on, (one) => besideMarks(one, ruler), costOf, mostTries);
    if (tried.length === 0) tried.push(on, found.box);
    if (found.cost < best.cost) best = found;
    if (best.cost === 0) break;
  }
  return { ...best, tried: [...tried, best.box] };
}

/**
 * A box brought onto the marks of a ruler, size by size. Nothing here asks what the rules say of it: see `to-ruler.ts`.
 */

import { INCH, isOn, type Rounding, type Ruler, toMark } from '../../units/index.ts';
import { type Box, fields, hasInput } from '../subjects/inputs.ts';
import { bottomFloats } from '../subjects/movement/results.ts';
import { evaluate, type Values } from '../whole/index.ts';
import { heightOf, oddFingers, roomFor } from './gives-way.ts';
import { isMarked, type MarkedInput, markedInputs } from './ruler-sizes.ts';

/** Steps in which cutters are sold, mm: sixteenths or whole millimeters; on a decimal rule twentieths of an inch. */
export const cutterStep = ({ system, print }: Ruler): number =>
  system === 'mm' ? 1 : print.denominator === 100 ? INCH / 20 : INCH / 16;

/** A length on a mark, within the field of its input. */
function markWithin(name: MarkedInput, value: number, { mark }: Ruler, round?: Rounding): number {
  const { low, high } = fields[name];
  const on = toMark(value, mark, round);
  return Math.min(toMark(high, mark, 'down'), Math.max(toMark(low, mark, 'up'), on));
}

/** Wall, lips, tongue, panels, grooves and the rest to the nearest mark; a groove that was at most half the wall stays so. */
export function inputsOntoMarks(box: Box, ruler: Ruler): Box {
  const onto = { ...box } as { -readonly [K in keyof Box]: Box[K] };
  for (const name of markedInputs)
    if (name !== 'fingerWidth' && isMarked(name, box)) onto[name] = markWithin(name, box[name], ruler);
  for (const name of ['grooveDepth', 'lidGrooveDepth'] as const)
    if (box[name] <= box.wall / 2 + 1e-6 && onto[name] > onto.wall / 2 + 1e-6)
      onto[name] = markWithin(name, onto.wall / 2, ruler, 'down');
  if (hasInput('fingerWidth', box)) onto.fingerWidth = cutterFor(box.fingerWidth, onto.wall, ruler);
  return onto;
}

/** The cutter nearest to a finger's width that lies between half the wall and the whole of it, where there is one. */
function cutterFor(width: number, wall: number, ruler: Ruler): number {
  const step = cutterStep(ruler);
  const near = Math.max(step, toMark(width, step));
  const [least, most] = [toMark(wall / 2, step, 'up'), toMark(wall, step, 'down')];
  return most >= least ? Math.min(most, Math.max(least, near)) : near;
}

/** The inside, and with it the outside, up to a mark: the rest goes to the room around the contents. */
export function insideOntoMarks(box: Box, ruler: Ruler): Box {
  const v = evaluate(box);
  const missing = (name: 'insideLength' | 'insideWidth') => toMark(v[name], ruler.mark, 'up') - v[name];
  if (box.sizeFrom !== 'contents')
    return {
      ...box,
      wantedLength: box.wantedLength + missing('insideLength'),
      wantedWidth: box.wantedWidth + missing('insideWidth'),
    };
  // The room at the sides is one number for both ways; what the length still lacks becomes room for fingers.
  const wide = missing('insideWidth');
  const length = v.insideLength + wide;
  return {
    ...box,
    clearance: box.clearance + wide / 2,
    fingerRoom: box.fingerRoom + toMark(length, ruler.mark, 'up') - length,
  };
}

/**
 * The height onto whole odd fingers, or up to a mark: the room above the contents gives way.
 * @param more fingers beyond the nearest odd number, in twos
 */
export function heightOntoMarks(box: Box, ruler: Ruler, more = 0): Box {
  const v = evaluate(box);
  if (box.joint !== 'finger') {
    const cut = v.kind === 'sawn' ? v.jointedHeight : v.outsideHeight;
    return { ...box, ...roomFor(v, v.outsideHeight + toMark(cut, ruler.mark, 'up') - cut, 0, ruler.mark) };
  }
  const width = box.fingerWidth;
  const lidHeight = box.kind === 'lift-off' ? oddFingers(box.lidHeight, width) * width : box.lidHeight;
  const joined = v.jointedHeight + (box.kind === 'lift-off' ? box.lidHeight - lidHeight : 0);
  const count = Math.max(3, oddFingers(joined, width) + more);
  const height = heightOf(v, count, width, lidHeight);
  return { ...box, lidHeight, ...roomFor(v, height, 0, 2 * width) };
}

/** The marks a panel may be cut to, the ruler's own first, each half as far apart as the one before. */
export function panelMarks({ mark, fit, system }: Ruler): readonly number[] {
  const marks = [mark];
  while (marks.at(-1)! / 2 > fit * (1 - 1e-9)) marks.push(marks.at(-1)! / 2);
  return system === 'mm' ? [...marks.filter((one) => isOn(one, fit)), fit] : marks;
}

/** The panel beside a gap, down to a mark: the gap takes the rest. */
export function panelOntoMark(box: Box, v: Values, panel: 'bottom' | 'lid', mark: number): Partial<Box> {
  if (panel === 'bottom')
    return bottomFloats(box)
      ? { bottomGap: box.bottomGap + (v.bottomWidth - toMark(v.bottomWidth, mark, 'down')) / 2 }
      : {};
  return box.kind === 'sliding'
    ? { lidPlay: box.lidPlay + v.lidWidth - toMark(v.lidWidth, mark, 'down') }
    : {};
}

/**
 * What gives way when one number changes, so that the rest of the box still belongs together:
 *
 *   lips, tongue, lid   whole fingers hold the height, so what these take comes from the room above the contents
 *   finger width        the walls get the nearest odd number of such fingers
 *   wall                the grooves keep their share of it
 *
 * Controls, bands, smallest changes and the way to a ruler all use the same.
 */

import { nearestOddCount } from '../../calc/joints/finger-layout.ts';
import { type Ruler, toMark } from '../../units/index.ts';
import { clean } from '../../units/rounding.ts';
import { type Box, fields, type NumberName } from '../subjects/inputs.ts';
import type { Values } from '../whole/index.ts';

/** Room above the contents that is never given away, mm: what the rule on it asks for. */
const leastRoom = 1;

const stacked: readonly NumberName[] = ['bottomLip', 'bottomTongue', 'lidThickness', 'lidLip'];

/** The input that takes up a change of the whole height, and the least it may be. */
const roomOf = ({ sizeFrom, headroom }: Box): readonly [name: 'headroom' | 'wantedHeight', least: number] =>
  sizeFrom === 'contents'
    ? ['headroom', Math.min(headroom, leastRoom)]
    : ['wantedHeight', fields.wantedHeight.low];

/** Height of the box outside at which the walls are `count` fingers high; a lift-off lid has walls of its own. */
export const heightOf = (v: Box, count: number, width: number, lidHeight: number): number =>
  count * width + (v.kind === 'lift-off' ? lidHeight : 0) - (v.kind === 'sawn' ? v.kerf : 0);

/** The odd number of fingers nearest to a height, at least three. */
export const oddFingers = (height: number, width: number): number =>
  nearestOddCount.compute({ H: height, f: width });

/**
 * The room that makes the box so high, going up by two fingers at a time while there would be too little.
 * @param taken what other changes take of the present height, mm; a height that was asked for outside takes it from the inside
 */
export function roomFor(v: Values, height: number, taken: number, twoFingers: number): Partial<Box> {
  const [name, least] = roomOf(v);
  const outside = v.sizeFrom === 'outside';
  let room = v[name] + height - v.outsideHeight - (outside ? 0 : taken);
  while (room < least - 1e-9) room += twoFingers;
  return { [name]: clean(Math.min(fields[name].high, room)) };
}

const isWhole = ({ jointedHeight, fingerWidth }: Values) => {
  const count = jointedHeight / fingerWidth;
  return Math.abs(count - Math.round(count)) < 1e-6;
};

/** Everything that changes with one number: itself, and what gives way. */
export function givingWay(v: Values, name: NumberName, value: number, ruler: Ruler): Partial<Box> {
  const change = { [name]: value };
  if (name === 'wall') return { ...change, ...keepingShare(v, value, ruler) };
  if (v.joint !== 'finger' || !(v.fingerWidth > 0)) return change;
  if (stacked.includes(name)) {
    // Fingers that do not come out whole hold nothing; an outside that is given holds itself.
    if (v.sizeFrom === 'outside' || !isWhole(v)) return change;
    return { ...change, ...roomFor(v, v.outsideHeight, value - v[name], 2 * v.fingerWidth) };
  }
  if (name !== 'fingerWidth' || !(value > 0)) return change;
  const lidHeight = clean(oddFingers(v.lidHeight, value) * value);
  const height = heightOf(v, oddFingers(v.jointedHeight, value), value, lidHeight);
  return {
    ...change,
    ...(v.kind === 'lift-off' && { lidHeight }),
    ...roomFor(v, height, 0, 2 * value),
  };
}

/** The grooves of walls so thick: the same share as now, on a mark, at most half. */
function keepingShare(v: Values, wall: number, { mark }: Ruler): Partial<Box> {
  const depth = (name: 'grooveDepth' | 'lidGrooveDepth') => {
    const share = v.wall > 0 ? v[name] / v.wall : 0;
    const most = share <= 0.5 ? toMark(wall / 2, mark, 'down') : Number.POSITIVE_INFINITY;
    return clean(Math.max(fields[name].low, Math.min(most, toMark(share * wall, mark))));
  };
  return { grooveDepth: depth('grooveDepth'), lidGrooveDepth: depth('lidGrooveDepth') };
}

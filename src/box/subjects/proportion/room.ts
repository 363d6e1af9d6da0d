/** The room that the box leaves around its contents. */
import { type Working, work } from '../../../calc/core/working.ts';
import { roomBeside, roomEachSide, roomOver, smallestInside } from '../../../calc/proportion/room.ts';
import { dividerSlip } from '../../../calc/size/sizes.ts';
import { choiceOf, type ResultTable, rowsOf } from '../../core/result.ts';
import type { SizeValues } from '../size/results.ts';

export interface RoomResults {
  /** Room beside the contents where it is tightest, lining and dividers taken off, both sides together; on each side; above; mm. */
  readonly roomBeside: number;
  readonly roomEachSide: number;
  readonly roomOver: number;
  readonly smallestInside: number;
}

type V = SizeValues & RoomResults;

const row = rowsOf<V>();
const choice = choiceOf<V>();

/** The room along the length or the width, whichever is less. */
function tightest(v: V, of: typeof roomBeside | typeof roomEachSide): Working {
  const along = (l: number, c: number, n: number) =>
    work(of, { l, c, f: v.lining, n, d: v.dividerThickness, s: dividerSlip });
  const length = along(v.clearLength, v.contentsLength, v.dividersAcross);
  const width = along(v.clearWidth, v.contentsWidth, v.dividersAlong);
  return width.value < length.value ? width : length;
}

export const roomResults: ResultTable<keyof RoomResults, V> = {
  roomBeside: choice([roomBeside], (v) => tightest(v, roomBeside), {
    label: 'room beside the contents where it is tightest',
    kind: 'length',
    builds: true,
    rule: 'linings-and-dividers-first',
  }),
  roomEachSide: choice([roomEachSide], (v) => tightest(v, roomEachSide), {
    label: 'room on each side of the contents',
    kind: 'length',
    builds: true,
    rule: 'design-from-the-inside',
  }),
  roomOver: row(roomOver, (v) => ({ h: v.insideHeight, c: v.contentsHeight, f: v.lining }), {
    label: 'room above the contents',
    kind: 'length',
    builds: true,
    rule: 'design-from-the-inside',
  }),
  smallestInside: row(smallestInside, (v) => ({ l: v.clearLength, w: v.clearWidth, h: v.insideHeight }), {
    label: 'smallest inside size',
    kind: 'length',
    builds: true,
    rule: 'outside-is-inside-plus-two-walls',
  }),
};

/** The cautions that the orders of work of some boxes show, of each kind of lid and each joint. */
import { designBox } from '../../src/box/design/design.ts';
import { type Box, fields } from '../../src/box/subjects/inputs.ts';
import { workOf } from '../../src/box/work/work.ts';
import { exampleBox } from '../box/reckoned-box.ts';

const joints = Object.keys(fields.joint.options) as Box['joint'][];
const boxes: readonly Partial<Box>[] = [
  ...joints.flatMap((joint) => [
    { joint },
    { joint, kind: 'lift-off' as const, headroom: 30 },
    { joint, kind: 'sawn' as const, headroom: 30 },
  ]),
  { pull: 'glued', bottom: 'plywood' },
  { pull: 'hole' as Box['pull'] },
  { wallsFrom: 'bookmatched', boardThickness: 40 },
  { bottomSeat: 'rabbet' },
];

export const cautionsOfWork: ReadonlySet<string> = new Set(
  boxes.flatMap((box) =>
    (workOf(designBox({ ...exampleBox, ...box }))?.steps ?? []).flatMap(({ caution }) => caution ?? []),
  ),
);

/** Dry fit and glue. */
import { leanFromDiagonals } from '../../calc/square/diagonals.ts';
import { diagonalsAim, diagonalsMost, rockMost } from '../subjects/square/verdicts.ts';
import type { Amounts } from './amounts.ts';
import { fine, panel, say } from './say.ts';
import type { Planned, Step } from './step.ts';
import { openTime } from './times.ts';

/** Diagonals may differ by this, mm, and the box may rock by this. */
const [aim, most, rock] = [diagonalsAim, diagonalsMost, rockMost].map(({ mm: [, high] }) => high) as [
  number,
  number,
  number,
];

const amount = (value: number, kind: 'mass' | 'force', digits: 0 | 2 = 0) =>
  ({ value, kind, digits }) as const;

export function glueSteps({ box, plan, bottom, lid }: Planned, amounts: Amounts): Step[] {
  const [a, b] = [plan.length - 2 * plan.wall, plan.width - 2 * plan.wall];
  const lean = { value: leanFromDiagonals.compute({ a, b, D: most }), kind: 'angle', digits: 1 } as const;
  const frame = box.kind === 'lift-off' ? 'box and lid, each' : 'the box';
  // A panel that is left out before the corners close never goes in.
  const lidPanel = lid && box.kind !== 'sliding';
  return [
    {
      id: 'inside',
      picture: 'inside',
      does: say`Sand and finish the inside faces. Tape the joints first: no finish where glue goes, and no drying oil inside a box that shuts.`,
      check: say`Bare wood on every glued face.`,
      caution: 'panelFinish',
      rule: 'nothing-oily-inside',
    },
    {
      id: 'dry-fit',
      picture: 'dry fit',
      does: say`Put ${frame} together dry: ${lidPanel ? 'bottom and lid panel' : 'bottom'} in, clamps set, blocks taped on. Write down the order and time it.`,
      check: say`Done in under half the glue’s open time, ${String(openTime.low / 2)} to ${String(openTime.high / 2)} minutes for white or yellow glue. Diagonals within ${fine(aim)}; ${fine(most)} is the limit and means about ${lean} off square.`,
      rule: 'dry-fit-in-half-the-open-time',
    },
    {
      id: 'glue',
      picture: 'glue',
      does: say`Spread a thin even film, in all ${amount(amounts.glue.low, 'mass', 2)} to ${amount(amounts.glue.high, 'mass', 2)}. ${
        bottom?.glued ? 'Glue in the bottom.' : 'Bottom in, without glue in its groove.'
      }${lidPanel ? ' Lid panel in, without glue.' : ''} Clamp with even contact; joints that fit need little force.`,
      check: say`Diagonals again, top and bottom, while the glue is wet: squeeze the longer one by hand or with one light clamp; never press a tight panel home with clamps. On a flat plate the box rocks by no more than ${fine(rock)}.`,
      rule: 'solid-floats-plywood-may-be-glued',
    },
    ...(box.joint === 'keyed-mitre'
      ? [
          {
            id: 'key-strip',
            picture: 'key strip' as const,
            does: say`Plane a strip for the keys to ${panel(box.keyThickness)}, and saw the keys from its end, their grain along the long edge.`,
            check: say`A key slides into a slot cut in scrap, by hand.`,
            caution: 'smallStock' as const,
          },
          {
            id: 'keys',
            picture: 'keys' as const,
            does: say`After 24 hours saw the slots for the keys. Glue the keys in, and trim them flush from the outside in.`,
            check: say`Each key touches the bottom of its slot before glue goes in.`,
            caution: 'keys' as const,
          },
        ]
      : []),
  ];
}

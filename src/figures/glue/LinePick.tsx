/** The face of a wall across a glue line, leveled the day after; what it looks like a month later is picked. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { bell } from './glue-line.ts';

/** Wood shown to each side of the line, mm; user units to a mm across; and how many times higher heights are drawn. */
const reach = 8;
const times = 100;
/** Height of the wet line and depth of the dry one in an option, user units. */
const drawn = 13;

/** What comes of a line that was leveled the day after. */
export const lineOption = (v: Values): string => (v.sunkNextDay > 0 ? 'sunken' : 'level');

/** Path of a face across the line: `by` is how far it stands up there, in user units. */
const face = (v: Values, middle: number, top: number, across: number, by: number) =>
  bell(v, 1, reach)
    .map(([away, share]) => `${(middle + away * across).toFixed(1)} ${(top - share * by).toFixed(2)}`)
    .join('L');

/** The start: the line swollen by its water, and the level to which it is planed. */
export function WetLine({ values: v }: { values: Values }) {
  const [middle, top, across] = [175, 66, 20] as const;
  const by = v.sunkNextDay * times * across;
  const [left, right] = [middle - reach * across, middle + reach * across];
  return (
    <Drawing
      view={[0, 0, 350, 134]}
      title="The face of a wall across a glue line, the day after"
      description={`The wood stands up beside the line, drawn ${times} times as high. It is planed off to the level of the rest.`}
    >
      <path class="wood" d={`M${left} 116V${top}H${right}V116`} />
      <path class="grown" d={`M${face(v, middle, top, across, by)}Z`} />
      <path class="curve" d={`M${middle} ${top}V116`} />
      <path class="thin" d={`M${left - 10} ${top}H${right + 10}`} />
      <Label class="on-lines" x={left} y={top - 40} anchor="start">
        planed off
      </Label>
      <path class="thin" d={`M${left + 70} ${top - 34}L${middle - 22} ${top - by * 0.5}`} />
      <Label class="on-lid" x={middle + 8} y={102} anchor="start">
        glue
      </Label>
      <Label x={right} y={top - 40} anchor="end">
        {`heights ${times} times`}
      </Label>
    </Drawing>
  );
}

const heights: Readonly<Record<string, number>> = { sunken: -1, level: 0, ridge: 1 };

export function LinePick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const [middle, top, across] = [75, 34, 8] as const;
  const [left, right] = [middle - reach * across, middle + reach * across];
  const truth = open && option === lineOption(v);
  return (
    <Drawing
      view={[0, 12, 150, 72]}
      title="The face a month later"
      description={
        truth ? `It lies ${said(v.sunkNextDay, 'length', { as: 'fine' })} deep.` : 'One of three shapes.'
      }
    >
      <path
        class="wood"
        d={`M${left} 76L${face(v, middle, top, across, drawn * (heights[option] ?? 0))}L${right} 76`}
      />
      <path class="curve" d={`M${middle} ${top - drawn * (heights[option] ?? 0)}V76`} />
    </Drawing>
  );
}

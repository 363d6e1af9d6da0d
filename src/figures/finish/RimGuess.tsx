/**
 * The rim of a box walked around once, its four walls laid in a row, standing so that three corners are level. How much
 * must come off the third corner until the whole rim is flat is guessed. Heights are drawn many times as large.
 */
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { FineScale } from './FineScale.tsx';

/** What can be marked, mm. */
export const rimRange = { low: 0, high: 0.6 } as const;
const [left, right, rim, foot] = [16, 286, 34, 216] as const;
/** Drawing units for a mm of height. */
const tall = 240;
const down = (mm: number) => rim + mm * tall;
/** The third corner lies half way around, whatever the box: the mark moves there. */
const markAt = (left + right) / 2;
export const rimFrame: GuessFrame = {
  width: 350,
  height: 268,
  from: [markAt, rim],
  to: [markAt, down(rimRange.high)],
};

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function RimGuess({ values: v, system, mark, open }: Props) {
  const { outsideLength: L, outsideWidth: b, rock, rimLoss: loss } = v;

  const around = (right - left) / (2 * (L + b));
  const at = [0, L, L + b, 2 * L + b, 2 * (L + b)].map((way) => left + way * around);
  const third = at[2]!;
  const line = (depths: readonly number[]) => depths.map((depth, i) => `${at[i]} ${down(depth)}`).join('L');
  const twisted = [0, 0, 0, rock, 0];
  const flat = [loss, 0, loss, rock, loss];
  const times = Math.round(tall / around);
  return (
    <Drawing
      view={[0, 0, rimFrame.width, rimFrame.height]}
      title="The rim of a box, its four walls in a row"
      description={`Three corners are level, the fourth lies ${said(rock, 'length', { as: 'fine' })} lower. Heights are drawn ${times} times as large as lengths. ${
        open
          ? `Flat, the rim has lost ${said(loss, 'length', { as: 'fine' })} at the first and third corner, and nothing at the second and fourth.`
          : 'The flat rim is not drawn yet.'
      }`}
    >
      <path class="wood" d={`M${line(twisted)}V${foot}H${left}Z`} />
      <path class="thin" d={[1, 2, 3].map((i) => `M${at[i]} ${foot}v-22`).join('')} />
      <path class="hidden-line" d={`M${third} ${rim}H${right}`} />
      {open && (
        <g class="arrives">
          <path class="inside" d={`M${line(twisted)}L${line(flat).split('L').reverse().join('L')}Z`} />
          <path class="truth" fill="none" d={`M${line(flat)}`} />
          <NumberLabel
            class="on-lid"
            x={third + 4}
            y={down(loss) + 20}
            anchor="end"
            value={loss}
            kind="length"
            as="exact"
          />
          <NumberLabel
            class="on-lid"
            x={left + 4}
            y={down(loss) + 20}
            anchor="start"
            value={loss}
            kind="length"
            as="exact"
          />
        </g>
      )}
      {mark !== undefined && <path class="ghost bare" d={`M${third - 40} ${down(mark)}H${third + 40}`} />}
      <NumberLabel
        class="on-lines"
        x={at[3]!}
        y={rim - 14}
        value={rock}
        kind="length"
        as="exact"
        before="rock "
      />
      {at.map((x, i) => (
        <Label key={x} x={x} y={foot + 14}>
          {(i % 4) + 1}
        </Label>
      ))}
      <Label x={(left + right) / 2} y={foot + 34}>
        corners, once around the rim
      </Label>
      <FineScale x={right + 14} from={rim} to={down(rimRange.high)} length={rimRange.high} system={system} />
    </Drawing>
  );
}

/** Strength (square) and stiffness (cube) left behind a groove, against its depth; the usual band and the reader's groove. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { AxisLines, Ticks } from '../plot/Axis.tsx';
import { across, axesOn, curve, evenly, Zone } from '../plot/Plot.tsx';

/** Share of the wall, and percent left. */
const axes = axesOn({ left: 44, right: 336, top: 34, bottom: 204 }, [0, 1], [0, 100]);
const { x, y, left: x0, right: x1, top: y0, bottom: y1 } = axes;
const percent = (value: number) => said(value, 'percent', { digits: 0 });

/** What is left of a power of the thickness, drawn once. */
const leftOf = (power: number) =>
  curve(
    axes,
    evenly([0, 1], 30).map((share) => [share, 100 * (1 - share) ** power]),
  );
const strength = leftOf(2);
const stiffness = leftOf(3);

const marks = [
  [0, '0'],
  [1 / 3, '1/3'],
  [1 / 2, '1/2'],
  [1, 'all'],
] as const;

export function WebLeft({ values: v }: { values: Values }) {
  const share = Math.min(1, 1 - v.web / v.wall);
  const at = x(share);
  const none = v.web <= 0;
  const [left, stiff] = none ? [0, 0] : [v.webStrength, v.webStiffness];
  /** Right of the mark and above the upper curve is always free. */
  const words = { x: Math.min(at + 9, 240), anchor: 'start' as const };
  return (
    <Drawing
      view={[0, 0, 350, 246]}
      title="What is left behind the groove"
      description={
        none
          ? 'The groove is as deep as the wall: nothing is left.'
          : `A groove ${percent(share * 100)} of the wall deep leaves ${percent(left)} of the strength and ${percent(stiff)} of the stiffness.`
      }
    >
      <Zone on={axes} x={[1 / 3, 1 / 2]} class="usual" />
      <path class="thin" d={across(axes, { x: [1 / 3, 1 / 2] })} />
      <Label x={x(5 / 12)} y={y0 - 9}>
        usual
      </Label>
      <AxisLines on={axes} />
      <Ticks on={axes} at={[0, 50, 100]} side="left" kind="percent" digits={0} />
      <Ticks on={axes} at={marks} side="below" />
      <Label x={(x0 + x1) / 2} y={y1 + 32}>
        depth of the groove, share of the wall
      </Label>
      <path class="curve" d={strength} />
      <path class="curve" stroke-dasharray="6 4" d={stiffness} />
      <line class="force" x1={at} y1={y1} x2={at} y2={y(left)} />
      <circle class="mark" cx={at} cy={y(left)} r="4" />
      <circle class="mark" cx={at} cy={y(stiff)} r="4" />
      {none ? (
        <Label x={x1} y={y(0) - 30} anchor="end">
          no wood left
        </Label>
      ) : (
        <>
          <Label {...words} y={y(left) - 26}>
            strength {percent(left)}
          </Label>
          <Label {...words} y={y(left) - 9}>
            stiffness {percent(stiff)}, dashed
          </Label>
        </>
      )}
      <NumberLabel x={x1} y={y0 - 9} anchor="end" value={v.web} kind="length" before="web " />
    </Drawing>
  );
}

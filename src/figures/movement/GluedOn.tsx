/**
 * A strip glued across a lid: above, the lid from above in true proportion; below, how far strip and lid want to
 * differ at each end of the joint, for every length of the strip.
 */
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { across, axesOn, curve, Plot } from '../plot/Plot.tsx';

export interface GluedOnProps {
  /** Of the lid: across the grain, and along it; mm. */
  width: number;
  length: number;
  /** Length of the strip, mm. */
  joint: number;
  /** Difference at each end per mm of joint, from the day of gluing to the dampest and to the driest day. */
  growing: number;
  shrinking: number;
}

const [left, right] = [6, 344];
/** A sheet of office paper, mm. */
const paper = 0.1;
const plotHeight = 130;

export function GluedOn({ width, length, joint, growing, shrinking }: GluedOnProps) {
  const scale = Math.min(338 / length, 150 / width);
  const [tall, wide] = [width * scale, length * scale];
  const [x0, y0] = [(350 - wide) / 2, 4];
  const plotTop = y0 + tall + 30;
  const bottom = plotTop + plotHeight;
  const most = Math.max(growing, shrinking) * width;
  const high = Math.max(most, paper * 1.5) * 1.1;
  const axes = axesOn({ left, right, top: plotTop, bottom }, [0, width], [0, high]);
  const { x, y } = axes;
  const line = (slope: number) =>
    curve(axes, [
      [0, 0],
      [width, slope * width],
    ]);
  const fine = (value: number) => said(value, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, 350, bottom + 40]}
      title="What a crossed strip holds back"
      description={`With a strip ${said(joint, 'length')} long, each end wants to differ by ${fine(growing * joint)} on the dampest day and by ${fine(shrinking * joint)} on the driest.`}
    >
      <rect class="wood" x={x0} y={y0} width={wide} height={tall} />
      <path
        class="ring"
        d={[0.2, 0.4, 0.6, 0.8].map((share) => `M${x0 + 4} ${y0 + tall * share}h${wide - 8}`).join('')}
      />
      <rect
        class="end"
        x={x0 + wide - 12 * scale - 4}
        y={y0 + (tall - joint * scale) / 2}
        width={12 * scale}
        height={joint * scale}
      />
      <Label x={left} y={plotTop - 11} anchor="start">
        each end wants to differ by
      </Label>
      <Plot on={axes} />
      <path class="curve" d={line(growing)} />
      <path class="hidden-line" d={line(shrinking)} />
      <path class="thin" d={across(axes, { x: [joint], y: [paper] })} />
      <Label class="on-lines" x={right - 6} y={y(paper) - 10} anchor="end">
        a sheet of paper
      </Label>
      <circle class="mark" cx={x(joint)} cy={y(growing * joint)} r="4" />
      <circle class="mark" cx={x(joint)} cy={y(shrinking * joint)} r="4" />
      <NumberLabel
        class="on-lines"
        x={Math.max(60, Math.min(290, x(joint)))}
        y={Math.max(plotTop + 10, y(Math.max(growing, shrinking) * joint) - 13)}
        value={Math.max(growing, shrinking) * joint}
        kind="length"
        as="fine"
      />
      <Label x={left} y={bottom + 13} anchor="start">
        strip of no length
      </Label>
      <Label x={right} y={bottom + 13} anchor="end">
        right across
      </Label>
      <Label x={left} y={bottom + 31} anchor="start">
        solid: to the dampest day; dashed: to the driest
      </Label>
    </Drawing>
  );
}

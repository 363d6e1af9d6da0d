/**
 * Two bottoms cut through to one scale, a thin one and the reader's, and under them how each swings after the same
 * short tap: motion as 1/h², pitch as h, and so a ring that ends sooner.
 */

import { thinBottom } from '../../box/subjects/bottom/results.ts';
import type { Values } from '../../box/whole/index.ts';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';

/** Share of its energy that a swing loses, as a loss factor: about 0.02 for wood across the grain. */
const loss = 0.02;
/** Swings of the thin bottom that are drawn. */
const swings = 8;
const width = 350;
const text = textSize(width);
/** Half the height of the plot. */
const plot = 32;

/** A fading swing as half waves, each a parabola: `first` is its first height, `pitch` against `slow` swings in the `length`. */
export function fadingSwing(y: number, pitch: number, first: number, length = width, slow = swings): string {
  const halves = Math.floor(2 * slow * pitch);
  const step = length / (2 * slow * pitch);
  let path = `M0 ${y}`;
  for (let half = 0; half < halves; half++) {
    const height = first * Math.exp((-Math.PI * loss * (half + 0.5)) / 2);
    // The middle point of a parabola lies twice as high as its top.
    path += `q${(step / 2).toFixed(2)} ${((half % 2 ? 2 : -2) * height).toFixed(2)} ${step.toFixed(2)} 0`;
  }
  return path;
}

export function TapRing({ values: v }: { values: Values }) {
  const scale = width / Math.max(v.insideLength, 1);
  const strips = [thinBottom, v.bottomThickness].map((h) => Math.min(h * scale, 60)) as [number, number];
  const second = strips[0] + text * 2.6;
  const motion = v.tapMotion / 100;
  const first = (plot * 0.9) / Math.max(1, motion);
  const middle = second + strips[1] + text * 1.8 + plot;
  return (
    <Drawing
      view={[-4, -text * 1.8, width + 8, middle + plot + text * 3.6]}
      title="Two bottoms and how a tap moves them"
      description={`Against a bottom of {3 mm|1/8 in} this one moves ${Math.round(v.tapMotion)} % as far and sounds ${v.tapPitch.toFixed(1)} times as high.`}
    >
      <Named kind="hidden-line" y={-text * 0.8} value={thinBottom} after=" bottom" />
      <rect class="wood" x="0" y="0" width={width} height={strips[0]} />
      <Named kind="curve" y={second - text * 0.8} value={v.bottomThickness} after=" bottom, yours" />
      <rect class="wood" x="0" y={second} width={width} height={strips[1]} />
      <line class="axis" x1="0" y1={middle} x2={width} y2={middle} />
      <path class="hidden-line" d={fadingSwing(middle, 1, first)} />
      <path class="curve" d={fadingSwing(middle, v.tapPitch, first * motion)} />
      <Label x={0} y={middle + plot + text * 0.6} anchor="start">
        after the same tap; time runs to the right
      </Label>
    </Drawing>
  );
}

/** A line of the legend, above its strip. */
function Named({ kind, y, value, after }: { kind: string; y: number; value: number; after: string }) {
  return (
    <>
      <line class={kind} x1={0} y1={y} x2={text * 2.2} y2={y} />
      <NumberLabel x={text * 2.8} y={y} anchor="start" value={value} kind="length" after={after} />
    </>
  );
}

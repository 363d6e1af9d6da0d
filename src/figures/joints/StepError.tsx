/**
 * How far each finger misses its slot, beside the fingers it belongs to: walls cut on two settings (it adds up) and on
 * one (it does not). The fingers are in true proportion; the errors are drawn larger, by a factor that is stated.
 * User units are screen pixels at the narrowest width.
 */
import type { Values } from '../../box/whole/index.ts';
import { fingerLayout } from '../../calc/joints/finger-layout.ts';
import { bindingStep } from '../../calc/joints/joint-fit.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

const width = 350;
const stack = { width: 30, height: 190 };
const axis = stack.width + 8;
const plot = 118;
const panel = 186;
const factors = [1000, 500, 250, 200, 100, 50, 25, 20, 10, 5, 2];

export function StepError({ values: v }: { values: Values }) {
  const fingers = fingerLayout(v.outsideHeight, v.fingerWidth);
  const scale = stack.height / v.outsideHeight;
  const largest = Math.max(v.addedStepError, v.fingerFit);
  const factor = factors.find((by) => largest * scale * by <= plot) ?? 1;
  const along = (error: number) => error * scale * factor;
  const up = (height: number) => stack.height - height * scale;
  /** Finger m lies behind m/2 steps, rounded down. */
  const missOf = (index: number) => Math.floor((index + 1) / 2) * v.stepError;

  const binds = bindingStep(v.jigSteps, v.stepError, v.fingerFit);
  const firstBound = binds === undefined ? fingers.length : 2 * binds - 1;
  const bars = (from: number, to: number) =>
    fingers
      .slice(from, to)
      .map((finger, index) => `M${axis} ${up((finger.from + finger.to) / 2)}h${along(missOf(from + index))}`)
      .join('');
  const column = (wall: 'first' | 'second', from: number, to: number) =>
    fingers
      .slice(from, to)
      .filter((finger) => finger.wall === wall)
      .map(({ from: low, to: high }) => `M0 ${up(high)}h${stack.width}V${up(low)}H0Z`)
      .join('');
  const thickness = Math.max(1, Math.min(6, v.fingerWidth * scale * 0.5));
  const bound = fingers[firstBound];
  const total = said(v.addedStepError, 'length', { as: 'fine' });

  const frame = (title: string) => (
    <>
      <Label x={0} y={-34} anchor="start">
        {title}
      </Label>
      <rect class="usual" x={axis} y={0} width={along(v.fingerFit)} height={stack.height} />
      <NumberLabel
        x={axis}
        y={-12}
        anchor="start"
        value={v.fingerFit}
        kind="length"
        as="fine"
        before="play "
      />
      <line class="axis" x1={axis} x2={axis} y1={0} y2={stack.height} />
      <path class="wood" d={column('first', 0, fingers.length)} />
      <path class="wood-end" d={column('second', 0, fingers.length)} />
    </>
  );

  return (
    <Drawing
      view={[-2, -46, width, stack.height + 114]}
      title="Step error of two mating walls"
      description={`Cut on two settings ${
        binds === undefined ? 'all fingers go in' : `finger ${2 * binds} of ${fingers.length} binds`
      }; cut on one setting both drift by ${total} and close.`}
    >
      <g>
        {frame('cut on two settings')}
        {bound && (
          <rect
            fill="url(#jam)"
            x={0}
            y={0}
            width={stack.width}
            height={up(bound.from)}
            class="part-finger"
          />
        )}
        <path class="error-bar" stroke-width={thickness} d={bars(0, firstBound)} />
        <path class="error-bar binds" stroke-width={thickness} d={bars(firstBound, fingers.length)} />
        <Label x={0} y={stack.height + 18} anchor="start">
          {binds === undefined ? 'closes' : `binds at finger ${2 * binds}`}
        </Label>
      </g>
      <g transform={`translate(${panel} 0)`}>
        {frame('cut on one setting')}
        <line
          class="drift"
          x1={axis}
          y1={stack.height}
          x2={axis + along(v.addedStepError)}
          y2={up(fingers.at(-1)?.from ?? 0)}
        />
        <Label x={0} y={stack.height + 18} anchor="start">
          closes
        </Label>
        <Label x={0} y={stack.height + 36} anchor="start">
          dashed: both walls drift
        </Label>
      </g>
      <Label x={0} y={stack.height + 58} anchor="start">
        errors drawn {factor} times larger than fingers
      </Label>
    </Drawing>
  );
}

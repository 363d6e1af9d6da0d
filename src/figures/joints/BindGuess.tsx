/** Two walls cut on two settings: the miss of the first step is drawn beside the play; which finger binds is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { fingerLayout } from '../../calc/joints/finger-layout.ts';
import { bindingStep } from '../../calc/joints/joint-fit.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Fingers that can be marked; the walls of this guess have nineteen. */
export const bindRange = { low: 0, high: 19 } as const;
const [top, foot] = [44, 290] as const;
const [stack, thick, axis, right] = [40, 34, 86, 330] as const;
export const bindFrame: GuessFrame = {
  width: 350,
  height: 330,
  from: [axis + 148, foot],
  to: [axis + 148, top],
};
const place = (finger: number) => placeIn(bindFrame, bindRange, finger)[1];

/** The first finger that does not go in; NaN where all do. */
export function boundFinger(v: Values): number {
  const step = bindingStep(v.jigSteps, v.stepError, v.fingerFit);
  return step === undefined ? Number.NaN : 2 * step;
}

interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

export function BindGuess({ values: v, mark, open }: Props) {
  const fingers = fingerLayout(v.outsideHeight, v.fingerWidth);
  const along = (right - axis) / Math.max(v.addedStepError, v.fingerFit);
  const binds = boundFinger(v);
  /** Finger n lies behind half as many steps, rounded down. */
  const bars = (from: number, to: number) =>
    fingers
      .map((_, i) => i + 1)
      .filter((n) => n >= from && n <= to)
      .map((n) => `M${axis} ${place(n - 0.5)}h${(Math.floor(n / 2) * v.stepError * along).toFixed(1)}`)
      .join('');
  const free = open ? (Number.isFinite(binds) ? binds - 1 : fingers.length) : 3;
  return (
    <Drawing
      view={[0, 0, bindFrame.width, bindFrame.height]}
      title="By how much each finger misses its slot"
      description={`${fingers.length} fingers; each step is ${said(v.stepError, 'length', { as: 'fine' })} too long, and a finger has ${said(v.fingerFit, 'length', { as: 'fine' })} of play. ${
        !open
          ? 'The first step is drawn.'
          : Number.isFinite(binds)
            ? `Finger ${binds} binds.`
            : 'All fingers go in.'
      }`}
    >
      <rect class="usual" x={axis} y={top} width={v.fingerFit * along} height={foot - top} />
      {fingers.map(({ from, wall }, i) => (
        <rect
          key={from}
          class={wall === 'first' ? 'wood' : 'wood-end'}
          x={stack}
          y={place(i + 1)}
          width={thick}
          height={place(i) - place(i + 1)}
        />
      ))}
      <line class="axis" x1={axis} x2={axis} y1={top} y2={foot} />
      <path class="error-bar" stroke-width={5} d={bars(2, free)} />
      {open && Number.isFinite(binds) && (
        <g class="arrives">
          <rect
            class="part-finger"
            fill="url(#jam)"
            x={stack}
            y={top}
            width={thick}
            height={place(binds - 1) - top}
          />
          <path class="error-bar binds" stroke-width={5} d={bars(binds, fingers.length)} />
          <Label class="on-lines warning" x={right + 14} y={place(binds - 1.7)} anchor="end">
            {`finger ${binds} binds`}
          </Label>
        </g>
      )}
      {mark !== undefined && <path class="ghost bare" d={`M${stack - 6} ${place(mark)}H${right}`} />}
      <NumberLabel
        x={axis}
        y={top - 14}
        anchor="start"
        value={v.fingerFit}
        kind="length"
        as="fine"
        before="play "
      />
      <Label x={stack - 8} y={place(0.5)} anchor="end">
        1
      </Label>
      <Label x={stack - 8} y={place(fingers.length - 0.5)} anchor="end">
        {fingers.length}
      </Label>
      <NumberLabel
        x={stack}
        y={foot + 20}
        anchor="start"
        value={v.stepError}
        kind="length"
        as="fine"
        before="each step misses by "
      />
    </Drawing>
  );
}

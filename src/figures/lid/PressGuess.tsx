/**
 * A half-open lid from above, pulled off its middle: how hard it presses on either side is guessed. Lid in true
 * proportion; its turn is drawn larger than its play allows; all forces have one scale.
 */
import type { Values } from '../../box/whole/index.ts';
import { cornerRubbing, sideForce } from '../../calc/lid/side-force.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** The pull of this drawing, N: a finger, lightly (ours). */
export const pull = 10;
/** Forces that can be marked, N. */
export const pressRange = { low: 0, high: 16 } as const;
const [left, right, top] = [98, 252, 30] as const;
const wood = 14;
export const pressFrame: GuessFrame = {
  width: 350,
  height: 256,
  from: [right + wood, top + 12],
  to: [344, top + 12],
};
const long = (force: number) =>
  placeIn(pressFrame, pressRange, Math.min(force, pressRange.high))[0] - (right + wood);

/** What each corner presses with, N; NaN where the lid turns freely. */
export const pressOf = (v: Values): number =>
  sideForce.compute({
    F: pull,
    e: Math.min(v.pullOffset, v.lidWidth / 2),
    W: v.lidWidth,
    L: v.lidHeldHalfOpen,
    c: v.lidPlayToday,
  });
/** What both rub with, N. */
export const rubOf = (v: Values): number => cornerRubbing.compute({ mu: v.friction, N: pressOf(v) });

interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

export function PressGuess({ values: v, mark, open }: Props) {
  const scale = (right - left) / v.lidWidth;
  const held = Math.min(72, v.lidHeldHalfOpen * scale);
  const [front, out] = [top + held, Math.min(66, (v.lidLength - v.lidHeldHalfOpen) * scale)];
  const [press, rub] = [pressOf(v), rubOf(v)];
  const jams = open && rub >= pull;
  const at = (left + right) / 2 + Math.min(v.pullOffset, v.lidWidth / 2) * scale;
  const turn = open && press > 0 ? 3 : 0;
  const force = (n: number) => said(n, 'force', { digits: 1 });
  /** The pushes on both sides, outward, in the grooves' two ends that are touched. */
  const pushes = (n: number) =>
    `M${right} ${top + 12}h${wood + long(n)}M${left} ${front - 8}h${-wood - long(n)}`;
  return (
    <Drawing
      view={[0, 0, pressFrame.width, pressFrame.height]}
      title="A half-open lid, pulled near its corner"
      description={`The lid is ${said(v.lidWidth, 'length', { digits: 0 })} wide, ${said(v.lidHeldHalfOpen, 'length', { digits: 0 })} of it are held, and it is pulled with ${force(pull)}, ${said(v.pullOffset, 'length', { digits: 0 })} off its middle. ${
        open
          ? `Each side is pressed with ${force(press)}, and both rub with ${force(rub)}${jams ? ': it jams.' : '.'}`
          : 'How hard it presses on the sides is not drawn yet.'
      }`}
    >
      <rect class="wood-end" x={left - wood} y={top - 14} width={wood} height={front - top + 14} />
      <rect class="wood-end" x={right} y={top - 14} width={wood} height={front - top + 14} />
      <g transform={turn ? `rotate(${turn} ${(left + right) / 2} ${(top + front) / 2})` : undefined}>
        <rect
          class={jams ? 'wood jammed' : 'wood'}
          x={left + 2}
          y={top}
          width={right - left - 4}
          height={held + out}
        />
      </g>
      <path class="thin" d={`M${(left + right) / 2} ${top + 4}V${front + out + 44}`} stroke-dasharray="4 3" />
      <path class="force" d={`M${at} ${front + out - 6}v${6 + long(pull)}`} marker-end="url(#arrow)" />
      <NumberLabel
        class="on-lines"
        x={at + 8}
        y={front + out + 26}
        anchor="start"
        value={pull}
        kind="force"
        digits={1}
        before="pull "
      />
      {mark !== undefined && <path class="ghost bare" d={pushes(mark)} marker-end="url(#arrow)" />}
      {open && Number.isFinite(press) && (
        <g class="arrives">
          {press > 0 && (
            <>
              <path
                class="force"
                d={`M${right} ${top + 12}h${wood + long(press)}`}
                marker-end="url(#arrow)"
              />
              <path
                class="force"
                d={`M${left} ${front - 8}h${-wood - long(press)}`}
                marker-end="url(#arrow)"
              />
            </>
          )}
          <NumberLabel
            class="on-lines"
            x={right + wood + 6}
            y={top + 34}
            anchor="start"
            value={press}
            kind="force"
            digits={1}
          />
          <NumberLabel
            class="on-lines"
            x={left - wood - 6}
            y={front - 30}
            anchor="end"
            value={press}
            kind="force"
            digits={1}
          />
          <NumberLabel
            class={jams ? 'warning' : ''}
            x={4}
            y={pressFrame.height - 12}
            anchor="start"
            value={rub}
            kind="force"
            digits={1}
            before={jams ? 'jams: both rub with ' : 'both rub with '}
          />
        </g>
      )}
      {!open && (
        <Label class="on-lines" x={right + wood + 6} y={top + 34} anchor="start">
          presses: …
        </Label>
      )}
    </Drawing>
  );
}

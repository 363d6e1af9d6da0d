/**
 * The handle of a guess: a native slider laid over the drawing, so that hand, keys and screen reader have the same thing.
 * Only its thumb takes a pointer: a swipe that begins beside it scrolls the page.
 */
import { type GuessFrame, isUpright, placeIn } from '../../figures/parts/guess-frame.ts';
import { format, type Kind, type UnitSystem } from '../../units/index.ts';

interface Props {
  frame: GuessFrame;
  label: string;
  kind: Kind;
  low: number;
  high: number;
  step: number;
  value: number;
  system: UnitSystem;
  /** Not touched yet: the handle says what to do. */
  blank: boolean;
  set: (value: number) => void;
  /** Enter on the handle. */
  commit: () => void;
}

/** Steps that Page Up and Page Down go, as the browser would not. */
const page = 8;
const percent = (share: number) => `${(share * 100).toFixed(2)}%`;

export function MarkHandle({
  frame,
  label,
  kind,
  low,
  high,
  step,
  value,
  system,
  blank,
  set,
  commit,
}: Props) {
  const upright = isUpright(frame);
  /** More lies further down, as a depth does, or further up, as in a bar. */
  const deeper = frame.to[1] > frame.from[1];
  const [x1, y1] = placeIn(frame, { low, high }, low);
  const [x2, y2] = placeIn(frame, { low, high }, high);
  const [x, y] = placeIn(frame, { low, high }, value);
  const length = upright ? Math.abs(y2 - y1) / frame.height : Math.abs(x2 - x1) / frame.width;
  const [first, last] = [Math.ceil(low / step - 1e-9), Math.floor(high / step + 1e-9)];
  const by = (count: number) => set(Math.min(last, Math.max(first, Math.round(value / step) + count)) * step);
  return (
    <>
      <input
        type="range"
        class={`mark-handle ${upright ? (deeper ? 'upright' : 'upright rising') : ''}`}
        style={{
          left: percent(Math.min(x1, x2) / frame.width),
          top: percent(Math.min(y1, y2) / frame.height),
          '--way': percent(length),
        }}
        aria-label={label}
        aria-valuetext={format(value, kind, {
          system,
          spoken: true,
          ...(kind === 'length' && { as: 'fine' }),
        })}
        aria-orientation={upright ? 'vertical' : undefined}
        min={first}
        max={last}
        step={1}
        value={Math.round(value / step)}
        onInput={({ currentTarget }) => set(Number(currentTarget.value) * step)}
        onKeyDown={(event) => {
          const { key } = event;
          // Down is deeper in a drawing, while a slider's own down is less.
          const moves: Record<string, number> = {
            PageUp: upright && deeper ? -page : page,
            PageDown: upright && deeper ? page : -page,
            ...(upright && { ArrowDown: deeper ? 1 : -1, ArrowUp: deeper ? -1 : 1 }),
          };
          if (key === 'Enter') commit();
          else if (key in moves) by(moves[key]!);
          else return;
          event.preventDefault();
        }}
      />
      <span
        class={`mark-knob ${upright ? 'upright' : ''}`}
        style={{ left: percent(x / frame.width), top: percent(y / frame.height) }}
        aria-hidden="true"
      >
        {blank && <span class="mark-hint">drag</span>}
      </span>
    </>
  );
}

/**
 * The browser's slider, for whole steps. Where there are fingers its hand is ours (`use-slide.ts`, `labs.css`): a busy
 * browser takes the first touch of a swipe for a tap on the slider, and changes the number while the page is scrolled.
 */
import { useRef } from 'preact/hooks';
import { useSlide } from './use-slide.ts';

interface Props {
  id?: string;
  'aria-label'?: string;
  'aria-valuetext': string;
  /** In whole steps. */
  min: number;
  max: number;
  value: number;
  set: (count: number) => void;
}

/** As wide as browsers draw the knob, px: its middle goes from half of it to half of it before the other end. */
const knob = 16;

export function Slider({ min, max, value, set, ...named }: Props) {
  const input = useRef<HTMLInputElement>(null);
  const hand = useSlide({
    stepAt: (x) => {
      const way = Math.max(1, (input.current?.offsetWidth ?? 0) - knob);
      return min + ((x - knob / 2) / way) * (max - min);
    },
    now: () => value,
    set: (count) => {
      const within = Math.min(max, Math.max(min, count));
      if (within !== value) set(within);
    },
  });
  return (
    <span
      class="slide"
      {...hand}
      onMouseDown={(event) => {
        if (event.target === input.current) return;
        // The press would take the focus to the page.
        event.preventDefault();
        input.current?.focus();
      }}
      onPointerDown={(event) => {
        // Where there are no fingers the browser's own hand is on it.
        if (event.target === input.current) return;
        hand.onPointerDown(event);
      }}
    >
      <input
        ref={input}
        type="range"
        {...named}
        min={min}
        max={max}
        step={1}
        value={value}
        onInput={({ currentTarget }) => set(Number(currentTarget.value))}
      />
    </span>
  );
}

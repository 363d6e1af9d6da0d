/**
 * Hands on a ruler or a slider. A mouse or a pen takes the mark it points at, and drags. A finger pulls: nothing happens until it has
 * gone sideways for a while, and then the number moves as far as the finger does from there; a tap or a swipe up or down
 * changes nothing, so a page can be scrolled from anywhere.
 */
import { useRef } from 'preact/hooks';

/** Sideways, before a finger pulls, px. */
const slack = 8;

interface Grip {
  readonly id: number;
  readonly x: number;
  readonly y: number;
  /** In steps, when the finger began to pull. */
  readonly from: number;
  pulls: boolean;
}

interface Slide {
  /** The step at a place on the drawing, px from its left; not whole. */
  readonly stepAt: (x: number) => number;
  /** The number now, in steps. */
  readonly now: () => number;
  readonly set: (count: number) => void;
}

export function useSlide({ stepAt, now, set }: Slide) {
  const grip = useRef<Grip>();
  const placeIn = (event: PointerEvent) =>
    event.clientX - (event.currentTarget as Element).getBoundingClientRect().left;
  const move = (event: PointerEvent) => {
    const held = grip.current;
    if (!held || held.id !== event.pointerId) return;
    const x = placeIn(event);
    if (event.pointerType !== 'touch') {
      set(Math.round(stepAt(x)));
      return;
    }
    const [right, down] = [x - held.x, event.clientY - held.y];
    if (!held.pulls) {
      if (Math.abs(right) < slack || Math.abs(right) < Math.abs(down)) return;
      held.pulls = true;
    }
    const pulled = right - Math.sign(right) * slack;
    set(Math.round(held.from + stepAt(pulled) - stepAt(0)));
  };
  const drop = () => {
    grip.current = undefined;
  };
  return {
    onPointerDown: (event: PointerEvent) => {
      if (event.button !== 0 || !event.isPrimary) return;
      grip.current = {
        id: event.pointerId,
        x: placeIn(event),
        y: event.clientY,
        from: now(),
        pulls: false,
      };
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
      if (event.pointerType !== 'touch') move(event);
    },
    onPointerMove: move,
    onPointerUp: drop,
    // The browser has taken the finger to scroll with.
    onPointerCancel: drop,
  };
}

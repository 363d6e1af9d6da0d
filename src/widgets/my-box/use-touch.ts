/**
 * Hands on the drawing: a touch takes the part under it, a sideways swipe or a drag with the mouse turns the box, arrow
 * keys turn and tip it. Swipes up and down are the page's.
 */
import type { ReadonlySignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { BenchPicture } from '../../figures/box/bench-picture.ts';
import { partAt } from '../../figures/box/hit.ts';
import { type Bench, tipBy, turnBy } from './bench-state.ts';
import type { PartOfBench } from './parts.ts';

/** How near a part a touch takes it, and how far a swipe turns one step, px. */
const near = 20;
const swipe = 42;
/** A mouse that has moved less than this has clicked, px; beyond it each px turns by so many degrees. */
const still = 5;
const perPixel = 0.5;

interface Grip {
  /** Where the pointer was when the box was turned last, and at first. */
  x: number;
  y: number;
  readonly from: readonly [x: number, y: number];
  moved: boolean;
}

const keys: Readonly<Record<string, (bench: Bench) => void>> = {
  ArrowLeft: (bench) => turnBy(bench, -1),
  ArrowRight: (bench) => turnBy(bench, 1),
  ArrowUp: (bench) => tipBy(bench, 1),
  ArrowDown: (bench) => tipBy(bench, -1),
};

export function useTouch(
  bench: Bench,
  picture: ReadonlySignal<BenchPicture>,
  onPart: (part: PartOfBench) => void,
) {
  const grip = useRef<Grip>();
  const take = (host: Element, x: number, y: number) => {
    const drawing = host.querySelector('svg');
    const matrix = drawing?.getScreenCTM();
    if (!matrix) return;
    const place = new DOMPoint(x, y).matrixTransform(matrix.inverse());
    const part = partAt(picture.peek(), [place.x, place.y], near / matrix.a);
    if (part) onPart(part);
  };
  return {
    onPointerDown: ({ clientX: x, clientY: y, isPrimary, button }: PointerEvent) => {
      grip.current = isPrimary && button === 0 ? { x, y, from: [x, y], moved: false } : undefined;
    },
    onPointerMove: ({ clientX: x, clientY: y, pointerType }: PointerEvent) => {
      const held = grip.current;
      if (!held) return;
      const [right, down] = [x - held.x, y - held.y];
      if (Math.hypot(x - held.from[0], y - held.from[1]) > still) held.moved = true;
      if (pointerType === 'mouse') {
        if (!held.moved) return;
        turnBy(bench, right, perPixel);
        tipBy(bench, down, perPixel);
      } else {
        if (Math.abs(right) < swipe) return;
        turnBy(bench, Math.sign(right));
      }
      held.x = x;
      held.y = y;
    },
    onPointerUp: ({ clientX, clientY, currentTarget }: PointerEvent) => {
      const held = grip.current;
      grip.current = undefined;
      if (held && !held.moved && currentTarget instanceof Element) take(currentTarget, clientX, clientY);
    },
    onPointerCancel: () => {
      grip.current = undefined;
    },
    onPointerLeave: () => {
      grip.current = undefined;
    },
    onKeyDown: (event: KeyboardEvent) => {
      const move = keys[event.key];
      if (!move || event.altKey || event.ctrlKey || event.metaKey) return;
      event.preventDefault();
      move(bench);
    },
  };
}

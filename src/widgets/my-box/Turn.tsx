/** Turns the box a step to the left or to the right. */
import { Arrow } from './Arrow.tsx';
import { type Bench, turnBy } from './bench-state.ts';

export const Turn = ({ bench }: { bench: Bench }) => (
  <span class="turn">
    <button type="button" class="quiet bare" aria-label="turn left" onClick={() => turnBy(bench, -1)}>
      <Arrow to="left" />
    </button>
    <span aria-hidden="true">turn</span>
    <button type="button" class="quiet bare" aria-label="turn right" onClick={() => turnBy(bench, 1)}>
      <Arrow to="right" />
    </button>
  </span>
);

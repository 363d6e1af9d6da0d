/** Words of the shop: a wall on its jig, and a resawn board; mm in true proportion. */
import { SmallDrawing } from '../parts/SmallDrawing.tsx';
import { drawnFor, Meant } from './meant.tsx';

const rect = (x: number, y: number, width: number, height: number) =>
  `M${x} ${y}h${width}v${height}h${-width}Z`;

/** A wall stands on its end: the slot just cut hangs over the pin, and the next is being cut beside it. */
export const jigWords = drawnFor(['jig-pin'], (_, v) => {
  const { fingerWidth: f, wall: t } = v;
  const wide = 6 * f;
  const high = 4.2 * f;
  const table = high - f / 2;
  const top = table - t;
  return (
    <SmallDrawing view={[0, 0, wide, high]}>
      <path
        class="wood"
        d={`M${f / 2} -1V${table}h${f}V${top}h${f}V${table}h${f}V${top}h${f}V${table}H${2 * wide}V-1Z`}
      />
      <path class="inside" d={rect(-wide, table, 3 * wide, high)} />
      <path class="hidden-line" d={rect(3.5 * f, top, f, t)} />
      <Meant d={rect(1.5 * f, top, f, t)} />
    </SmallDrawing>
  );
});

/** The end of a board that the saw has made two of. */
export const leafWords = drawnFor(['board-leaf'], (_, v) => {
  const { boardThickness: thick, kerf } = v;
  const wide = thick * 3.4;
  const each = (thick - kerf) / 2;
  return (
    <SmallDrawing view={[0, -thick * 0.7, wide, thick * 2.4]}>
      <path class="wood-end" d={rect(0, 0, wide, each) + rect(0, each + kerf, wide, each)} />
      <Meant d={rect(0, 0, wide, each)} />
    </SmallDrawing>
  );
});

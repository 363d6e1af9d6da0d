/**
 * A small drawing beside a title that says what it shows: 132 × 92 CSS pixels, without words, silent for the ear. It is
 * drawn from the same numbers as the large ones, only while the site is built.
 */
import type { ComponentChildren, FunctionComponent } from 'preact';
import type { Values } from '../../box/whole/index.ts';
import { toDecimals } from '../../units/index.ts';

const width = 132;
const height = 92;
/** Air between the drawing and its frame. */
const air = 9;
/** Sides of what is inside. A drawing in units of its own, such as a plot, takes them as they are. */
export const smallSheet = [width - 2 * air, height - 2 * air] as const;

/** The drawing of one lesson, `src/figures/S/small-slug.tsx`: from the numbers of a box. */
export type SmallFigure = FunctionComponent<{ values: Values }>;

interface Props {
  /** Left, top, width and height of what is shown, mm; made as large as fits, in true proportion, and cut off there. */
  view: readonly [left: number, top: number, width: number, height: number];
  children: ComponentChildren;
}

export function SmallDrawing({ view: [left, top, ...shown], children }: Props) {
  // A pixel more all around, so that lines along the edge keep their weight.
  const edge = Math.max(...shown.map((side, i) => side / smallSheet[i]!));
  return (
    <svg class="small-drawing" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <svg
        x={air - 1}
        y={air - 1}
        width={smallSheet[0] + 2}
        height={smallSheet[1] + 2}
        viewBox={[left - edge, top - edge, ...shown.map((side) => side + 2 * edge)]
          .map((number) => toDecimals(number, 2))
          .join(' ')}
        aria-hidden="true"
      >
        {children}
      </svg>
    </svg>
  );
}

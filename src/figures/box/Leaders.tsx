/** The lines from the names of the parts to what they name; dashed to what is hidden. */

import { toDecimals } from '../../units/index.ts';
import { type LabelPlace, nameMiddle } from './label-places.ts';
import type { PartOfBox } from './parts-of-box.ts';

interface Props {
  places: readonly LabelPlace[];
  /** px */
  width: number;
  height: number;
  /** Room for names at each side. */
  beside: number;
  chosen: PartOfBox | undefined;
}

export function Leaders({ places, width, height, beside, chosen }: Props) {
  return (
    <svg class="leaders" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      {places.map(({ part, side, top, spot: [x, y], hidden }) => {
        const sign = side === 'left' ? 1 : -1;
        const from = side === 'left' ? beside - 8 : width - beside + 8;
        const level = top + nameMiddle;
        const d = `M${from} ${toDecimals(level, 1)}h${sign * 14}L${toDecimals(x, 1)} ${toDecimals(y, 1)}`;
        return (
          <g
            key={part}
            data-part={part}
            class={`${part === chosen ? 'chosen' : ''} ${hidden ? 'hidden' : ''}`}
          >
            <path d={d} />
            <circle cx={toDecimals(x, 1)} cy={toDecimals(y, 1)} r="4" />
          </g>
        );
      })}
    </svg>
  );
}

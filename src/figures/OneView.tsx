/** A box seen along one axis: what is seen in thick lines, what is hidden dashed. */
import type { Design } from '../box/design.ts';
import type { Axis } from '../box/parts/solid.ts';
import { hiddenRectangles } from './hidden-lines.ts';
import { shownParts } from './solid/from-design.ts';
import { areas, edges, type Placing, placed } from './solid/paths.ts';
import { onSheet, type View } from './solid/view.ts';
import { visible } from './solid/visible.ts';

interface Props {
  design: Design;
  view: View;
  /** The axis looked along. */
  into: Axis;
  placing: Placing;
}

export function OneView({ design, view, into, placing }: Props) {
  const seen = visible(view, shownParts(design)).flatMap(({ polygons }) => polygons);
  const hidden = new Set(
    hiddenRectangles(design, into).map(({ x, y, z }) => {
      const [x1, y1] = placed(placing, onSheet(view, [x[0], y[0], z[0]]));
      const [x2, y2] = placed(placing, onSheet(view, [x[1], y[1], z[1]]));
      return x1 === x2 || y1 === y2 ? `M${x1} ${y1}L${x2} ${y2}` : `M${x1} ${y1}H${x2}V${y2}H${x1}Z`;
    }),
  );
  return (
    <g class="view">
      <path class="paper" d={areas(seen, placing)} />
      <path class="hidden-line" d={[...hidden].join('')} />
      <path class="outline" d={edges(seen, placing)} />
    </g>
  );
}

/** A box seen along one axis: what is seen in thick lines, what is hidden dashed. */
import type { Design } from '../../box/design/design.ts';
import type { Axis } from '../../geometry/solid.ts';
import { onSheet, type View } from '../../geometry/view.ts';
import { visible } from '../../geometry/visible.ts';
import { shownParts } from '../box/from-design.ts';
import { hiddenRectangles } from '../box/hidden-lines.ts';
import { areas, edges, type Placing, placed } from '../box/paths.ts';

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

/** Parts as a plane cuts through them: wood hatched where its end grain is met, plywood with its layers' dash. */
import type { Part } from '../../box/design/part.ts';
import type { Seen } from '../../geometry/visible.ts';
import { areas, edges, facing, type Placing } from './paths.ts';

export type Cut = Seen<Part>;

export function SectionPicture({ cuts, placing }: { cuts: readonly Cut[]; placing: Placing }) {
  const met = cuts.filter(({ polygons }) => polygons.length > 0);
  const isEnd = ({ name, normal }: Cut) => name.grain === facing(normal);
  const d = (chosen: readonly Cut[]) =>
    areas(
      chosen.flatMap(({ polygons }) => polygons),
      placing,
    );
  return (
    <g class="solid">
      <path class="wood lit" d={d(met.filter((cut) => !isEnd(cut)))} />
      <path class="end" d={d(met.filter(isEnd))} />
      <path
        class="edges"
        d={edges(
          met.flatMap(({ polygons }) => polygons),
          placing,
        )}
      />
    </g>
  );
}

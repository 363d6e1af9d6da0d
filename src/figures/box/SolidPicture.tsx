/** Solids as they are seen: a fill for each way a face looks, end grain hatched, all edges in one path. */
import type { Part } from '../../box/design/part.ts';
import type { Seen } from '../../geometry/visible.ts';
import { areas, edges, facing, type Placing } from './paths.ts';

/** What a face is drawn as: end grain, or wood lit from above and from the left. */
function look({ grain }: Part, normal: Seen<Part>['normal']): string {
  const axis = facing(normal);
  if (grain === axis) return 'end';
  return { z: 'wood lit', x: 'wood', y: 'wood dim' }[axis];
}

export interface SolidPictureProps {
  seen: readonly Seen<Part>[];
  placing: Placing;
  /** Path data of a figure that lies on the faces. */
  grain?: string;
}

export function SolidPicture({ seen, placing, grain = '' }: SolidPictureProps) {
  const looks = new Map<string, Seen<Part>[]>();
  for (const face of seen) {
    const name = look(face.name, face.normal);
    looks.set(name, [...(looks.get(name) ?? []), face]);
  }
  return (
    <g class="solid">
      {[...looks].map(([name, faces]) => (
        <path
          key={name}
          class={name}
          d={areas(
            faces.flatMap(({ polygons }) => polygons),
            placing,
          )}
        />
      ))}
      {grain && <path class="grain-line faint" d={grain} />}
      <path
        class="edges"
        d={edges(
          seen.flatMap(({ polygons }) => polygons),
          placing,
        )}
      />
    </g>
  );
}

/** Faces of solids, each as light as it is turned to the lamp, end grain darker, and all their edges. */
import type { Part } from '../../box/design/part.ts';
import { turnedBy } from '../../geometry/move.ts';
import type { View } from '../../geometry/view.ts';
import type { SeenFace } from '../../geometry/visible.ts';
import { lightOn } from './light.ts';
import { areas, edges, facing, type Placing } from './paths.ts';

type Grained = Pick<Part, 'grain'>;

interface Props {
  faces: readonly SeenFace<Grained>[];
  view: View;
  placing: Placing;
  /** Path data of growth rings that lie on the faces. */
  rings?: string;
}

export function LitFaces({ faces, view, placing, rings = '' }: Props) {
  const looks = new Map<string, { light: number; isEnd: boolean; faces: SeenFace<Grained>[] }>();
  for (const face of faces) {
    const { name: part, normal, of } = face;
    const light = lightOn(view, turnedBy(of.move, normal));
    const isEnd = part.grain === facing(normal);
    const key = `${light}${isEnd}`;
    const look = looks.get(key);
    if (look) look.faces.push(face);
    else looks.set(key, { light, isEnd, faces: [face] });
  }
  const polygons = (chosen: readonly SeenFace<Grained>[]) => chosen.flatMap((face) => face.polygons);
  return (
    <g class="solid">
      {[...looks.values()].map(({ light, isEnd, faces: own }, index) => (
        <path
          key={index}
          class={isEnd ? 'face across' : 'face'}
          style={{ '--light': `${Math.abs(light)}%`, '--toward': light < 0 ? 'black' : 'white' }}
          d={areas(polygons(own), placing)}
        />
      ))}
      {rings && <path class="grain-line faint" d={rings} />}
      <path class="edges" d={edges(polygons(faces), placing)} />
    </g>
  );
}

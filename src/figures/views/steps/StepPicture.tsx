/** The picture of one step of the work: the solids of the model, with what is cut, glued or looked at now marked. */
import { isMarked, type Scene, type Thing } from '../../../box/work/pictures/scene.ts';
import type { Move } from '../../../geometry/move.ts';
import { onSheet } from '../../../geometry/view.ts';
import { type SeenFace, visible } from '../../../geometry/visible.ts';
import { viewOf } from '../../box/bench-picture.ts';
import { shifted } from '../../box/from-design.ts';
import { LitFaces } from '../../box/LitFaces.tsx';
import { areas, extent, fitted, placed } from '../../box/paths.ts';
import { Label } from '../../parts/Label.tsx';
import { Dial } from './Dial.tsx';
import { StepSheet, sheet } from './StepSheet.tsx';

/** Free edge, and height of a line of words above the wood. */
const edge = 8;
const line = 18;
/** Width of a sign of a label. */
const sign = 7.5;

export function StepPicture({ picture }: { picture: Scene | { readonly dial: number } }) {
  return 'dial' in picture ? <Dial humidity={picture.dial} /> : <Solids scene={picture} />;
}

const over: Move = ([x, y, z]) => [x, -y, -z];
const moveOf = ({ at, upsideDown }: Thing): Move | undefined => (upsideDown ? over : at && shifted(at));

type Face = SeenFace<Thing>;

function Solids({ scene: { shows, things, lines = [], words = [], turn = 0, tip = 0 } }: { scene: Scene }) {
  const view = viewOf(turn, tip);
  const seen = visible(
    view,
    things.map((thing) => ({ name: thing, solid: thing.solid, move: moveOf(thing) })),
  );
  const top = edge + (words.length > 0 ? line : 0);
  const room = [sheet.width - 2 * edge, sheet.height - edge - top] as const;
  const placing = fitted(seen, [edge, top], room);
  // In the middle of what is left below.
  const [, high, , low] = extent(seen);
  const middle = { ...placing, y: placing.y + (room[1] - placing.scale * (low - high)) / 2 };
  const marked = seen.filter(({ name, normal, cut }) => isMarked(name, normal, cut));
  const draw = (faces: readonly Face[], kind?: string) =>
    faces.length > 0 && (
      <g class={kind}>
        <LitFaces faces={faces} view={view} placing={middle} />
      </g>
    );
  const at = (point: Parameters<typeof onSheet>[1]) => placed(middle, onSheet(view, point));
  return (
    <StepSheet shows={shows}>
      {draw(
        seen.filter(({ name }) => name.waste),
        'waste',
      )}
      {draw(seen.filter((face) => !face.name.waste && !marked.includes(face)))}
      <path
        class="step-marked"
        d={areas(
          marked.flatMap(({ polygons }) => polygons),
          middle,
        )}
      />
      {draw(marked, 'marked')}
      {lines.map(({ points, is }) => (
        <path
          key={points.join()}
          class={is === 'mark' ? 'step-mark' : 'step-to-come'}
          d={`M${points.map((point) => at(point).join(' ')).join('L')}`}
        />
      ))}
      {words
        .filter(({ says, room: wide }) => says.length * sign < wide * middle.scale)
        .map(({ at: place, says }) => {
          const [x, y] = at(place);
          return (
            <Label key={`${place}`} x={x} y={y - line / 2}>
              {says}
            </Label>
          );
        })}
    </StepSheet>
  );
}

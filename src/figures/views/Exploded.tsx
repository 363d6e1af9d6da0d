/** The box taken apart: each part moved out along its own axis, with its name. */
import type { Design } from '../../box/design/design.ts';
import type { Part, PartName } from '../../box/design/part.ts';
import { type Seen, visible } from '../../geometry/visible.ts';
import { described, isometric } from '../box/from-design.ts';
import { fitted, placed } from '../box/paths.ts';
import { posed } from '../box/poses.ts';
import { SolidPicture } from '../box/SolidPicture.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';

const sheet = 350;
const text = 13;

/** Four walls of a lid or a liner carry one name, as keys do. */
const groupOf = (name: PartName) =>
  name.startsWith('lid-') ? 'walls of the lid' : name.startsWith('liner-') ? 'liner' : undefined;

interface Name {
  readonly words: string;
  x: number;
  y: number;
}

/** A name in the middle of the largest area seen of its part; moved down where it would lie on another. */
function namesOf(seen: readonly Seen<Part>[], placing: ReturnType<typeof fitted>): Name[] {
  const best = new Map<string, { size: number; x: number; y: number }>();
  for (const { name: part, polygons } of seen)
    for (const { points } of polygons) {
      const spots = points.map((point) => placed(placing, point));
      const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
      const size = (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys));
      const words = groupOf(part.name) ?? part.label;
      if (size <= (best.get(words)?.size ?? 0)) continue;
      const middle = (all: number[]) => all.reduce((sum, one) => sum + one, 0) / all.length;
      // Below a part that its name would cover.
      const small = Math.max(...xs) - Math.min(...xs) < (words.length * text) / 2;
      best.set(words, { size, x: middle(xs), y: small ? Math.max(...ys) + text : middle(ys) });
    }
  const names: Name[] = [...best].map(([words, { x, y }]) => ({ words, x, y })).sort((a, b) => a.y - b.y);
  names.forEach((name, index) => {
    const half = (name.words.length * text) / 4 + 2;
    name.x = Math.min(sheet - half, Math.max(half, name.x));
    for (const other of names.slice(0, index)) {
      const near = Math.abs(other.x - name.x) < half + (other.words.length * text) / 4;
      if (near && Math.abs(name.y - other.y) < text + 1) name.y = other.y + text + 1;
    }
  });
  return names;
}

export function Exploded({ design }: { design: Design }) {
  const shown = posed(design, 'apart');
  if (shown.length === 0) return null;
  const seen = visible(isometric, shown);
  const placing = fitted(seen, [2, 2], [sheet - 4, 400]);
  const names = namesOf(seen, placing);
  return (
    <Drawing
      view={[0, 0, sheet, placing.height + 14]}
      title="The box taken apart"
      description={`${described(design)} Its parts: ${names.map(({ words }) => words).join(', ')}.`}
    >
      <SolidPicture seen={seen} placing={placing} />
      {names.map(({ words, x, y }) => (
        <Label key={words} x={x} y={y} class="on-lines">
          {words}
        </Label>
      ))}
    </Drawing>
  );
}

/** One pane of the glass: the cut at the largest scale that leaves room for its numbers, and what it is, with its scale. */
import { toDecimals } from '../../../units/index.ts';
import { Label, NumberLabel } from '../../parts/Label.tsx';
import { SectionPicture } from '../SectionPicture.tsx';
import { GlassMeasure } from './GlassMeasure.tsx';
import type { Pane, Place } from './pane.ts';

/** CSS px in a millimeter, as on a screen of the size the style sheets assume. */
const life = 96 / 25.4;
/** Height of all text on the glass, px. */
export const text = 13;

/** Room around what is shown for the numbers, px. */
function insets({ measures, note }: Pane) {
  const upright = measures.filter(({ from, to }) => from[0] === to[0] && from[1] !== to[1]);
  const level = measures.filter(({ from, to }) => from[1] === to[1]);
  const some = (list: Pane['measures'], sign: 1 | -1) => list.some(({ away }) => away * sign > 0);
  return {
    left: some(upright, -1) ? 66 : 8,
    right: 8,
    top: (some(level, -1) ? 30 : 8) + (note ? 16 : 0),
    bottom: (some(level, 1) ? 30 : 6) + 18,
  };
}

/** How much larger or smaller than life: "× 2", "1:4". */
function ratioOf(scale: number): string {
  const times = scale / life;
  if (times < 0.75) return `1:${Math.round(1 / times)}`;
  return `× ${times >= 2 ? Math.round(times) : toDecimals(times, 1)}`;
}

export function GlassPane({
  id,
  pane,
  left,
  top,
  width,
  height,
}: {
  id: string;
  pane: Pane;
  left: number;
  top: number;
  width: number;
  height: number;
}) {
  const { window: win, cuts, measures, dashed = [], edges = [], caption, note } = pane;
  const inset = insets(pane);
  const [wide, high] = [win[2] - win[0], win[3] - win[1]];
  const room = [width - inset.left - inset.right, height - inset.top - inset.bottom] as const;
  const scale = Math.max(0.01, Math.min(room[0] / wide, room[1] / high));
  const x0 = left + inset.left + Math.max(0, (room[0] - wide * scale) / 2) - win[0] * scale;
  const y0 = top + inset.top + Math.max(0, (room[1] - high * scale) / 2) - win[1] * scale;
  const px = ([x, y]: Place): Place => [x0 + x * scale, y0 + y * scale];
  const path = (points: readonly Place[]) =>
    `M${points
      .map((point) =>
        px(point)
          .map((number) => toDecimals(number, 1))
          .join(' '),
      )
      .join('L')}`;
  return (
    <g>
      <clipPath id={id}>
        <rect
          x={px([win[0], 0])[0] - 1.5}
          y={px([0, win[1]])[1] - 1.5}
          width={wide * scale + 3}
          height={high * scale + 3}
        />
      </clipPath>
      <g clip-path={`url(#${id})`}>
        <SectionPicture cuts={cuts} placing={{ scale, x: x0, y: y0 }} />
        {edges.length > 0 && <path class="chosen-edge" d={edges.map(path).join('')} />}
        {dashed.length > 0 && <path class="hidden-line" d={dashed.map(path).join('')} />}
      </g>
      {measures.map(({ from, to, away, value, before, as, numberLeft }) => (
        <GlassMeasure
          key={`${from.join()} ${to.join()}`}
          from={px(from)}
          to={px(to)}
          away={away}
          value={value}
          before={before}
          as={as}
          numberLeft={numberLeft}
          text={text}
        />
      ))}
      {note && (
        <NumberLabel
          x={left + 8}
          y={top + 13}
          anchor="start"
          class="on-lines"
          value={note.value}
          kind="length"
          as="exact"
          before={note.before}
        />
      )}
      <Label x={left + width - 8} y={top + height - 10} anchor="end" class="on-lines caption">
        {`${caption}, ${ratioOf(scale)}`}
      </Label>
    </g>
  );
}

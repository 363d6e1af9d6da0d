/** How the contents lie: from above and from the front, in true proportion. Groups differ by their hatching and name. */
import type { Arrangement as Found, Thing } from '../../calc/size/packing.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';

/** The outline of a group and the lines between its places, seen along one axis. */
function grid(
  [left, top]: readonly [number, number],
  [width, height]: readonly [number, number],
  [columns, rows]: readonly [number, number],
) {
  const lines = [`M${left} ${top}h${columns * width}v${rows * height}h${-columns * width}z`];
  for (let column = 1; column < columns; column++)
    lines.push(`M${left + column * width} ${top}v${rows * height}`);
  for (let row = 1; row < rows; row++) lines.push(`M${left} ${top + row * height}h${columns * width}`);
  return lines.join('');
}

export function Arrangement({ found, things }: { found: Found; things: readonly Thing[] }) {
  const { length, width, height, groups } = found;
  const text = textSize(length * 1.3);
  const gap = text * 2.2;
  const floor = width + gap + height;
  const layers = groups.map(({ places, count, thing }) => {
    const high = places[2] > 1 ? `, ${places[2]} high` : '';
    return `${count} × ${things[thing]?.name}: ${places[0]} by ${places[1]}${high}`;
  });
  return (
    <Drawing
      view={[-gap, -text, length + 1.5 * gap, floor + gap + text]}
      title="How the contents lie"
      description={`From above and from the front. ${layers.join('; ')}.`}
    >
      <rect class="inside" x="0" y="0" width={length} height={width} />
      <rect class="inside" x="0" y={width + gap} width={length} height={height} />
      {groups.map(({ thing, at, place, places }) => (
        <g key={`${thing}-${at.join()}`} class={`group-${thing % 3}`}>
          <path class="place" d={grid([at[0], at[1]], [place[0], place[1]], [places[0], places[1]])} />
          <path
            class="place"
            d={grid(
              [at[0], floor - at[2] - places[2] * place[2]],
              [place[0], place[2]],
              [places[0], places[2]],
            )}
          />
        </g>
      ))}
      {groups.map(({ thing, at, place, places }) => (
        <Label
          key={`${thing}-${at.join()}`}
          class="halo"
          x={at[0] + (places[0] * place[0]) / 2}
          y={at[1] + (places[1] * place[1]) / 2}
        >
          {things[thing]?.name}
        </Label>
      ))}
      <Dimension
        from={[0, floor + text * 1.6]}
        to={[length, floor + text * 1.6]}
        value={length}
        text={text}
      />
      <Dimension from={[-text * 0.8, 0]} to={[-text * 0.8, width]} value={width} text={text} />
      {height > text * 2.5 && (
        <Dimension from={[-text * 0.8, width + gap]} to={[-text * 0.8, floor]} value={height} text={text} />
      )}
    </Drawing>
  );
}

/** The parts on their boards, saw cuts between them, the grain running level. One drawing for each slice, in true proportion. */
import type { Design } from '../../box/design/design.ts';
import type { Slice } from '../../box/stock/slices.ts';
import type { Stock } from '../../box/stock/stock.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';

const sheet = 350;
const text = 13;
/** An absurd input may ask for very many. */
const mostDrawn = 8;

const labelOf = ({ parts }: Design, name: string) => parts.find((part) => part.name === name)?.label ?? name;

function OneSlice({ design, slice }: { design: Design; slice: Slice }) {
  const { boardLength, boardWidth } = design.box;
  const scale = (sheet - 4) / boardLength;
  const high = boardWidth * scale;
  const top = 22;
  const named = slice.placed.map(({ piece, x, y }, index) => {
    const label = labelOf(design, piece.name);
    const [width, height] = [piece.length * scale, piece.width * scale];
    const fits = width > label.length * text * 0.53 + 4 && height > text + 1;
    return {
      label,
      x: 2 + x * scale,
      y: top + high - y * scale - height,
      width,
      height,
      fits,
      number: index + 1,
    };
  });
  // Names that do not fit stand below, by number.
  const below = named.filter(({ fits }) => !fits).map(({ label, number }) => `${number} ${label}`);
  const lines: string[] = [];
  for (const words of below) {
    const last = lines.at(-1);
    if (last && last.length + words.length < 46) lines[lines.length - 1] = `${last}, ${words}`;
    else lines.push(words);
  }
  const foot = top + high + 6;
  return (
    <Drawing
      view={[0, 0, sheet, foot + lines.length * 17 + 4]}
      title={`Board ${slice.board + 1}, slice ${slice.place + 1}`}
      description={`Along the board, ${slice.placed.map(({ piece }) => labelOf(design, piece.name)).join(', ')}.`}
    >
      <NumberLabel
        x={2}
        y={10}
        anchor="start"
        value={slice.finished}
        kind="length"
        before={`board ${slice.board + 1}, slice ${slice.place + 1}, finished `}
        after={slice.mirrored ? ', opened like a book' : ''}
      />
      <rect class="stock-board" x="2" y={top} width={sheet - 4} height={high} />
      <path
        class="wood"
        d={named.map(({ x, y, width, height }) => `M${x} ${y}h${width}v${height}h${-width}Z`).join('')}
      />
      {named.map(({ label, number, fits, x, y, width, height }) => (
        <Label key={number} x={x + width / 2} y={y + height / 2}>
          {fits ? label : number}
        </Label>
      ))}
      {lines.map((line, index) => (
        <Label key={line} x={2} y={foot + 8 + index * 17} anchor="start">
          {line}
        </Label>
      ))}
    </Drawing>
  );
}

export function BoardLayout({ design, stock }: { design: Design; stock: Stock }) {
  return (
    <div class="board-layout">
      {stock.slices.slice(0, mostDrawn).map((slice) => (
        <OneSlice key={`${slice.board},${slice.place}`} design={design} slice={slice} />
      ))}
      {stock.slices.length > mostDrawn && (
        <p class="says">And {stock.slices.length - mostDrawn} more slices, not drawn.</p>
      )}
    </div>
  );
}

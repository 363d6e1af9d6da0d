/** How the parts lie on the boards, where the figure goes on, what stays joined for the machines, and what is short. */
import { useMemo } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import type { PartName } from '../../box/design/part.ts';
import { type Joined, type Stock, stockOf } from '../../box/stock/stock.ts';
import { BoardLayout } from '../../figures/board/BoardLayout.tsx';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { format } from '../../units/index.ts';

const listed = (words: readonly string[]) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
const counted = (number: number, word: string) => `${number} ${word}${number === 1 ? '' : 's'}`;

function GrainRound({ stock }: { stock: Stock }) {
  const broken = stock.corners.filter(({ flows }) => !flows);
  const places = broken.map(({ between: [from, to] }) => `between ${from} and ${to}`);
  return (
    <p class="says">
      {broken.length === 0
        ? 'The grain pattern goes on around all four corners, mirrored at two of them.'
        : broken.length === 4
          ? 'The grain pattern breaks at all four corners.'
          : `The grain pattern goes on around ${4 - broken.length} of four corners; it breaks ${listed(places)}.`}
    </p>
  );
}

function KeepJoined({ rows, label }: { rows: readonly Joined[]; label: (name: PartName) => string }) {
  if (rows.length === 0) return null;
  return (
    <>
      <p>
        Keep these in one piece until they are planed, ripped to width and, where the order of work says so,
        grooved. Shorter than <span class="mm">305 mm</span>
        <span class="inch">12 in</span> nothing goes through a planer, a jointer or a freehand rip (common
        practice). Your machine’s manual may ask for more.
      </p>
      <ul>
        {rows.map(({ parts, length, safe }) => (
          <li key={parts.join()}>
            {listed(parts.map(label))}: <Quantity value={length} kind="length" />
            {!safe && ', too short even so: plane the whole slice first, or work it by hand'}.
          </li>
        ))}
      </ul>
    </>
  );
}

export function Board({ design }: { design: Design }) {
  const stock = useMemo(() => stockOf(design), [design]);
  if (design.parts.length === 0) return null;
  const label = (name: PartName) => design.parts.find((part) => part.name === name)?.label ?? name;
  return (
    <>
      <p class="says">
        {counted(stock.boards, 'board')}, {counted(stock.slices.length, 'slice')};{' '}
        {format(stock.used * 100, 'percent', { system: 'mm', digits: 0 })} of their faces becomes parts.
      </p>
      {stock.shortages.map(({ what, fix }) => (
        <p key={what} class="message">
          {what} {fix}
        </p>
      ))}
      <BoardLayout design={design} stock={stock} />
      <GrainRound stock={stock} />
      <KeepJoined rows={stock.joined} label={label} />
      {stock.plywood.length > 0 && (
        <p>From plywood: {listed(stock.plywood.map((part) => part.label))}; not on these boards.</p>
      )}
      {stock.offcuts.length > 0 && (
        <p>From what is left over: {listed(stock.offcuts.map((part) => part.label))}.</p>
      )}
    </>
  );
}

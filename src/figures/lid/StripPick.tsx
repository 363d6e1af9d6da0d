/** A strip glued across the front end of a lid, from above, in three ways; open, the lid's growth under each glue line. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Where each is glued, as shares of the lid's width. */
const glued: Readonly<Record<string, readonly (readonly [from: number, to: number])[]>> = {
  whole: [[0, 1]],
  ends: [
    [0, 1 / 6],
    [5 / 6, 1],
  ],
  middle: [[1 / 3, 2 / 3]],
};

/** What lid and strip want to differ at each end of the glue from today to the dampest day, mm; the strip keeps its length. */
export function differs(v: Values, option: string): number {
  const places = glued[option]!;
  return ((places.at(-1)![1] - places[0]![0]) * v.lidSwelling) / 2;
}

/** The one whose glue has least to bridge. */
export const leastStrained = (v: Values): string =>
  Object.keys(glued).reduce((least, one) => (differs(v, one) < differs(v, least) ? one : least));

const [left, width, top, high, strip] = [20, 110, 8, 66, 12] as const;

export function StripPick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const places = glued[option]!;
  const foot = top + high;
  return (
    <Drawing
      view={[0, 0, 150, 118]}
      title={`A strip across the lid, glued ${{ whole: 'all along', ends: 'at both ends' }[option] ?? 'in its middle third'}`}
      description={
        open
          ? `At each end of the glue lid and strip want to differ by ${said(differs(v, option), 'length', { as: 'fine' })}.`
          : 'What the glue has to bridge is not drawn yet.'
      }
    >
      {open && <rect class="grown arrives" x={left - 7} y={top} width={width + 14} height={high} />}
      <rect class="wood" x={left} y={top} width={width} height={high} />
      <path
        class="ring"
        d={[0.2, 0.4, 0.6, 0.8]
          .map((share) => `M${left + share * width} ${top + 4}V${foot - strip}`)
          .join('')}
      />
      <rect class="wood-end" x={left} y={foot - strip} width={width} height={strip} />
      <path
        class="axis"
        stroke-width="3"
        d={places
          .map(([from, to]) => `M${left + from * width} ${foot - strip}H${left + to * width}`)
          .join('')}
      />
      {places.map(([from, to]) => (
        <rect
          key={from}
          fill="url(#pencil)"
          x={left + from * width}
          y={foot - strip}
          width={(to - from) * width}
          height={strip}
        />
      ))}
      {open ? (
        <NumberLabel
          x={75}
          y={foot + 24}
          value={differs(v, option)}
          kind="length"
          as="exact"
          before="each end "
        />
      ) : (
        <Label x={75} y={foot + 24}>
          each end …
        </Label>
      )}
    </Drawing>
  );
}

/** A strip glued across the front end of a lid, from above, in three ways; open, the lid's growth under each glue line. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
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

const [left, width, top, high, strip] = [24, 102, 8, 74, 16] as const;
/** Units of the drawing for each millimeter of difference: much larger than life, and alike in all three. */
const enlarged = 24;

export function StripPick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const places = glued[option]!;
  const foot = top + high;
  const at = (share: number) => left + share * width;
  const apart = Math.min(20, enlarged * differs(v, option));
  const grown = Math.min(20, enlarged * differs(v, 'whole'));
  const [first, last] = [at(places[0]![0]), at(places.at(-1)![1])];
  return (
    <Drawing
      view={[0, 0, 150, foot + 12]}
      title={`A strip across the lid, glued ${{ whole: 'all along', ends: 'at both ends' }[option] ?? 'in its middle third'}`}
      description={
        open
          ? `At each end of the glue lid and strip want to differ by ${said(differs(v, option), 'length', { as: 'fine' })}.`
          : 'What the glue has to bridge is not drawn yet.'
      }
    >
      <rect class="wood" x={left} y={top} width={width} height={high} />
      <path
        class="ring"
        d={[0.1, 0.3, 0.5, 0.7, 0.9].map((share) => `M${at(share)} ${top + 4}V${foot - strip}`).join('')}
      />
      {open && (
        <path
          class="hidden-line arrives"
          d={`M${left} ${top}H${left - grown}V${foot}H${left}M${left + width} ${top}H${left + width + grown}V${foot}H${left + width}`}
        />
      )}
      <rect class="wood-end" x={left} y={foot - strip} width={width} height={strip} />
      {places.map(([from, to]) => (
        <rect
          key={from}
          fill="url(#pencil)"
          x={at(from)}
          y={foot - strip}
          width={(to - from) * width}
          height={strip}
        />
      ))}
      {open && (
        <g class="arrives">
          <rect class="grown" x={first - apart} y={foot - strip - 10} width={apart} height={strip + 16} />
          <rect class="grown" x={last} y={foot - strip - 10} width={apart} height={strip + 16} />
        </g>
      )}
    </Drawing>
  );
}

/** Half-open lids of one width and different lengths seen from above, pulled at a corner: how each stands in its grooves. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';

/** How much of each lid is still in the grooves, as shares of its width. */
export const heldShares: Readonly<Record<string, number>> = { short: 0.35, square: 1, long: 1.6 };
/** What is held, mm. */
export const heldOf = (v: Values, option: string): number => heldShares[option]! * v.lidWidth;
/** Turn of a lid in its drawing: a drawn turn, much larger than its play allows. */
const drawnTurn = 4;

const size = { width: 150, height: 176, lid: 84 } as const;

export function LidPulled({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const held = heldOf(v, option);
  const jams = held < v.jamLengthAtEdge;
  const inGroove = heldShares[option]! * size.lid;
  const out = 26;
  const [x, top] = [(size.width - size.lid) / 2, 6];
  const front = top + 136;
  return (
    <Drawing
      view={[0, 0, size.width, size.height]}
      title={`A lid with ${said(held, 'length', { digits: 0 })} in its grooves`}
      description={open ? (jams ? 'It jams.' : 'It runs.') : 'Whether it jams is not drawn yet.'}
    >
      <rect class="wood-end" x={x - 12} y={top} width={12} height={front - top} />
      <rect class="wood-end" x={x + size.lid} y={top} width={12} height={front - top} />
      <g
        transform={
          open && jams ? `rotate(${drawnTurn} ${x + size.lid / 2} ${front - inGroove / 2})` : undefined
        }
      >
        <rect
          class={open && jams ? 'wood jammed' : 'wood'}
          x={x + 1.5}
          y={front - inGroove}
          width={size.lid - 3}
          height={inGroove + out}
        />
        <line
          class="force"
          x1={x + size.lid - 8}
          y1={front + 4}
          x2={x + size.lid - 8}
          y2={front + 24}
          marker-end="url(#arrow)"
        />
      </g>
    </Drawing>
  );
}

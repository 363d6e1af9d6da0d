/** Corners seen from above and from outside, of one height and one wall: which has the least area for glue? */
import type { Values } from '../../box/whole/index.ts';
import { fingerLayout, pieces } from '../../calc/joints/finger-layout.ts';
import { fingerGlueArea, miterGlueArea } from '../../calc/joints/glue-area.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';

/** Width of a finger in each option, in walls; a miter has none. */
const fingersOf: Readonly<Record<string, number>> = { wide: 1, narrow: 0.5 };

/** Area of an option's faces that meet: long grain of fingers, all of a miter, mm². */
export function areaOf(v: Values, option: string): number {
  const walls = fingersOf[option];
  return walls === undefined
    ? miterGlueArea.compute({ H: v.outsideHeight, t: v.wall })
    : fingerGlueArea.compute({ n: pieces(v.outsideHeight, walls * v.wall), t: v.wall });
}

/** The option with the least area. */
export const leastArea = (v: Values): string =>
  ['wide', 'narrow', 'miter'].reduce((least, one) => (areaOf(v, one) < areaOf(v, least) ? one : least));

const [size, left, plan] = [118, 16, 8] as const;

export function AreaPick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const scale = size / v.outsideHeight;
  const walls = fingersOf[option];
  const deep = v.wall * scale;
  const top = plan + deep + 10;
  return (
    <Drawing
      view={[0, 0, 150, top + size + 8]}
      title="A corner from above and from outside"
      description={
        open ? `Its faces meet on ${said(areaOf(v, option), 'area')}.` : 'Its area is not told yet.'
      }
    >
      <rect class="wood" x={left} y={plan} width={size} height={deep} />
      <path
        class={walls === undefined ? 'curve' : 'thin'}
        d={walls === undefined ? `M${left} ${plan}l${deep} ${deep}` : `M${left + deep} ${plan}v${deep}`}
      />
      <rect class="wood" x={left} y={top} width={size} height={size} />
      {walls !== undefined &&
        fingerLayout(v.outsideHeight, walls * v.wall).map(({ from, to, wall }) => (
          <rect
            key={from}
            class={wall === 'first' ? 'wood' : 'wood-end'}
            x={left}
            y={top + size - to * scale}
            width={deep}
            height={(to - from) * scale}
          />
        ))}
    </Drawing>
  );
}

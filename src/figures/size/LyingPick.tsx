/** Three ways to lay the same dominoes, each with the outline of the box around it, all at one scale. */
import { compute, modelOf } from '../../box/subjects/model.ts';
import { size } from '../../box/subjects/size/subject.ts';
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';

interface Way {
  /** Sizes of a thing as it lies (length, width, height of the first in the list), and how many lie along each. */
  readonly turned: readonly [
    'length' | 'width' | 'height',
    'length' | 'width' | 'height',
    'length' | 'width' | 'height',
  ];
  readonly places: readonly [number, number, number];
}

/** Each holds the 28 of a set, with no more than two places empty. */
export const lyings: Readonly<Record<string, Way>> = {
  flat: { turned: ['width', 'length', 'height'], places: [7, 2, 2] },
  edge: { turned: ['length', 'height', 'width'], places: [3, 10, 1] },
  end: { turned: ['width', 'height', 'length'], places: [4, 7, 1] },
};

const { results } = modelOf(size);

/** The box around things that lie so. */
export function boxAround(v: Values, option: string): Values {
  const { turned, places } = lyings[option]!;
  const thing = v.items[0]!;
  const along = (axis: 0 | 1 | 2) => places[axis] * thing[turned[axis]];
  return compute(results, {
    ...v,
    sizeFrom: 'contents',
    contentsLength: along(0),
    contentsWidth: along(1),
    contentsHeight: along(2),
  });
}

/** Room the box takes up outside, mm³. */
export const bulkOf = (v: Values, option: string): number => {
  const box = boxAround(v, option);
  return box.outsideLength * box.outsideWidth * box.outsideHeight;
};

/** The way that makes the smallest box. */
export const leastBulk = (v: Values): string =>
  Object.keys(lyings).reduce((least, one) => (bulkOf(v, one) < bulkOf(v, least) ? one : least));

/** Drawing units for a mm: the widest of them just fits. */
const scale = 0.62;

export function LyingPick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const { turned, places } = lyings[option]!;
  const thing = v.items[0]!;
  const box = boxAround(v, option);
  const each = turned.map((axis) => thing[axis] * scale) as [number, number, number];
  const inset = (v.wall + v.clearance) * scale;
  const [w, d, h] = [box.outsideLength * scale, box.outsideWidth * scale, box.outsideHeight * scale];
  const [x, y] = [75 - w / 2, 8];
  const foot = y + d + 12 + 54;
  const lines = (
    left: number,
    top: number,
    [a, b]: readonly [number, number],
    [m, n]: readonly [number, number],
  ) =>
    [
      ...Array.from({ length: m + 1 }, (_, i) => `M${left + i * a} ${top}v${n * b}`),
      ...Array.from({ length: n + 1 }, (_, i) => `M${left} ${top + i * b}h${m * a}`),
    ].join('');
  const bottom = (v.bottomLip + v.bottomTongue) * scale;
  return (
    <Drawing
      view={[0, 0, 150, 152]}
      title="The things from above and from the front"
      description={
        open
          ? `The box around them is ${said(box.outsideLength, 'length')} by ${said(box.outsideWidth, 'length')} by ${said(box.outsideHeight, 'length')} outside.`
          : `${places.join(' by ')} of them.`
      }
    >
      {open && (
        <g class="arrives">
          <rect class="wood" x={x} y={y} width={w} height={d} />
          <rect class="wood" x={x} y={foot - h} width={w} height={h} />
        </g>
      )}
      <path class="thing" d={lines(x + inset, y + inset, [each[0], each[1]], [places[0], places[1]])} />
      <path
        class="thing"
        d={lines(x + inset, foot - bottom - places[2] * each[2], [each[0], each[2]], [places[0], places[2]])}
      />
    </Drawing>
  );
}

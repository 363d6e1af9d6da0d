/** The front end of a side wall, with the fingers of a lowered front in its sockets; open, the hole that stays above the front. */
import type { Values } from '../../box/whole/index.ts';
import { fingerLayout, frontHole } from '../../calc/joints/finger-layout.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';

/** Height of the front in each option, in fingers; the sides are five high, and begin with a finger below. */
const heights: Readonly<Record<string, number>> = { whole: 4, side: 4.45, own: 3.6 };
const sides = 5;

/** The hole above the front, mm. */
export const holeOf = (v: Values, option: string): number =>
  frontHole.compute({
    h: heights[option]! * v.fingerWidth,
    H: sides * v.fingerWidth,
    f: v.fingerWidth,
  });

/** The option that leaves a hole. */
export const showsHole = (v: Values): string =>
  Object.keys(heights).find((option) => holeOf(v, option) > 0) ?? 'whole';

const [left, top, high] = [34, 10, 112] as const;

export function FrontPick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const front = heights[option]! * v.fingerWidth;
  const scale = high / (sides * v.fingerWidth);
  const foot = top + high;
  const deep = v.wall * scale;
  const up = (mm: number) => foot - mm * scale;
  const hole = holeOf(v, option);
  return (
    <Drawing
      view={[0, 0, 150, foot + 8]}
      title="The front end of a side wall"
      description={`The front is ${said(front, 'length')} high, the fingers ${said(v.fingerWidth, 'length')} wide. ${
        open ? (hole > 0 ? `A hole of ${said(hole, 'length')} stays above it.` : 'No hole stays.') : ''
      }`}
    >
      <rect class="wood" x={left} y={top} width={150 - left} height={high} />
      {fingerLayout(sides * v.fingerWidth, v.fingerWidth)
        .filter(({ wall, from }) => wall === 'second' && from < front)
        .map(({ from, to }) => (
          <rect
            key={from}
            class="wood-end"
            x={left}
            y={up(Math.min(to, front))}
            width={deep}
            height={(Math.min(to, front) - from) * scale}
          />
        ))}
      {open && hole > 0 && (
        <rect class="hole" x={left} y={up(front + hole)} width={deep} height={hole * scale} />
      )}
      <path class="hidden-line" d={`M4 ${up(front)}H${left}`} />
    </Drawing>
  );
}

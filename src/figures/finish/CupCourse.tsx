/**
 * Cup of a lid, day by day, after the air around the box has changed: for each way of finishing and standing, the depth
 * to which it bows. Above the middle line it crowns outward. Drawn in units of a phone's pixels.
 */

import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { Ticks } from '../plot/Axis.tsx';
import { across, axesOn, curve, evenly, Plot } from '../plot/Plot.tsx';

export interface CupCourseProps {
  /** Days from one entry of a course to the next. */
  readonly every: number;
  /** Depth by day, mm, above zero where the lid crowns outward. */
  readonly courses: readonly {
    readonly word: string;
    readonly depth: ArrayLike<number>;
    /** The largest of them, either way. */
    readonly worst: number;
  }[];
}

const frame = { left: 52, right: 344, top: 8, bottom: 188 } as const;
const { left, right, bottom } = frame;
// The first days change fastest: points crowd towards the start.
const shares = evenly([0, 1], 40).map((share) => share ** 2);
const lines = ['curve', 'narrow', 'axis'] as const;

export function CupCourse({ every, courses }: CupCourseProps) {
  const last = courses[0]!.depth.length - 1;
  const days = last * every;
  const largest = Math.max(0.05, ...courses.map(({ worst }) => worst));
  // A little room above and below the deepest line.
  const most = largest * (90 / 84);
  const axes = axesOn(frame, [0, last], [-most, most]);
  const path = (depth: ArrayLike<number>) =>
    curve(
      axes,
      shares.map((share) => Math.round(share * last)).map((at) => [at, depth[at]!]),
    );
  return (
    <Drawing
      view={[0, 0, 350, 208 + 18 * courses.length + 14]}
      title="Cup of the lid, day by day"
      description={courses
        .map(({ word, worst }) => `${word}: at most ${said(worst, 'length', { as: 'fine' })}.`)
        .join(' ')}
    >
      <Plot on={axes} />
      <path class="thin" d={across(axes, { y: [0] })} />
      {courses.map(({ word, depth }, i) => (
        <path key={word} class={lines[i]} fill="none" d={path(depth)} />
      ))}
      <Ticks
        on={axes}
        at={[
          [0.8 * most, 'crowns'],
          [0, 'flat'],
          [-0.8 * most, 'hollow'],
        ]}
        side="left"
        away={5}
      />
      <Label x={left} y={bottom + 14} anchor="start">
        day 0
      </Label>
      <NumberLabel x={right} y={bottom + 14} anchor="end" value={days} kind="days" />
      {courses.map(({ word, worst }, i) => (
        <g key={word}>
          <line
            class={lines[i]}
            x1={left}
            x2={left + 26}
            y1={bottom + 36 + 18 * i}
            y2={bottom + 36 + 18 * i}
          />
          <NumberLabel
            x={left + 32}
            y={bottom + 36 + 18 * i}
            anchor="start"
            value={worst}
            kind="length"
            as="exact"
            before={`${word}: `}
          />
        </g>
      ))}
    </Drawing>
  );
}

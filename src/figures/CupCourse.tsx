/**
 * Cup of a lid, day by day, after the air around the box has changed: for each way of finishing and standing, the depth
 * to which it bows. Above the middle line it crowns outward. Drawn in units of a phone's pixels.
 */
import { format } from '../units/index.ts';
import { Drawing } from './parts/Drawing.tsx';
import { Label, NumberLabel } from './parts/Label.tsx';

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

const [left, right, top, bottom] = [52, 344, 8, 188] as const;
const middle = (top + bottom) / 2;
const parts = 40;
const lines = ['curve', 'narrow', 'axis'] as const;

export function CupCourse({ every, courses }: CupCourseProps) {
  const last = courses[0]!.depth.length - 1;
  const days = last * every;
  const largest = Math.max(0.05, ...courses.map(({ worst }) => worst));
  const y = (depth: number) => middle - (depth / largest) * ((bottom - top) / 2 - 6);
  const path = (depth: ArrayLike<number>) =>
    `M${Array.from({ length: parts + 1 }, (_, i) => {
      const at = Math.round(last * (i / parts) ** 2);
      return `${(left + (at / last) * (right - left)).toFixed(1)} ${y(depth[at]!).toFixed(1)}`;
    }).join('L')}`;
  return (
    <Drawing
      view={[0, 0, 350, 208 + 18 * courses.length + 14]}
      title="Cup of the lid, day by day"
      description={courses
        .map(({ word, worst }) => `${word}: at most ${format(worst, 'length', { system: 'mm', digits: 2 })}.`)
        .join(' ')}
    >
      <rect class="plot" x={left} y={top} width={right - left} height={bottom - top} />
      <line class="thin" x1={left} x2={right} y1={middle} y2={middle} />
      {courses.map(({ word, depth }, i) => (
        <path key={word} class={lines[i]} fill="none" d={path(depth)} />
      ))}
      <Label x={left - 5} y={top + 18} anchor="end">
        crowns
      </Label>
      <Label x={left - 5} y={middle} anchor="end">
        flat
      </Label>
      <Label x={left - 5} y={bottom - 18} anchor="end">
        hollow
      </Label>
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
            digits={2}
            denominator={64}
            before={`${word}: `}
          />
        </g>
      ))}
    </Drawing>
  );
}

/** What an exercise gives about a board: its end, with rings that slant against the wide face. They are drawn straight. */
import { format } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GivenProps, numbersOf } from '../parts/given.ts';
import { Label } from '../parts/Label.tsx';

const [width, left, right, top, foot] = [350, 20, 330, 30, 104] as const;
/** Between two rings, and how far the measured one is drawn on below the face. */
const [between, on, at] = [13, 58, 190] as const;

export function SlantGiven(given: GivenProps) {
  const { slant } = numbersOf(given, 'slant');
  const turn = (slant * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const rise = (foot - top) / Math.tan(turn);
  const apart = between / sin;
  /** Lines that meet the lower face from far left, so that those that enter through the side are there too. */
  const lines: string[] = [];
  for (let foot0 = at - apart * Math.ceil((at + rise) / apart); foot0 < right; foot0 += apart) {
    // Cut at both sides of the board: x from left to right along the line.
    const [from, to] = [Math.max(foot0, left), Math.min(foot0 + rise, right)];
    if (to <= from) continue;
    const y = (x: number) => foot - (x - foot0) * Math.tan(turn);
    lines.push(`M${from} ${y(from)}L${to} ${y(to)}`);
  }
  const end = [at - on * cos, foot + on * sin] as const;
  const arc = 40;
  const degrees = format(slant, 'angle', { system: given.system, digits: 0 });
  return (
    <Drawing
      view={[0, 0, width, end[1] + 26]}
      title="The end of the board"
      description={`The rings slant ${degrees} against the wide face.`}
    >
      <rect class="wood-end" x={left} y={top} width={right - left} height={foot - top} />
      <path class="ring" d={lines.join('')} />
      <path
        class="thin"
        d={`M${at} ${foot}L${end[0]} ${end[1]}M${at - arc} ${foot}A${arc} ${arc} 0 0 0 ${at - arc * cos} ${foot + arc * sin}`}
      />
      <Label x={end[0]} y={end[1] + 14}>
        {degrees}
      </Label>
      <Label x={(left + right) / 2} y={top - 14}>
        wide face
      </Label>
    </Drawing>
  );
}

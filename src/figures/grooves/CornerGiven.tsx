/**
 * What an exercise gives about a corner of fingers: opened flat and seen from outside, the fingers in true proportion and
 * the groove at its height. How the groove goes on at the corner is the question, so it is drawn only near the far ends.
 */
import { Arrows } from '../parts/Arrows.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { type GivenProps, numbersOf } from '../parts/given.ts';
import { Label } from '../parts/Label.tsx';

const [width, corner, left, right, head] = [350, 180, 6, 344, 26] as const;
const fingers = 4;
const names = { ends: 'front or back', sides: 'a side' } as const;

export function CornerGiven(given: GivenProps) {
  const { wall, finger, below, groove, text } = numbersOf(given, 'wall', 'finger', 'below', 'groove');
  const [first, other] =
    given.values.first === 'sides'
      ? ([names.sides, names.ends] as const)
      : ([names.ends, names.sides] as const);
  const scale = Math.min(54 / finger, 52 / wall);
  const foot = head + fingers * finger * scale;
  const up = (height: number) => foot - height * scale;
  /** The end of a finger of the one wall, seen in the face of the other; the first one's at the lower edge. */
  const ends = Array.from({ length: fingers }, (_, at) => {
    const side = at % 2 === 0 ? 1 : -1;
    return `M${corner} ${up(at * finger)}h${side * wall * scale}V${up((at + 1) * finger)}H${corner}Z`;
  }).join('');
  const reach = 1.2 * wall * scale;
  const sides = [below, below + groove].map(up);
  return (
    <Drawing
      view={[0, 0, width, foot + 24]}
      title="The corner opened flat, from outside"
      description={`At the lower edge a finger of ${first} runs through. A finger is ${text(finger)} wide. The groove begins ${text(below)} above the lower edge and is ${text(groove)} wide. How it goes on at the corner is not drawn.`}
    >
      <rect class="wood" x={left} y={head} width={right - left} height={foot - head} />
      <path class="end" d={ends} />
      <line class="axis" x1={corner} y1={head} x2={corner} y2={foot} />
      <path
        class="hidden-line"
        d={sides.map((y) => `M${left} ${y}H${corner - reach}M${corner + reach} ${y}H${right}`).join('')}
      />
      <Arrows from={[left + 12, foot]} to={[left + 12, up(below)]} />
      <Label x={left + 20} y={up(below / 2)} anchor="start">
        {text(below)}
      </Label>
      <Label x={left + 10} y={up(below + groove) - 11} anchor="start">
        groove {text(groove)}
      </Label>
      <Arrows from={[right - 12, up(2 * finger)]} to={[right - 12, up(3 * finger)]} />
      <Label x={right - 20} y={up(2.5 * finger)} anchor="end">
        finger {text(finger)}
      </Label>
      <Label x={(left + corner) / 2} y={head - 13}>
        {first}
      </Label>
      <Label x={(corner + right) / 2} y={head - 13}>
        {other}
      </Label>
      <Label x={corner} y={foot + 13}>
        lower edge
      </Label>
    </Drawing>
  );
}

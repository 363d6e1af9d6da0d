/** Thin panels seen from the end, each cupped by something else, all with the same stated magnification. */
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';

export interface CupStripsProps {
  /** mm */
  width: number;
  thickness: number;
  /** What cups each strip, and by how much, mm; below zero it is drawn the other way up, without a number flat. */
  strips: readonly { word: string; cup: number | undefined }[];
  description: string;
}

const [left, length] = [10, 330] as const;

export function CupStrips({ width, thickness, strips, description }: CupStripsProps) {
  const scale = length / width;
  const high = Math.max(3, thickness * scale);
  const most = Math.max(...strips.map(({ cup = 0 }) => Math.abs(cup)), 1e-6) * scale;
  const times = [20, 10, 5, 2].find((one) => one * most <= 44) ?? 1;
  const room = Math.min(most * times, 90);
  const row = 26 + room + high + 16;
  return (
    <Drawing
      view={[0, 0, 350, strips.length * row + 22]}
      title="What cups a thin panel"
      description={description}
    >
      {strips.map(({ word, cup: known }, i) => {
        const cup = known ?? 0;
        // The edges stay level; a hollow above goes down from there.
        const y = i * row + 26 + (cup < 0 ? room : 0);
        // A parabola's control point lies twice as far off as its middle.
        const sag = 2 * cup * scale * times;
        const middle = left + length / 2;
        return (
          <g key={word}>
            {known === undefined ? (
              <Label x={left} y={i * row + 12} anchor="start">
                {word}: no number
              </Label>
            ) : (
              <NumberLabel
                x={left}
                y={i * row + 12}
                anchor="start"
                value={Math.abs(cup)}
                kind="length"
                as="fine"
                before={`${word}: `}
              />
            )}
            <path
              class="wood-end"
              d={`M${left} ${y}Q${middle} ${y + sag} ${left + length} ${y}v${high}Q${middle} ${y + high + sag} ${left} ${y + high}Z`}
            />
            <line class="hidden-line" x1={left} x2={left + length} y1={y} y2={y} />
          </g>
        );
      })}
      <Label x={left} y={strips.length * row + 10} anchor="start">
        {times > 1 ? `depth drawn ${times} times; dashed: flat` : 'in true proportion; dashed: flat'}
      </Label>
    </Drawing>
  );
}

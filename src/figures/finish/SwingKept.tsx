/**
 * What a piece keeps of the swing of its air over a day, a week and a year, bare and finished. The thin line on each bar
 * is the factor of two in how fast moisture creeps through the wood. Drawn in units of a phone's pixels.
 */
import { scaleLinear } from 'd3-scale';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Shares kept, %: for the slow end, the middle and the fast end of what is known. */
export interface Kept {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface SwingKeptProps {
  readonly swings: readonly { readonly word: string; readonly bare: Kept; readonly finished: Kept }[];
}

const left = 74;
const x = scaleLinear([0, 100], [left, 300]);
const [bar, group] = [18, 62] as const;

export function SwingKept({ swings }: SwingKeptProps) {
  const say = (percent: number) => said(percent, 'percent', { digits: 0 });
  const row = (word: string, { low, middle, high }: Kept, y: number, fill: string) => (
    <g key={word}>
      <rect class={fill} x={left} y={y} width={Math.max(0.5, x(middle) - left)} height={bar} />
      <line class="axis" x1={x(low)} x2={x(high)} y1={y + bar / 2} y2={y + bar / 2} />
      <Label x={left - 6} y={y + bar / 2} anchor="end">
        {word}
      </Label>
      <NumberLabel
        x={x(Math.max(middle, high)) + 6}
        y={y + bar / 2}
        anchor="start"
        value={middle}
        kind="percent"
        digits={0}
      />
    </g>
  );
  return (
    <Drawing
      view={[0, 0, 350, group * swings.length + 12]}
      title="What the wood keeps of the swing of its air"
      description={swings
        .map(
          ({ word, bare, finished }) =>
            `${word}: bare ${say(bare.middle)}, finished ${say(finished.middle)}.`,
        )
        .join(' ')}
    >
      {swings.map(({ word, bare, finished }, i) => (
        <g key={word}>
          <Label class="strong" x={left} y={i * group + 10} anchor="start">
            {word}
          </Label>
          {row('bare', bare, i * group + 20, 'wood')}
          {row('finished', finished, i * group + 20 + bar, 'end')}
        </g>
      ))}
      <path class="axis" d={`M${left} 18V${group * swings.length}`} />
    </Drawing>
  );
}

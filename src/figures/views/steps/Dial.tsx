/** A hygrometer that reads what the gaps assume. */
import { NumberLabel } from '../../parts/Label.tsx';
import { StepSheet, sheet } from './StepSheet.tsx';

const radius = 48;
const middle = [sheet.width / 2, sheet.height / 2] as const;

/** On the dial: 0 % at the lower left, 100 % at the lower right, over the top. */
function at(percent: number, far: number): string {
  const angle = ((percent * 2.7 - 225) * Math.PI) / 180;
  return `${(middle[0] + far * Math.cos(angle)).toFixed(1)} ${(middle[1] + far * Math.sin(angle)).toFixed(1)}`;
}

export const Dial = ({ humidity }: { humidity: number }) => (
  <StepSheet shows="A hygrometer.">
    <circle class="dial" cx={middle[0]} cy={middle[1]} r={radius} />
    <path
      class="thin"
      d={Array.from(
        { length: 11 },
        (_, tick) => `M${at(10 * tick, radius - 3)}L${at(10 * tick, radius - 10)}`,
      ).join('')}
    />
    <path class="step-mark" d={`M${middle.join(' ')}L${at(humidity, radius - 12)}`} />
    <circle class="step-pin" cx={middle[0]} cy={middle[1]} r="3.5" />
    <NumberLabel x={middle[0]} y={middle[1] + 26} value={humidity} kind="percent" digits={0} />
  </StepSheet>
);

/** The trial without glue is drawn; when the last clamp is on with glue is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import type { GuessFrame } from '../parts/guess-frame.ts';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { clockAxes, clockSheet, GlueClock } from './GlueClock.tsx';
import { exampleOrder, glueUpMinutes, trialMinutes } from './glue-clock.ts';

/** Minutes that can be marked. */
export const minutesRange = { low: 0, high: 20 } as const;
const on = clockAxes(minutesRange.high);
export const clockFrame: GuessFrame = {
  width: clockSheet[0],
  height: clockSheet[1],
  from: [on.left, 141],
  to: [on.right, 141],
};

interface Props {
  values: Values;
  mark: number | undefined;
  open: boolean;
}

export function ClockGuess({ values: v, mark, open }: Props) {
  const trial = trialMinutes(exampleOrder);
  const end = glueUpMinutes(v);
  const { openTime, otherSteps } = exampleOrder;
  return (
    <Drawing
      view={[0, 0, ...clockSheet]}
      title="The clock of a glue-up"
      description={`The trial without glue takes ${said(trial, 'number', { digits: 1 })} minutes; the glue stays open ${openTime}. ${
        open
          ? `With glue it takes ${said(end, 'number', { digits: 1 })} minutes.`
          : 'How long it takes with glue is not drawn yet.'
      }`}
    >
      <GlueClock
        until={minutesRange.high}
        trial={trial}
        spreading={end - trial}
        openTime={openTime}
        faces={v.facesToGlue}
        otherSteps={otherSteps}
        wet={open}
      />
      {open && (
        <Label
          class="on-lines arrives"
          x={end < 14 ? on.x(end) + 8 : on.right}
          y={end < 14 ? 141 : 116}
          anchor={end < 14 ? 'start' : 'end'}
        >
          {`${said(end, 'number', { digits: 1 })} minutes`}
        </Label>
      )}
      {mark !== undefined && <path class="ghost bare" d={`M${on.x(mark)} 112V158`} />}
    </Drawing>
  );
}

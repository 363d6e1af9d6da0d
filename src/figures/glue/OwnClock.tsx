/** The reader's own order on the clock. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';
import { clockSheet, GlueClock } from './GlueClock.tsx';
import { type Order, trialMinutes } from './glue-clock.ts';

/** Lengths of the clock, minutes. */
const clocks = [8, 12, 20, 40, 60, 120, 240] as const;

/** @param minutes of the glue-up, spreading counted */
export function OwnClock({ values: v }: { values: Values & Order & { readonly minutes: number } }) {
  const { minutes, openTime } = v;
  const trial = trialMinutes(v);
  const until = clocks.find((one) => one >= 1.15 * Math.max(minutes, openTime)) ?? 240;
  return (
    <Drawing
      view={[0, 0, ...clockSheet]}
      title="The clock of this glue-up"
      description={`The trial takes ${said(trial, 'number', { digits: 1 })} minutes, the glue-up ${said(minutes, 'number', { digits: 1 })}; the glue stays open ${openTime}.`}
    >
      <GlueClock
        until={until}
        trial={trial}
        spreading={minutes - trial}
        openTime={openTime}
        faces={v.facesToGlue}
        otherSteps={v.otherSteps}
        wet
      />
    </Drawing>
  );
}

/** What several measurements of one thing say of the wood's movement, and no more than they bear. */
import {
  type Measurable,
  type Met,
  type Seen,
  seenIn,
  tableMovement,
} from '../../../box/subjects/movement/measured.ts';
import type { MovementValues } from '../../../box/subjects/movement/results.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { ringAngleSeen } from '../../../calc/movement/seen-movement.ts';
import { toDecimals } from '../../../units/index.ts';
import { href } from '../../kit/href.ts';

interface SeenSaysProps {
  what: Measurable;
  values: MovementValues;
  met: readonly Met[];
  reading: number;
}

const percent = (share: number) => `${toDecimals(100 * share, 3)} %`;

export function SeenSays({ what, values, met, reading }: SeenSaysProps) {
  if (met.length < 2)
    return (
      <p class="seen-says">
        One measurement compares one size. Two or more, in different air, also show how much the wood moves.
      </p>
    );
  const table = tableMovement(what, values);
  const seen = seenIn(what, values, met, reading);
  if (isRefused(seen)) return <p class="seen-says">{seen.refused}</p>;
  return (
    <div class="seen-says">
      <p>
        Movement for each point of moisture: your numbers show <strong>{percent(seen.perPoint)}</strong> of
        the size, give or take {percent(seen.within)}. By the table it is {percent(table)}.{' '}
        {met.length === 2
          ? 'From two measurements only the reading of the tool is known to be off; three or more also show the scatter.'
          : `The spread comes from ${met.length} measurements: 19 times in 20 the true value lies in it, if nothing else went wrong.`}
      </p>
      <p>
        <Verdict seen={seen} values={values} />
      </p>
    </div>
  );
}

function Verdict({ seen, values }: { seen: Seen; values: MovementValues }) {
  const { says, perPoint } = seen;
  if (says === 'nothing')
    return (
      <>
        That decides nothing: the spread is as large as the movement itself. A finer tool, or seasons farther
        apart, would tell more.
      </>
    );
  if (says === 'as the table') return <>Within what can be told, this wood moves as the table says.</>;
  const [T, R] = [values.tangentialCoefficient, values.radialCoefficient];
  const angle =
    perPoint > R && perPoint < T ? ringAngleSeen.compute({ s: (T - perPoint) / (T - R) }) : undefined;
  const rings = (
    <>
      Or the rings lie otherwise than you set
      {angle !== undefined && <>: at {Math.round(angle)}° to the face they would move like that</>}; look at{' '}
      <a href={href('lessons/reading-the-board/')}>the end grain</a>.
    </>
  );
  return says === 'less' ? (
    <>
      The wood moved less than the table says. It may lag behind: a panel needs weeks to follow{' '}
      <a href={href('lessons/air-and-wood/')}>the air</a>, and{' '}
      <a href={href('lessons/what-a-finish-does/')}>a finish</a> makes it slower. {rings}
    </>
  ) : (
    <>
      The wood moved more than the table says. The air at the box may have been drier or damper than where you
      read it; a meter on <a href={href('lessons/air-and-wood/')}>the wood</a> would tell. {rings}
    </>
  );
}

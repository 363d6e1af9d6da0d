/** What the rules say on the sheet: counts, exceptions accepted on purpose with their reasons, and what nobody accepted. */

import type { Verdict } from '../../box/core/verdict.ts';
import type { Design } from '../../box/design/design.ts';
import { verdicts } from '../../box/whole/index.ts';
import { InBoth, stateWords } from '../kit/told.tsx';

const Line = ({ verdict, reason }: { verdict: Verdict; reason?: string | undefined }) => (
  <li>
    {verdict.check.label}
    {verdict.state !== 'unknown' && (
      <>
        {' '}
        <InBoth verdict={verdict} part={({ measured }) => measured} />
      </>
    )}
    , {stateWords[verdict.state][1]}.{' '}
    {reason === undefined ? verdict.because : <b>Accepted because: {reason}</b>}
  </li>
);

export function Exceptions({ design }: { design: Design }) {
  const judged = verdicts(design.values);
  const odd = judged.filter(({ state }) => state !== 'usual');
  const reasonOf = ({ check }: Verdict) => design.box.accepted[check.id];
  const accepted = odd.filter((verdict) => reasonOf(verdict));
  const open = odd.filter((verdict) => !reasonOf(verdict));
  return (
    <>
      <p>
        {judged.length - odd.length} of {judged.length} checks are inside the usual range.
      </p>
      {accepted.length > 0 && (
        <>
          <h3>Accepted on purpose</h3>
          <ul>
            {accepted.map((verdict) => (
              <Line key={verdict.check.id} verdict={verdict} reason={reasonOf(verdict)} />
            ))}
          </ul>
        </>
      )}
      {open.length > 0 && (
        <>
          <h3>Not kept, no reason given</h3>
          <ul>
            {open.map((verdict) => (
              <Line key={verdict.check.id} verdict={verdict} />
            ))}
          </ul>
        </>
      )}
    </>
  );
}

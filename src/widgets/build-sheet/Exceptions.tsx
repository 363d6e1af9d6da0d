/** What the rules say on the sheet: counts, exceptions accepted on purpose with their reasons, and what nobody accepted. */
import { verdicts } from '../../box/checks/index.ts';
import type { Design } from '../../box/design.ts';
import type { Verdict } from '../../box/verdict.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';

const words = { usual: 'usual', unusual: 'outside the usual range', breaks: 'breaks something' } as const;

const Line = ({ verdict, reason }: { verdict: Verdict; reason?: string | undefined }) => (
  <li>
    {verdict.check.label}{' '}
    <Quantity value={verdict.measured} kind={verdict.check.kind} digits={verdict.check.digits} />,{' '}
    {words[verdict.state]}. {reason === undefined ? verdict.because : <b>Accepted because: {reason}</b>}
  </li>
);

export function Exceptions({ design }: { design: Design }) {
  const judged = verdicts(design.values);
  const odd = judged.filter(({ state }) => state !== 'usual');
  const reasonOf = ({ check }: Verdict) => design.box.accepted[check.rule];
  const accepted = odd.filter((verdict) => reasonOf(verdict));
  const open = odd.filter((verdict) => !reasonOf(verdict));
  return (
    <>
      <p>
        {judged.length - odd.length} of {judged.length} rules are kept.
      </p>
      {accepted.length > 0 && (
        <>
          <h3>Accepted on purpose</h3>
          <ul>
            {accepted.map((verdict) => (
              <Line key={verdict.check.label} verdict={verdict} reason={reasonOf(verdict)} />
            ))}
          </ul>
        </>
      )}
      {open.length > 0 && (
        <>
          <h3>Not kept, no reason given</h3>
          <ul>
            {open.map((verdict) => (
              <Line key={verdict.check.label} verdict={verdict} />
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** A trouble in a list: its title first, since that is what is looked for; below it the number that tells whether this box is prone to it. */
import { href } from '../kit/href.ts';
import { OwnUnits } from '../kit/late/OwnUnits.tsx';
import { InBoth, numberAndMark } from '../kit/told.tsx';
import { StateTag } from '../verdicts/StateTag.tsx';
import { isUnkept, type RuleLine } from './rule-lines.ts';

export function TroubleRow({ line: { rule, verdict, isNoted } }: { line: RuleLine }) {
  return (
    <li class="trouble-row" data-rule={rule.id}>
      <a href={href(rule.path)}>{rule.title}</a>{' '}
      {isUnkept(verdict?.state) && <StateTag state={verdict!.state} />}
      {isNoted && <small> for a reason of mine</small>}
      {verdict && verdict.state !== 'unknown' && (
        <small class="row-usual">
          <OwnUnits of={verdict.check.label} />:{' '}
          <b>
            <InBoth verdict={verdict} part={({ measured }) => numberAndMark(measured)[0]} />
          </b>
        </small>
      )}
    </li>
  );
}

/** Rules or troubles as a list, the number first: bold the one of this box, else the usual range. The first are in sight, the others folded. */
import { href } from '../kit/href.ts';
import { InBoth, numberAndMark } from '../kit/told.tsx';
import { StateTag } from '../verdicts/StateTag.tsx';
import type { ListedRule, RuleLine } from './rule-lines.ts';
import { TroubleRow } from './TroubleRow.tsx';

type Range = NonNullable<ListedRule['usual']>;

/** In sight; one more is no reason for a fold. */
const first = 8;
/** A usual range of more letters is a sentence: it stands under the title, where there is room for it. */
const longest = 26;

const Usual = ({ of: { mm, inch } }: { of: Range }) =>
  mm === inch ? (
    mm
  ) : (
    <>
      <span class="mm">{mm}</span>
      <span class="inch">{inch}</span>
    </>
  );

function Row({ line: { rule, verdict, isNoted }, usual }: { line: RuleLine; usual: Range }) {
  const own = verdict && verdict.state !== 'unknown' ? verdict : undefined;
  const isLong = Math.max(usual.mm.length, usual.inch.length) > longest;
  return (
    <li data-rule={rule.id}>
      <span class="row-number">
        {own ? (
          <b>
            <InBoth verdict={own} part={({ measured }) => numberAndMark(measured)[0]} />
          </b>
        ) : (
          !isLong && <Usual of={usual} />
        )}
      </span>
      <span>
        <a href={href(rule.path)}>{rule.title}</a> {verdict && <StateTag state={verdict.state} />}
        {isNoted && <small> for a reason of mine</small>}
        {!own && isLong && (
          <small class="row-usual">
            <Usual of={usual} />
          </small>
        )}
      </span>
    </li>
  );
}

const Rows = ({ lines }: { lines: readonly RuleLine[] }) => (
  <ul class="rule-rows">
    {lines.map((line) =>
      line.rule.usual ? (
        <Row key={line.rule.id} line={line} usual={line.rule.usual} />
      ) : (
        <TroubleRow key={line.rule.id} line={line} />
      ),
    )}
  </ul>
);

export function RuleRows({ lines }: { lines: readonly RuleLine[] }) {
  const shown = lines.length > first + 1 ? first : lines.length;
  return (
    <>
      <Rows lines={lines.slice(0, shown)} />
      {lines.length > shown && (
        <details class="more-rules">
          <summary>{lines.length - shown} more</summary>
          <Rows lines={lines.slice(shown)} />
        </details>
      )}
    </>
  );
}

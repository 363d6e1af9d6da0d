/** Rules or troubles as a list, the number first: bold the one of this box, else the usual range. The first are in sight, the others folded. */
import { href } from '../kit/href.ts';
import { OwnUnits } from '../kit/OwnUnits.tsx';
import { InBoth, numberAndMark } from '../kit/told.tsx';
import { StateTag } from '../verdicts/StateTag.tsx';
import { isUnkept, type ListedRule, type RuleLine } from './rule-lines.ts';

/** In sight; one more is no reason for a fold. */
const first = 8;
/** A usual range of more letters is a sentence: it stands under the title, where there is room for it. */
const longest = 26;

const Usual = ({ of: { mm, inch } }: { of: NonNullable<ListedRule['usual']> }) =>
  mm === inch ? (
    mm
  ) : (
    <>
      <span class="mm">{mm}</span>
      <span class="inch">{inch}</span>
    </>
  );

function Row({ line: { rule, verdict, isNoted } }: { line: RuleLine }) {
  const own = verdict && verdict.state !== 'unknown' ? verdict : undefined;
  const { usual } = rule;
  const isLong = usual && Math.max(usual.mm.length, usual.inch.length) > longest;
  return (
    <li data-rule={rule.id}>
      <span class="row-number">
        {own ? (
          <b>
            <InBoth verdict={own} part={({ measured }) => numberAndMark(measured)[0]} />
          </b>
        ) : (
          usual && !isLong && <Usual of={usual} />
        )}
      </span>
      <span>
        <a href={href(rule.path)}>{rule.title}</a>{' '}
        {verdict && (usual || isUnkept(verdict.state)) && <StateTag state={verdict.state} />}
        {isNoted && <small> for a reason of mine</small>}
        {!own && isLong && (
          <small class="row-usual">
            <Usual of={usual} />
          </small>
        )}
        {/* The title of a trouble does not say what is measured. */}
        {own && !usual && (
          <small class="row-usual">
            <OwnUnits of={own.check.label} />
          </small>
        )}
      </span>
    </li>
  );
}

const Rows = ({ lines }: { lines: readonly RuleLine[] }) => (
  <ul class="rule-rows">
    {lines.map((line) => (
      <Row key={line.rule.id} line={line} />
    ))}
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

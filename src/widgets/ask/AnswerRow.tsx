/** One answer: the number first, mine large and the usual range under it; then title, kind, verdict and claim. */
import { useId } from 'preact/hooks';
import type { Verdict } from '../../box/core/verdict.ts';
import { href } from '../kit/href.ts';
import { Phrase } from '../kit/Phrase.tsx';
import { InBoth, stateWords } from '../kit/told.tsx';
import { StateTag } from '../verdicts/StateTag.tsx';
import { AnswerNumber } from './AnswerNumber.tsx';
import { type Entry, kindWords } from './entry.ts';
import type { Shown } from './shown.ts';

/** What a rule says of the box, in full; the number is left out where it stands beside it already. */
function Judged({ verdict, withNumber }: { verdict: Verdict; withNumber?: true }) {
  const { check, state, usual, because } = verdict;
  const has = state !== 'unknown' && usual.some(Number.isFinite);
  return (
    <p>
      <StateTag state={state} /> {check.label[0]!.toUpperCase() + check.label.slice(1)}:{' '}
      {withNumber && state !== 'unknown' && (
        <>
          <InBoth verdict={verdict} part={({ measured }) => measured} />,{' '}
        </>
      )}
      {stateWords[state][1]}
      {has && (
        <>
          , for my box <InBoth verdict={verdict} part={(told) => told.usual} />
        </>
      )}
      . {because}
    </p>
  );
}

interface Props {
  entry: Entry;
  shown: Shown;
  /** The first answer is told in full: what my box has to do with it, and when to break the rule. */
  full: boolean;
  /** The rule that gives the reason, and rules where causes stand. */
  ruleOf: (slug: string) => Entry | undefined;
}

export function AnswerRow({ entry, shown, full, ruleOf }: Props) {
  const id = useId();
  const { kind, title, path, says } = entry;
  const { verdict, worse } = shown;
  return (
    <>
      <AnswerNumber id={id} shown={shown} />
      <div class="answer-text">
        <p class="answer-head">
          <a class="answer-title" href={href(path)} aria-describedby={id}>
            {title}
          </a>{' '}
          <small>{kindWords[kind]}</small>
        </p>
        {full && verdict && <Judged verdict={verdict} />}
        {full && worse && <Judged verdict={worse} withNumber />}
        {says && (
          <p>
            {!full && verdict && <StateTag state={(worse ?? verdict).state} />}{' '}
            {typeof says === 'string' ? says : <Phrase words={says} />}
          </p>
        )}
        {full && <Reasons entry={entry} ruleOf={ruleOf} />}
      </div>
    </>
  );
}

/** The rule behind an answer, when to break it, and where the causes of a trouble stand. */
function Reasons({ entry: { kind, except, rule, rules = [] }, ruleOf }: Pick<Props, 'entry' | 'ruleOf'>) {
  const reason = rule && kind !== 'rule' ? ruleOf(rule) : undefined;
  const causes = rules.flatMap((slug) => ruleOf(slug) ?? []);
  const limit = except ?? reason?.except;
  return (
    <>
      {reason && (
        <p>
          Why: <a href={href(reason.path)}>{reason.title}</a>.{' '}
          {typeof reason.says === 'string' && reason.says}
        </p>
      )}
      {limit && <p>When to break it: {limit}</p>}
      {causes.length > 0 && (
        <p>
          Look at:{' '}
          {causes.map((cause, index) => (
            <span key={cause.id}>
              {index > 0 && ', '}
              <a href={href(cause.path)}>{cause.title}</a>
            </span>
          ))}
        </p>
      )}
    </>
  );
}

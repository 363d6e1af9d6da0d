/** What is shown of an answer: its number for my box, the usual range, what the rules say of it. */
import type { Verdict } from '../../box/core/verdict.ts';
import type { Words } from '../../box/work/say.ts';
import type { BothTexts, Entry } from './entry.ts';
import type { Own } from './own.ts';

export interface Shown {
  /** The number of my box, in words or as its check tells it; undefined where there is none. */
  readonly number: Words | Verdict | undefined;
  readonly usual: BothTexts | undefined;
  /** What judges that very number. */
  readonly verdict: Verdict | undefined;
  /** Another check of the same rule that says worse. */
  readonly worse: Verdict | undefined;
}

const rank = { usual: 0, unknown: 1, unusual: 2, breaks: 3 } as const;
const isKnown = (verdict: Verdict | undefined) => verdict && verdict.state !== 'unknown';

/** @param usual ranges of the rules by slug */
export function shownOf(entry: Entry, own: Own, usual: (rule: string) => BothTexts | undefined): Shown {
  const { kind, rule, onlyOf = own.box.kind } = entry;
  const check = onlyOf === own.box.kind ? entry.check : undefined;
  const of = (found: (verdict: Verdict) => boolean) => own.verdicts.filter(found);
  const verdict =
    entry.verdict ??
    (check !== undefined
      ? of((one) => one.check.id === check)[0]
      : kind === 'rule'
        ? of((one) => one.check.rule === rule)[0]
        : undefined);
  const worse =
    kind === 'rule'
      ? of((one) => one.check.rule === rule).sort((a, b) => rank[b.state] - rank[a.state])[0]
      : undefined;
  // Where no check speaks about the box, a trouble shows the range that its likeliest cause is judged by.
  const behind =
    verdict?.check.rule ?? (kind === 'trouble' && onlyOf === own.box.kind ? entry.rules?.[0] : undefined);
  const range = entry.usual ?? (behind === undefined ? undefined : usual(behind));
  return {
    number: entry.number?.() ?? (isKnown(verdict) ? verdict : undefined),
    usual: range,
    verdict,
    worse: worse && verdict && rank[worse.state] > rank[verdict.state] ? worse : undefined,
  };
}

/** The rules, or the troubles, of a part of the box in the order in which they are listed, each with what is said of this box. */
import type { State, Verdict } from '../../box/core/verdict.ts';
import type { Values } from '../../box/whole/index.ts';
import type { PartOfBox } from '../../figures/box/parts-of-box.ts';
import type { Count } from '../verdicts/Mark.tsx';

/** A part of the box as rules name it. */
export interface PartOfRules {
  /** Where links lead to. */
  readonly anchor: string;
  /** As a reader meets it, lower case. */
  readonly name: string;
  /** What of the drawing it is; what is the whole box is none of it. */
  readonly drawn?: PartOfBox | undefined;
}

export interface ListedRule {
  readonly id: string;
  readonly title: string;
  /** From the site's root: `rules/twist/`. */
  readonly path: string;
  /** A trouble has none. */
  readonly usual?: { readonly mm: string; readonly inch: string };
  /** Ids of the checks whose numbers tell of a trouble, the first of them first; a rule is told by all of its own. */
  readonly checks?: readonly string[];
  /** The only kind of box that has this trouble. */
  readonly kind?: Values['kind'] | undefined;
  /** Anchors of its parts. */
  readonly parts: readonly string[];
}

export interface RuleLine {
  readonly rule: ListedRule;
  /** The worst that its checks say of the box; none where they do not speak about it, or there is none. */
  readonly verdict: Verdict<Values> | undefined;
  /** Not kept, for a reason the reader has given. */
  readonly isNoted: boolean;
}

/** What a rule says that wants a look. */
export const isUnkept = (state: State | undefined) => state === 'breaks' || state === 'unusual';

/** Whether a line asks for a look. */
export const isWarning = ({ verdict, isNoted }: RuleLine): boolean => isUnkept(verdict?.state) && !isNoted;

/** Warnings on top, then what has a number for this box, then the rest. */
const rank = (line: RuleLine): number => {
  if (isWarning(line)) return line.verdict?.state === 'breaks' ? 0 : 1;
  return line.verdict && line.verdict.state !== 'unknown' ? 2 : 3;
};

/**
 * @param rules in the order of the work
 * @param accepted the reader's reasons, by check
 * @param kind of the reader's box
 */
export function linesOf(
  rules: readonly ListedRule[],
  verdicts: readonly Verdict<Values>[],
  accepted: Readonly<Record<string, string>>,
  kind?: Values['kind'],
): readonly RuleLine[] {
  const about = (rule: ListedRule): readonly Verdict<Values>[] =>
    rule.kind && rule.kind !== kind
      ? []
      : (rule.checks?.flatMap((id) => verdicts.find(({ check }) => check.id === id) ?? []) ??
        verdicts.filter(({ check }) => check.rule === rule.id));
  const lineOf = (rule: ListedRule): RuleLine => {
    const own = about(rule).map((verdict) => ({
      rule,
      verdict,
      isNoted: isUnkept(verdict.state) && Object.hasOwn(accepted, verdict.check.id),
    }));
    return own.sort((a, b) => rank(a) - rank(b))[0] ?? { rule, verdict: undefined, isNoted: false };
  };
  return rules.map(lineOf).sort((a, b) => rank(a) - rank(b));
}

/** Those of one part. */
export const linesAbout = (lines: readonly RuleLine[], { anchor }: PartOfRules): readonly RuleLine[] =>
  lines.filter(({ rule }) => rule.parts.includes(anchor));

export function countOf(lines: readonly RuleLine[]): Count {
  const warned = lines.filter(isWarning);
  const breaks = warned.filter(({ verdict }) => verdict?.state === 'breaks').length;
  return { breaks, looks: warned.length - breaks };
}

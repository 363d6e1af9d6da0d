/** Ways from a trouble to rules and lessons, and back. Pure: a trouble says its rules and its lesson, and nothing says it twice. */

export interface TroubleCauses {
  readonly causes: readonly { readonly rule: { readonly id: string } }[];
  readonly rules: readonly { readonly id: string }[];
}
interface Trouble {
  readonly data: TroubleCauses & {
    readonly title: string;
    readonly lesson?: { readonly id: string } | undefined;
  };
}

/** Slugs of the rules behind a trouble, that of the likeliest cause first, each once. */
export const rulesBehind = ({ causes, rules }: TroubleCauses): readonly string[] => [
  ...new Set([...causes.map(({ rule }) => rule.id), ...rules.map(({ id }) => id)]),
];

const byTitle = (one: Trouble, other: Trouble) => one.data.title.localeCompare(other.data.title, 'en');

/** Troubles that a rule is behind; those it is the likeliest cause of come first. */
export const troublesOfRule = <Some extends Trouble>(
  troubles: readonly Some[],
  rule: string,
): readonly Some[] =>
  troubles
    .filter(({ data }) => rulesBehind(data).includes(rule))
    .sort(
      (one, other) =>
        rulesBehind(one.data).indexOf(rule) - rulesBehind(other.data).indexOf(rule) || byTitle(one, other),
    );

/**
 * Troubles of a lesson: those that name it, and those whose likeliest cause is told by a rule that it teaches.
 * @param rules slugs of the rules it teaches
 */
export const troublesOfLesson = <Some extends Trouble>(
  troubles: readonly Some[],
  lesson: string,
  rules: readonly string[],
): readonly Some[] =>
  troubles
    .filter(({ data }) => data.lesson?.id === lesson || rules.includes(rulesBehind(data)[0]!))
    .sort(byTitle);

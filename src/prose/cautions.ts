/** The cautions of a rule, by name or said by itself, and where each caution of the table stands. */
import { type CautionName, cautionNames, cautions, isCautionName } from '../box/work/cautions.ts';

/** A name of the table, or a case of its own; a plain sentence that is no name is the old form of the latter. */
export type RuleCaution = string | { readonly hazard: string; readonly safeguard: string };

export function cautionsOf(some: readonly RuleCaution[]) {
  const named = some.filter((one): one is CautionName => typeof one === 'string' && isCautionName(one));
  const own = some
    .filter((one) => typeof one !== 'string' || !isCautionName(one))
    .map((one) => (typeof one === 'string' ? { hazard: one, safeguard: '' } : one));
  return { named, own };
}

/** All that they say, to be searched. */
export function textsOf(some: readonly RuleCaution[]): readonly string[] {
  const { named, own } = cautionsOf(some);
  return [...named.map((name) => cautions[name]), ...own].map(
    ({ hazard, safeguard }) => `${hazard} ${safeguard}`,
  );
}

/** Names that the tags of a lesson's text ask for: `<Caution of="resaw machines">`. */
export const namedIn = (body = ''): readonly string[] =>
  [...body.matchAll(/<Caution\s[^>]*\bof="([^"]*)"/g)].flatMap((match) =>
    match[1]!.split(/\s+/).filter(Boolean),
  );

interface Page {
  readonly id: string;
  readonly body?: string | undefined;
  readonly data: { readonly title: string; readonly cautions?: readonly RuleCaution[] };
}

/** The rules and lessons in which each caution stands. */
export const cautionPlaces = <Rule extends Page, Lesson extends Page>(
  rules: readonly Rule[],
  lessons: readonly Lesson[],
) =>
  cautionNames.map((name) => ({
    name,
    ...cautions[name],
    rules: rules.filter(
      ({ data, body }) =>
        cautionsOf(data.cautions ?? []).named.includes(name) || namedIn(body).includes(name),
    ),
    lessons: lessons.filter(({ body }) => namedIn(body).includes(name)),
  }));

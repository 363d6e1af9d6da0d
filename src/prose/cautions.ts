/** The cautions of a rule or trouble, by name or said by itself, and where each caution of the table stands. */
import { designOf } from '../box/design/design.ts';
import { exampleBox } from '../box/subjects/example.ts';
import { type Box, fields } from '../box/subjects/inputs.ts';
import { evaluate } from '../box/whole/index.ts';
import { type CautionName, cautionNames, cautions } from '../box/work/cautions.ts';
import { workOf } from '../box/work/work.ts';

/** A name of the table, or a case of its own. */
export type RuleCaution = CautionName | { readonly hazard: string; readonly safeguard: string };

export const cautionsOf = (some: readonly RuleCaution[]) => ({
  named: some.filter((one) => typeof one === 'string'),
  own: some.filter((one) => typeof one !== 'string'),
});

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

/** The rules, lessons and troubles in which each caution stands. */
export const cautionPlaces = <Rule extends Page, Lesson extends Page, Trouble extends Page>(
  rules: readonly Rule[],
  lessons: readonly Lesson[],
  troubles: readonly Trouble[],
) =>
  cautionNames.map((name) => ({
    name,
    ...cautions[name],
    rules: rules.filter(
      ({ data, body }) =>
        cautionsOf(data.cautions ?? []).named.includes(name) || namedIn(body).includes(name),
    ),
    lessons: lessons.filter(({ body }) => namedIn(body).includes(name)),
    troubles: troubles.filter(({ data }) => cautionsOf(data.cautions ?? []).named.includes(name)),
  }));

/** What decides which work there is on a box. */
const choices = ['kind', 'joint', 'bottom', 'bottomFit', 'bottomSeat', 'lid', 'pull', 'wallsFrom'] as const;

/** The cautions that some box has in its order of work: the example with one choice, or two, changed. */
export function namesInWork(): ReadonlySet<string> {
  const found = new Set<string>();
  const changes: Partial<Box>[] = choices.flatMap((name) =>
    Object.keys(fields[name].options).map((option) => ({ [name]: option }) as Partial<Box>),
  );
  for (const one of changes)
    for (const other of changes)
      for (const { caution } of workOf(designOf(evaluate({ ...exampleBox, ...one, ...other })))?.steps ?? [])
        if (caution) found.add(caution);
  return found;
}

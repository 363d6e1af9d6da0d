/** Answers beside the rules: the words of the trade, the cautions, and what people ask that these pages do not say. */
import { cautionNames, cautions } from '../box/work/cautions.ts';
import type { Entry } from '../widgets/ask/entry.ts';
import { anchorOfWord, namesOf, type Word } from './words/glossary.ts';

export interface GlossaryData extends Word {
  readonly rule?: { readonly id: string } | undefined;
}
export interface BeyondData {
  readonly title: string;
  readonly says: string;
  readonly asked: readonly string[];
  readonly near: readonly { readonly id: string }[];
}

/** A word answers by every name it has, the US one like the others, and by the question what it is. */
export const word = ({ id, data }: { readonly id: string; readonly data: GlossaryData }): Entry => ({
  id: `word:${id}`,
  kind: 'word',
  title: data.term,
  path: `words/#${anchorOfWord(id)}`,
  says: data.means,
  asked: [`what is ${data.term}`, ...namesOf(data)],
  rule: data.rule?.id,
});

/** What these pages do not say, with who does, and the rules that come nearest. */
export const beyond = ({ id, data }: { readonly id: string; readonly data: BeyondData }): Entry => ({
  id: `beyond:${id}`,
  kind: 'beyond',
  title: data.title,
  path: `rules/${data.near[0]!.id}/`,
  says: data.says,
  asked: data.asked,
  rules: data.near.map((rule) => rule.id),
});

/** What comes before every caution, as short as it can be said in a row of answers. */
const rider = 'The machine’s or product’s manual, local rules and a qualified instructor come first.';

/** Each leads to its place on the page of all cautions. */
export const cautionEntries = cautionNames.map((name): Entry => {
  const { about, hazard, safeguard } = cautions[name];
  return {
    id: `caution:${name}`,
    kind: 'hazard',
    title: about[0]!.toUpperCase() + about.slice(1),
    path: `cautions/#${name}`,
    says: `${hazard} ${safeguard} ${rider}`,
  };
});

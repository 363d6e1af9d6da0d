/** Where each word of the glossary is used: looked up from the lessons and rules, never written down. */
import { finderOf, type Glossary } from './glossary.ts';

export interface Text {
  readonly id: string;
  readonly title: string;
  /** Everything it says. */
  readonly says: string;
  /** Words that it lists itself. */
  readonly lists?: readonly string[];
}

export interface Places {
  readonly lessons: readonly Text[];
  readonly rules: readonly Text[];
}

/** The words of an MDX text: without its tags and their attributes. */
export const proseOf = (body = '') =>
  body.replace(/<\/?[A-Za-z](?:"[^"]*"|'[^']*'|\{[^}]*\}|[^>"'{])*>/g, ' ').replace(/[*_`]/g, '');

interface Part {
  readonly id: string;
  readonly body?: string | undefined;
}

interface Lesson extends Part {
  readonly data: {
    readonly title: string;
    readonly question: string;
    readonly steps?:
      | readonly {
          readonly ask: string;
          /** Ids of the glossary. */
          readonly words?: readonly { readonly id: string }[];
        }[]
      | undefined;
  };
}
interface Rule extends Part {
  readonly data: {
    readonly title: string;
    readonly claim: string;
    readonly ignored: string;
    readonly exception: string;
  };
}

export const lessonText = ({ id, body, data: { title, question, steps = [] } }: Lesson): Text => ({
  id,
  title,
  says: [title, question, ...steps.map(({ ask }) => ask), proseOf(body)].join(' | '),
  lists: steps.flatMap(({ words = [] }) => words.map(({ id }) => id)),
});

export const ruleText = ({ id, body, data }: Rule): Text => ({
  id,
  title: data.title,
  says: [data.title, data.claim, data.ignored, data.exception, proseOf(body)].join(' | '),
});

export function placesOf(
  glossary: Glossary,
  lessons: readonly Text[],
  rules: readonly Text[],
): Readonly<Record<string, Places>> {
  const find = finderOf(glossary);
  const using = (texts: readonly Text[]) =>
    texts.map((text) => ({
      text,
      ids: new Set([...find(text.says).map(({ id }) => id), ...(text.lists ?? [])]),
    }));
  const [inLessons, inRules] = [using(lessons), using(rules)];
  const of = (all: typeof inRules, id: string) =>
    all.filter(({ ids }) => ids.has(id)).map(({ text }) => text);
  return Object.fromEntries(
    Object.keys(glossary).map((id) => [id, { lessons: of(inLessons, id), rules: of(inRules, id) }]),
  );
}

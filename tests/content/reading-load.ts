/**
 * How hard a text is to read: words, words in a sentence, and the grade by Flesch and Kincaid (syllables by dictionary and
 * rule). Counted is what a reader sees of the prose; tags, sums, numbers of figures and margins are left out.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { parse } from 'yaml';
import { taskFor } from '../../src/exercises/core/task.ts';
import { exercises } from '../../src/exercises/index.ts';

export interface Load {
  readonly words: number;
  readonly sentence: number;
  readonly grade: number;
}

const root = new URL('../../', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, root), 'utf8');

export function loadOf(prose: string): Load {
  const words = prose.match(/[\p{L}’'-]+/gu) ?? [];
  const sentence = prose.split(/[.!?:](?:\s|$)|\n\n/).filter((part) => /\p{L}/u.test(part)).length;
  const counts = {
    sentence,
    word: words.length,
    syllable: words.reduce((sum, word) => sum + syllable(word), 0),
  };
  return { words: counts.word, sentence: counts.word / sentence, grade: fleschKincaid(counts) };
}

/** The prose of a file of content: its head, tags and fold titles taken out, both native sizes counted as one. */
const proseOf = (text: string): string =>
  text
    .replace(/^---[\s\S]*?\n---\n/, '')
    .replace(/<(Size|Cite)[^>]*\/>/g, 'one')
    .replace(/<[^>]*>/g, ' ')
    .replace(/^#.*$/gm, ' ')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1');

/** The texts that stand in a page as such. What a list of content fills in belongs to that content. */
function proseOfPage(text: string): string {
  let body = text.replace(/^---[\s\S]*?\n---\n/, '').replace(/<(code|script|style)\b[\s\S]*?<\/\1>/g, 'one');
  // The innermost braces first, until none are left; `{' '}` is a space.
  for (let before = ''; before !== body; ) {
    before = body;
    body = body.replace(/\{[^{}]*\}/g, ' ');
  }
  return body
    .replace(/<\/(p|li|td|th|h1|h2|h3|dd|dt|summary)>/g, '. ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/([.!?:;])(\s*\.)+/g, '$1');
}

/** Every text in a piece of YAML that is a sentence. */
const sentencesIn = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? / .* .*[.?!]$/s.test(value)
      ? [value]
      : []
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(sentencesIn)
      : [];

/** What an exercise says to one learner: question, steps, and every slip. */
function proseOfExercise(of: (typeof exercises)[number]): string {
  const task = taskFor(of, { className: '7b', number: 1 }, 'mm');
  const slips = task.lines.flatMap(({ gives }) =>
    gives.type === 'number' ? gives.mistakes.map(({ says }) => says) : gives.options.map(({ says }) => says),
  );
  return [of.about, task.question, ...task.lines.map(({ does }) => does), ...slips, task.reason]
    .filter((text) => text !== undefined)
    .join('\n\n');
}

const files = (folder: string) => readdirSync(new URL(folder, root)).map((name) => `${folder}/${name}`);

/** Pages whose words stand in the page itself. */
const pages = [
  ...['class/index', 'class/cover', 'class/rubric', 'class/sign-off', 'class/materials', 'class/care-card'],
  ...['exercises/index', 'exercises/sheets', 'scratch', 'notebook/index', 'notebook/cards'],
];

/** Every text that is measured, by what it is called. */
export const texts: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  lessons: Object.fromEntries(files('content/lessons').map((path) => [path, proseOf(read(path))])),
  troubles: Object.fromEntries(
    files('content/troubles').map((path) => {
      const [, head = '', body = ''] = read(path).split(/^---\n/m);
      return [path, [...sentencesIn(parse(head)), proseOf(body)].join('\n\n')];
    }),
  ),
  'blocks of the course': Object.fromEntries(
    files('content/class/blocks').map((path) => [path, sentencesIn(parse(read(path))).join('\n\n')]),
  ),
  exercises: Object.fromEntries(exercises.map((one) => [`${one.id} ${one.title}`, proseOfExercise(one)])),
  pages: Object.fromEntries(pages.map((page) => [page, proseOfPage(read(`src/pages/${page}.astro`))])),
};

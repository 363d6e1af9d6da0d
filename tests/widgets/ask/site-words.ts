/** What the site answers from, read from the same files as the build does. */
import { readdirSync, readFileSync } from 'node:fs';
import { parse as parseYaml } from 'yaml';
import { allWoods } from '../../../src/box/wood/all-woods.ts';
import { woods } from '../../../src/box/wood/woods.ts';
import { type AskContent, askFileOf } from '../../../src/prose/ask-entries.ts';

const content = new URL('../../../content/', import.meta.url);
const heads = <Data>(folder: string) =>
  readdirSync(new URL(folder, content)).map((name) => ({
    id: name.replace(/\.mdx$/, ''),
    data: {
      cautions: [],
      ...(parseYaml(
        readFileSync(new URL(`${folder}/${name}`, content), 'utf8').split(/^---$/m)[1]!,
      ) as object),
    } as Data,
  }));
/** References are written as plain names. */
const table = (name: string) =>
  Object.entries(
    parseYaml(readFileSync(new URL(`words/${name}.yaml`, content), 'utf8')) as Record<
      string,
      Record<string, unknown>
    >,
  ).map(([id, data]) => ({
    id,
    data: {
      ...data,
      ...(data.rule ? { rule: { id: data.rule } } : {}),
      ...(data.rules ? { rules: (data.rules as string[]).map((rule) => ({ id: rule })) } : {}),
    },
  }));

const moving = new Set(woods.map(({ id }) => id));

export const askContent = {
  rules: heads('rules'),
  lessons: heads('lessons'),
  words: table('synonyms'),
  glossary: table('glossary'),
  symptoms: table('symptoms'),
  asked: table('asked'),
  stillWoods: allWoods.filter(({ id }) => !moving.has(id)).map(({ name }) => name),
} as unknown as AskContent;

export const askFile = askFileOf(askContent);

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
      ...(data.near ? { near: (data.near as string[]).map((rule) => ({ id: rule })) } : {}),
    },
  }));

type Written = { id: string; data: { rules?: string[]; lesson?: string; causes: { rule: string }[] } };
/** As the build has them, with what may be left out. */
const asReferences = ({ id, data }: Written) => ({
  id,
  data: {
    checks: [],
    results: [],
    ...data,
    causes: data.causes.map((one) => ({ ...one, rule: { id: one.rule } })),
    rules: (data.rules ?? []).map((rule) => ({ id: rule })),
    lesson: data.lesson && { id: data.lesson },
  },
});

const moving = new Set(woods.map(({ id }) => id));

export const askContent = {
  rules: heads('rules'),
  lessons: heads('lessons'),
  words: table('synonyms'),
  troubles: heads<Written['data']>('troubles').map(asReferences),
  glossary: table('glossary'),
  asked: table('asked'),
  beyond: table('beyond'),
  stillWoods: allWoods.filter(({ id }) => !moving.has(id)).map(({ name }) => name),
} as unknown as AskContent;

export const askFile = askFileOf(askContent);

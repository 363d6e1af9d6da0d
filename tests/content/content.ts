/** The content as files: head and body of every lesson and rule, and the tables in YAML. */
import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { RuleCaution } from '../../src/prose/cautions.ts';

const root = new URL('../../content/', import.meta.url);

export interface Page<Data> {
  readonly id: string;
  readonly data: Data;
  readonly body: string;
}

/** Every MDX file of a folder of content. */
const pagesOf = <Data>(folder: string): readonly Page<Data>[] =>
  readdirSync(new URL(`${folder}/`, root)).map((name) => {
    const [, head = '', ...rest] = readFileSync(new URL(`${folder}/${name}`, root), 'utf8').split(/^---\n/m);
    return { id: name.replace(/\.mdx$/, ''), data: parse(head) as Data, body: rest.join('---\n') };
  });

/** A table of content, by id. */
export const tableOf = <Row>(file: string): Readonly<Record<string, Row>> =>
  parse(readFileSync(new URL(file, root), 'utf8')) as Record<string, Row>;

/** Ids of the works in content/sources. */
export const sourceIds = readdirSync(new URL('sources/', root)).map((name) => name.replace(/\.yaml$/, ''));

/** Works that a text cites. */
export const citedIn = (body: string): readonly string[] =>
  [...body.matchAll(/<Cite\s+source="([^"]+)"/g)].map((match) => match[1]!);

export interface LessonHead {
  readonly title: string;
  readonly question: string;
  readonly rules: readonly string[];
  /** The sum in the scratch cell at its end. */
  readonly scratch: string;
  readonly steps: readonly {
    readonly id: string;
    readonly ask: string;
    readonly words?: readonly string[];
    readonly from?: readonly { readonly source: string }[];
  }[];
}
export interface RuleHead {
  readonly title: string;
  readonly claim: string;
  readonly ignored: string;
  readonly exception: string;
  readonly evidence: readonly string[];
  readonly lesson?: string;
  readonly relations?: readonly string[];
  readonly sources?: readonly string[];
  readonly cautions?: readonly RuleCaution[];
}
export interface WordRow {
  readonly term: string;
  readonly uk?: readonly string[];
  readonly also?: readonly string[];
  readonly means: string;
  readonly rule?: string;
  readonly see?: readonly string[];
  readonly found?: readonly string[];
}

export const lessons = pagesOf<LessonHead>('lessons');
export const rules = pagesOf<RuleHead>('rules');
export const glossary = tableOf<WordRow>('words/glossary.yaml');
export const troubles = pagesOf<Pick<RuleHead, 'title' | 'cautions'>>('troubles');

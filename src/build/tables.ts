/** Reads the published tables at build time. Never part of a page. */
import { readdirSync, readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import { parse } from 'yaml';
import { type Source, sourceSchema } from '../source-schema.ts';

const content = new URL('../../content/', import.meta.url);

/** One row of a table: every cell as text, by column name. Empty text where the table prints nothing. */
export type Row = Readonly<Record<string, string>>;

/** The rows of a table that a page brings along as text (`…csv?raw`): while pages are made, files have other places. */
export const rowsOf = (text: string): readonly Row[] => csvParse(text) as Row[];

/** The rows of `content/data/{name}.csv`. */
export const readTable = (name: string): readonly Row[] =>
  rowsOf(readFileSync(new URL(`data/${name}.csv`, content), 'utf8'));

/** Names of all tables. */
export const tableNames = (): readonly string[] =>
  readdirSync(new URL('data/', content)).map((file) => file.replace(/\.csv$/, ''));

/** All cited works; a file that does not fit the schema throws. */
export const readSources = (): readonly Source[] =>
  readdirSync(new URL('sources/', content)).map((file) =>
    sourceSchema.parse(parse(readFileSync(new URL(`sources/${file}`, content), 'utf8'))),
  );

/** Files that the tables are made from, for watching in development. */
export const tableFiles = (): readonly string[] =>
  ['data/', 'sources/'].flatMap((folder) =>
    readdirSync(new URL(folder, content)).map((file) => new URL(folder + file, content).pathname),
  );

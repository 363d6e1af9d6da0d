/**
 * The layers of the code in import order, lowest first, and what one import may do. A well-kept tool for this reads no
 * `.astro`, where a third of the imports stand; so these lines read them all.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { subjectNames } from '../../src/box/subjects/names.ts';

const numbers = ['units', 'geometry', 'calc', 'box'];
const screen = [...numbers, 'exercises', 'notebook', 'figures', 'widgets'];
/** Folders of `src`, each with those it may import; every folder may import itself. */
const below: Readonly<Record<string, readonly string[]>> = {
  units: [],
  geometry: ['units'],
  calc: ['geometry', 'units'],
  box: ['calc', 'geometry', 'units'],
  exercises: numbers,
  // Runs while the site is built, never in a browser.
  build: ['source-schema.ts', ...numbers],
  notebook: numbers,
  figures: numbers,
  widgets: ['styles', ...numbers, 'exercises', 'notebook', 'figures'],
  prose: ['build', ...screen],
  layouts: ['styles', 'build', 'prose', ...screen],
  pages: ['layouts', 'styles', 'build', 'prose', ...screen],
};

/** Parts that work without a page: no framework may be named in them. */
const withoutScreen = ['units', 'geometry', 'calc', 'box', 'exercises'];

/** Within a folder, from low to high: a file imports from its own place and from lower ones. */
const places: Readonly<Record<string, readonly RegExp[]>> = {
  calc: [/^core\//, /^\w+\//, /^index/],
  // Inputs are declared below everything that follows from them.
  box: [
    /^core\//,
    /^wood\//,
    /^subjects\/(\w+\/)?(inputs|names)\.ts/,
    /^subjects\/\w+\//,
    // The types of the whole come back to what makes models of it.
    /^(subjects\/[\w-]+\.ts|whole\/)/,
    /^design\//,
    /^stock\//,
    /^work\//,
  ],
  // One file an exercise, above what every exercise is made of.
  exercises: [/^core\//, /^tasks\//, /^index/],
  figures: [/^parts\//, /^plot\//, /^(?!(box|template|views)\/)\w+\//, /^box\//, /^(template|views)\//],
  widgets: [
    /^kit\//,
    /^(lesson|rule|verdicts)\//,
    /^(subjects|finder|woods|exercises|scratch|frame|home|my-box|ask)\//,
    /^(build-sheet|class)\//,
  ],
};

const source = new URL('../../src/', import.meta.url);
/** Every file of `src` with code, as a path from there. */
export const files = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => /\.(ts|tsx|mjs|js|astro|mdx)$/.test(name));
export const textOf = (file: string) => readFileSync(new URL(encodeURI(file), source), 'utf8');

/** What a file imports, as written: `from '…'`, `import '…'`, `import('…')`, also for types. */
export const importsOf = (text: string): string[] =>
  [...text.matchAll(/(?:\bfrom\s*|\bimport\s*\(?\s*)(['"])([^'"\n]+)\1/g)].map((match) => match[2]!);

/** The path from `src` of what a file imports. */
export const targetOf = (file: string, written: string) =>
  posix.join(posix.dirname(file), written.replace(/\?.*$/, ''));

/** The subject whose calculation stands in this file: `calc/S/…`, `box/subjects/S/…`. */
const subjectOf = (file: string): number => {
  const name = /^(?:calc|box\/subjects)\/(\w+)\//.exec(file)?.[1];
  return name === undefined || /\/inputs\.ts$/.test(file)
    ? -1
    : (subjectNames as readonly string[]).indexOf(name);
};

/** What is wrong with one import of one file, or undefined. Both are paths as a file of `src` writes them. */
export function fault(file: string, written: string): string | undefined {
  const [part = ''] = file.split('/');
  if (!written.startsWith('.')) {
    // The reader's own tables are read and written where they are kept.
    const reads = written === 'd3-dsv' && part === 'notebook';
    if (/^d3(-|$)/.test(written) && !reads && !['figures', 'build'].includes(part))
      return 'd3 belongs to figures, and to the build for reading tables';
    if (/^(preact|@preact|astro|@astrojs)\b/.test(written) && withoutScreen.includes(part))
      return `${part} knows no screen`;
    return undefined;
  }
  const to = targetOf(file, written);
  const [other = ''] = to.split('/');
  // The calculation gets its data from content/data; anything else outside src belongs to the page that shows it.
  if (other === '..') return to.startsWith('../content/') ? undefined : `${part} leaves src`;
  if (!file.includes('/')) return undefined;
  if (other !== part) return below[part]?.includes(other) ? undefined : `${part} may not import ${other}`;
  const place = (path: string) => places[part]?.findIndex((at) => at.test(path.slice(part.length + 1))) ?? 0;
  if (place(to) > place(file)) return 'imports go down, and this goes up';
  const [mine, theirs] = [subjectOf(file), subjectOf(to)];
  return mine >= 0 && theirs > mine
    ? `${subjectNames[mine]} comes before ${subjectNames[theirs]} in box/subjects/names.ts`
    : undefined;
}

/** The first ring of files that import one another, types aside; undefined where there is none. */
export function ring(imports: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
  const done = new Set<string>();
  const walk = (file: string, path: readonly string[]): readonly string[] | undefined => {
    const at = path.indexOf(file);
    if (at >= 0) return [...path.slice(at), file];
    if (done.has(file)) return undefined;
    for (const next of imports.get(file) ?? []) {
      const found = walk(next, [...path, file]);
      if (found) return found;
    }
    done.add(file);
    return undefined;
  };
  for (const file of imports.keys()) {
    const found = walk(file, []);
    if (found) return found;
  }
  return undefined;
}

/** What a file imports to run with: not its types, which are gone when it runs. */
export const runsWith = (text: string): string[] =>
  importsOf(text.replaceAll(/\b(?:import|export) type [^;]*;/g, ''));

/** The folders of `src` and who imports whom, as a Mermaid graph; what follows from another arrow is left out. */
export function picture(): string {
  const direct = (from: string) => below[from]!.filter((name) => name in below);
  const implied = (from: string) => new Set(direct(from).flatMap(direct));
  const lines = Object.keys(below).flatMap((from) =>
    direct(from)
      .filter((to) => !implied(from).has(to))
      .map((to) => `  ${from} --> ${to}`),
  );
  return ['```mermaid', 'graph TD', ...lines, '```'].join('\n');
}

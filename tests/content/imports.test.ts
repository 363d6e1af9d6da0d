/** The parts of the code and who may know whom: imports only go down, and files stay small. */
import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';

/** Each part with the parts below it that it may import; every part may import itself. */
const below: Record<string, readonly string[]> = {
  units: [],
  geometry: ['units'],
  calc: ['geometry', 'units'],
  box: ['calc', 'geometry', 'units'],
  // Runs while the site is built, never in a browser.
  build: ['source-schema.ts', 'box', 'calc', 'geometry', 'units'],
  notebook: ['box', 'calc', 'geometry', 'units'],
  figures: ['box', 'calc', 'geometry', 'units'],
  widgets: ['notebook', 'figures', 'box', 'calc', 'geometry', 'units'],
  prose: ['build', 'widgets', 'notebook', 'figures', 'box', 'calc', 'geometry', 'units'],
  layouts: ['styles', 'build', 'prose', 'widgets', 'notebook', 'figures', 'box', 'calc', 'geometry', 'units'],
  pages: [
    'layouts',
    'styles',
    'build',
    'prose',
    'widgets',
    'notebook',
    'figures',
    'box',
    'calc',
    'geometry',
    'units',
  ],
};
/** Parts that work without a page: no framework may be named in them. */
const withoutScreen = ['units', 'geometry', 'calc', 'box'];

const source = new URL('../../src/', import.meta.url);
const files = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => /\.(ts|tsx|mjs|js|astro|mdx)$/.test(name));
const textOf = (file: string) => readFileSync(new URL(encodeURI(file), source), 'utf8');

/** What a file imports, as written: `from '…'`, `import '…'`, `import('…')`, also for types. */
const importsOf = (text: string): string[] =>
  [...text.matchAll(/(?:\bfrom\s*|\bimport\s*\(?\s*)(['"])([^'"\n]+)\1/g)].map((match) => match[2]!);

/** What is wrong with one import of one file, or undefined. Both are paths as a file of src writes them. */
const fault = (file: string, target: string): string | undefined => {
  const part = file.split('/')[0]!;
  if (!target.startsWith('.')) {
    if (/^d3(-|$)/.test(target) && !['figures', 'build'].includes(part))
      return 'd3 belongs to figures, and to the build for reading tables';
    if (/^(preact|@preact|astro|@astrojs)\b/.test(target) && withoutScreen.includes(part))
      return `${part} knows no screen`;
    return undefined;
  }
  const to = posix.join(posix.dirname(file), target.replace(/\?.*$/, ''));
  const other = to.split('/')[0]!;
  // The calculation gets its data from content/data; anything else outside src belongs to the page that shows it.
  if (other === '..') return to.startsWith('../content/') ? undefined : `${part} leaves src`;
  if (!file.includes('/') || other === part) return undefined;
  return below[part]?.includes(other) ? undefined : `${part} may not import ${other}`;
};

describe('imports', () => {
  test('there is code to look at', () => expect(files.length).toBeGreaterThan(10));

  test.each(files)('%s imports only from its own part and the parts below', (file) => {
    const faults = importsOf(textOf(file)).flatMap((target) => {
      const reason = fault(file, target);
      return reason ? [`${target}: ${reason}`] : [];
    });
    expect(faults).toEqual([]);
  });

  test('an import that goes up, leaves its part, or brings a screen into the calculation is noticed', () => {
    expect(fault('calc/air.ts', '../box/box.ts')).toMatch('calc may not import box');
    expect(fault('figures/panel.tsx', '../notebook/current.ts')).toMatch('figures may not import notebook');
    expect(fault('widgets/slider.tsx', 'd3-scale')).toMatch('d3');
    expect(fault('units/length.ts', 'preact')).toMatch('no screen');
    expect(fault('calc/wood.ts', '../../tests/calc/air/air.test.ts')).toMatch('leaves src');
    expect(fault('box/box.ts', '../calc/air.ts')).toBeUndefined();
    expect(fault('calc/wood.ts', '../../content/data/wood.csv?raw')).toBeUndefined();
    expect(fault('pages/lessons/[id].astro', '../../layouts/Base.astro')).toBeUndefined();
  });

  test('imports are read however they are written', () => {
    const text = `import a, {\n  b,\n} from './a.ts';\nimport "./b.ts";\nawait import('./c.ts');\nexport * from './d.ts';`;
    expect(importsOf(text)).toEqual(['./a.ts', './b.ts', './c.ts', './d.ts']);
  });
});

describe('file length', () => {
  /** The first comment of a file: where a long one says why. */
  const header = (text: string) => /\/\*\*?[\s\S]*?\*\//.exec(text)?.[0] ?? '';

  test.each(files)('%s has at most 150 lines, or says in its header why it has over 150 lines', (file) => {
    const text = textOf(file);
    const lines = text.trimEnd().split('\n').length;
    if (lines > 150) expect(header(text), `${lines} lines`).toMatch(/150 lines/);
  });
});

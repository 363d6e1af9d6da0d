/**
 * Makes the site's font files from the font packages: only the characters and features that the pages use.
 * `npm run fonts` writes them to src/styles/fonts, from where they are committed. Every page loads the first of serif and sans;
 * the others are fetched where a sign of theirs is drawn: `src/styles/fonts.css` names their ranges once more.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import subsetFont from 'subset-font';

const { resolve } = createRequire(import.meta.url);
const folder = new URL('../src/styles/fonts/', import.meta.url);

const range = (/** @type {number} */ first, /** @type {number} */ last) =>
  Array.from({ length: last - first + 1 }, (_, index) => String.fromCodePoint(first + index)).join('');
const ascii = range(0x20, 0x7e);

/** Signs that a reader may type and next to no page prints. */
const rare = '#$@\\^`{|}';
/** Text and labels: US English, typographic marks, sizes, and two letters of names that several pages have. */
const text = `${[...ascii].filter((sign) => !rare.includes(sign)).join('')}\u00a0\u2009\u202f§°±²³·×¶–—‘’“”…′″−íö`;
/** Names of authors and what a reader may type: a file of its own, which only a page with such a sign fetches. */
const more = `${rare}¼½¾⁄´¹áäåçèéñóøúüÄÅÉÖÜß`;
/** Signs that the text faces lack; also in a file of their own. */
const signs = '←↑→↓⇒√∞≈≠≤≥△✓Δαβγδθλμνπρστφ';
const shifted = (/** @type {string} */ letters, /** @type {string} */ first, /** @type {number} */ to) =>
  [...letters]
    .map((letter) => String.fromCodePoint(letter.charCodeAt(0) - first.charCodeAt(0) + to))
    .join('');
const capitals = range(0x41, 0x5a);
const small = range(0x61, 0x7a);
/** Formulas: operators, upright words, and the slanted letters that MathML puts in the place of plain ones. */
const formulas = `%()+,./0123456789:;<=>[]|\u00a0\u2009\u202f°±·×−⋅≈≠≤≥√⌈⌉⌊⌋Δ${small}ACDEFLMNPRSTW${shifted(capitals, 'A', 0x1d434)}ℎ${shifted(small.replace('h', ''), 'a', 0x1d44e)}${shifted('αβγδεηθλμνπρστφω', 'α', 0x1d6fc)}`;

// Tabular and lining figures. Ligatures would cost 3 kB and kerning 5 in Literata and 2 in Source Sans: these faces are
// spaced so that text reads well without either, and headings are set a little closer (src/styles/base.css).
const keepFeatures = ['tnum', 'lnum'];
// The serif is for reading and has one weight: 7.7 kB, where two in one file are 13.5. What is heavy is set in the sans, both of
// whose weights in one file are smaller than a file for each.
const serifAxes = { wght: 400 };
const sansAxes = { wght: { min: 400, max: 600, default: 400 } };
// What only programs other than browsers read: names of styles, classes of glyphs.
const dropTables = ['STAT', 'GDEF'];
const serif = '@fontsource-variable/literata/files/literata-latin-wght-normal.woff2';
const sans = '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2';
const math = '@fontsource/noto-sans-math/files/noto-sans-math-latin-400-normal.woff2';

const fonts = {
  'notebook-serif': {
    from: serif,
    characters: text,
    options: { keepFeatures, dropTables, variationAxes: serifAxes },
  },
  'notebook-serif-more': {
    from: serif,
    characters: more,
    options: { keepFeatures, dropTables, variationAxes: serifAxes },
  },
  'notebook-sans': {
    from: sans,
    characters: text,
    options: { keepFeatures, dropTables, variationAxes: sansAxes },
  },
  'notebook-sans-more': {
    from: sans,
    characters: more,
    options: { keepFeatures, dropTables, variationAxes: sansAxes },
  },
  'notebook-signs': { from: math, characters: signs, options: { keepFeatures: [] } },
  // The MATH table, which stretches brackets and roots, stays in; ssty draws small letters for indices.
  'notebook-math': {
    from: math,
    characters: formulas,
    options: { keepFeatures: ['ccmp', 'ssty', 'dtls', 'math'] },
  },
};

/** The licence of each face must travel with it. */
const licences = [
  '@fontsource-variable/literata',
  '@fontsource-variable/source-sans-3',
  '@fontsource/noto-sans-math',
].map((name) => readFileSync(resolve(`${name}/LICENSE`), 'utf8').trim());

mkdirSync(folder, { recursive: true });
for (const [name, { from, characters, options }] of Object.entries(fonts)) {
  const font = await subsetFont(readFileSync(resolve(from)), characters, {
    targetFormat: 'woff2',
    noHinting: true,
    ...options,
  });
  writeFileSync(new URL(`${name}.woff2`, folder), font);
  console.log(`${name}.woff2  ${font.length} bytes`);
}
writeFileSync(new URL('LICENSE', folder), `${licences.join('\n\n----\n\n')}\n`);

/**
 * Makes the site's font files from the font packages: only the characters and features that the pages use.
 * `npm run fonts` writes them to src/styles/fonts, from where they are committed. A lesson loads all three: 50 kB at most.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import subsetFont from 'subset-font';

const { resolve } = createRequire(import.meta.url);
const folder = new URL('../src/styles/fonts/', import.meta.url);

const range = (/** @type {number} */ first, /** @type {number} */ last) =>
  Array.from({ length: last - first + 1 }, (_, index) => String.fromCodePoint(first + index)).join('');
const ascii = range(0x20, 0x7e);

/** Text and labels: US English, typographic marks, sizes, and the names in the list of sources. */
const text = `${ascii}\u00a0\u2009\u202f§°±²³·×¼½¾¶–—‘’“”…′″⁄−áäåçèéíñóöøúüÖß`;
/** Formulas: operators, Greek, and the slanted letters that MathML puts in the place of plain ones. */
const formulas = `%${range(0x28, 0x2b)},./0123456789:;<=>[]|{}${range(0x41, 0x5a)}${range(0x61, 0x7a)}\u00a0°±·×÷′″−⋅≈≠≤≥√∞∂∑∏→←↑↓⇒∝⌈⌉⌊⌋△✓\u2009\u202fπΔΣΦΩαβγδεηθλμνρστφω${range(0x1d434, 0x1d454)}ℎ${range(0x1d456, 0x1d467)}${[...'αβγδεηθλμνπρστφω'].map((letter) => String.fromCodePoint(letter.codePointAt(0) - 0x3b1 + 0x1d6fc)).join('')}`;

// Tabular and lining figures and built-up fractions. Ligatures would cost 3 kB, and these faces read well without.
const figures = ['tnum', 'lnum', 'frac', 'numr', 'dnom'];
const weights = { wght: { min: 400, max: 600, default: 400 } };

const fonts = {
  'notebook-serif': {
    from: '@fontsource-variable/literata/files/literata-latin-wght-normal.woff2',
    characters: text,
    options: { keepFeatures: [...figures, 'kern'], variationAxes: weights },
  },
  'notebook-sans': {
    from: '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2',
    characters: text,
    // Labels are short: kerning would cost 2 kB and is hardly seen.
    options: { keepFeatures: figures, variationAxes: weights },
  },
  'notebook-math': {
    from: '@fontsource/noto-sans-math/files/noto-sans-math-latin-400-normal.woff2',
    characters: formulas,
    // The MATH table, which stretches brackets and roots, stays in; ssty draws small letters for indices.
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

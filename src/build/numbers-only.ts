/**
 * Vite plugin: the browser's d3-scale carries only what numbers need. As published it brings every way to mix colors
 * and dates, and its own printing of numbers: 9 kB compressed, of which a map between two stretches of numbers takes
 * under 2. Here its `d3-interpolate` mixes numbers only, and its `d3-format` is missing, since
 * `format()` prints every number of this site: `scale.tickFormat()` throws. Only the client's build.
 */
import type { Plugin } from 'vite';

const prefix = '\0numbers-only:';
const instead: Record<string, string> = {
  // As d3's own interpolateNumber, which cannot be had without its colors: a test compares the two.
  'd3-interpolate': `const mix = (from, to) => (share) => from * (1 - share) + to * share;
    export { mix as interpolate, mix as interpolateNumber, mix as interpolateRound, mix as piecewise };`,
  'd3-format': `const missing = () => { throw new Error('numbers are printed by format() in src/units'); };
    export { ${['format', 'formatPrefix', 'formatSpecifier', 'precisionFixed', 'precisionPrefix', 'precisionRound'].map((name) => `missing as ${name}`).join(', ')} };`,
};

export function numbersOnly(): Plugin {
  return {
    name: 'numbers-only',
    enforce: 'pre',
    applyToEnvironment: ({ name }) => name === 'client',
    resolveId: (id, importer) =>
      id in instead && importer && /[\\/]d3-scale[\\/]/.test(importer) ? prefix + id : undefined,
    load: (id) => (id.startsWith(prefix) ? instead[id.slice(prefix.length)] : undefined),
  };
}

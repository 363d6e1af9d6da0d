/**
 * Vite plugin for files that are fetched late. A file that could not be fetched is asked for once more under another
 * address: browsers remember that a module failed and do not ask again for it while the page is open, so the same
 * `import()` would fail for ever, network or not. And nothing is fetched ahead of such a file, since what it imports is
 * there already; Vite's helper for that is a kilobyte on every page. Only the client's build.
 */
import type { Plugin } from 'vite';

const helper = '\0vite/preload-helper.js';

export const fetchedAgain = (): Plugin => ({
  name: 'fetched-again',
  enforce: 'pre',
  applyToEnvironment: ({ name }) => name === 'client',
  load: (id) => (id === helper ? 'export const __vitePreload = (load) => load();' : undefined),
  renderChunk: (code) => ({
    code: code.replaceAll(
      /\bimport\(\s*([`'"])(\.{1,2}\/[^`'"]+)\1\s*\)/g,
      (first, _, file) => `${first}.catch(()=>import("${file}?again="+Date.now()))`,
    ),
    map: null,
  }),
});

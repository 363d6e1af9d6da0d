/**
 * Vite plugin: a file that is fetched late, and could not be, is asked for once more under another address. Browsers
 * remember that a module failed and do not ask again for it while the page is open, so the same `import()` would fail
 * for ever, network or not. Only the client's build.
 */
import type { Plugin } from 'vite';

export const fetchedAgain = (): Plugin => ({
  name: 'fetched-again',
  applyToEnvironment: ({ name }) => name === 'client',
  renderChunk: (code) => {
    const asked = /\bimport\(\s*([`'"])(\.{1,2}\/[^`'"]+)\1\s*\)/g;
    return asked.test(code)
      ? {
          code: code.replaceAll(
            asked,
            (first, _, file) => `${first}.catch(()=>import("${file}?again="+Date.now()))`,
          ),
          map: null,
        }
      : null;
  },
});

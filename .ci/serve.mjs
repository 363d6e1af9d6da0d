/**
 * Serves the built site for tests and measurements: `node .ci/serve.mjs PORT [FOLDER] [BASE]`.
 * Unlike `astro preview` it can run beside a site that is already being served from here.
 */
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';

const [port, folder = 'dist', base = '/'] = process.argv.slice(2);

const server = await preview({
  configFile: false,
  root: fileURLToPath(new URL('..', import.meta.url)),
  base,
  // Several pages: an address without a file is an error, not the front page.
  appType: 'mpa',
  build: { outDir: folder },
  preview: { host: '127.0.0.1', port: Number(port), strictPort: true },
});
server.printUrls();

/** Tests of the built site in a real browser. Build first: `npm run test:site` does both. */
import './virtual-woods.ts';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { findBrowser, flags } from '../.ci/find-browser.mjs';
import { freePort } from './free-port.ts';

// Kept in the environment, because every worker reads this file again.
process.env.SITE_PORT ??= String(await freePort());
process.env.CHROMIUM_PATH ??= await findBrowser();
const url = `http://127.0.0.1:${process.env.SITE_PORT}/`;

export default defineConfig({
  testDir: 'site',
  testMatch: '**/*.test.ts',
  outputDir: 'results/site',
  fullyParallel: true,
  forbidOnly: true,
  workers: '100%',
  // What a page does in time is measured elsewhere; here a slow machine that is busy with other work gets its time.
  timeout: 90_000,
  expect: { timeout: 20_000 },
  // One more try tells a fault from a machine that was starved for a moment; what needed it is named at the end of the run.
  retries: 1,
  reporter: [['list'], ['json', { outputFile: 'results/site.json' }]],
  use: {
    baseURL: url,
    // Pages are tested as they come from the server; the offline test asks for the service worker.
    serviceWorkers: 'block',
    launchOptions: { executablePath: process.env.CHROMIUM_PATH, args: flags },
  },
  webServer: {
    command: `node .ci/serve.mjs ${process.env.SITE_PORT}`,
    cwd: fileURLToPath(new URL('..', import.meta.url)),
    url,
    reuseExistingServer: false,
  },
});

/**
 * The main paths in three engines. Build first: `npm run test:engines` does both; `-- --project=webkit` takes one engine.
 * An engine that cannot be had is named, and has no tests.
 */
import '../virtual-woods.ts';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { engines, findBrowser } from '../../.ci/find-browser.mjs';
import { freePort } from '../free-port.ts';
import type { Engine, EngineOptions } from './path.ts';

// Kept in the environment, because every worker reads this file again.
process.env.SITE_PORT ??= String(await freePort());
const url = `http://127.0.0.1:${process.env.SITE_PORT}/`;

const projects: { name: string; use: EngineOptions }[] = [];
for (const engine of Object.keys(engines) as Engine[]) {
  const { variable } = engines[engine];
  try {
    // Nothing: looked for before, and not found.
    if (process.env[variable] === '') continue;
    const program = await findBrowser({ engine });
    process.env[variable] = program;
    projects.push({ name: engine, use: { engine, program } });
  } catch (error) {
    // What all other browser tests need as well.
    if (engine === 'chromium') throw error;
    process.env[variable] = '';
    console.error(`NOT TRIED: ${(error as Error).message}`);
  }
}

export default defineConfig<object, EngineOptions>({
  testMatch: '**/*.test.ts',
  outputDir: '../results/engines',
  forbidOnly: true,
  // Each engine walks its paths one after the other, in one browser.
  workers: 2,
  timeout: 90_000,
  expect: { timeout: 20_000 },
  retries: 1,
  reporter: [['list'], ['json', { outputFile: '../results/engines.json' }]],
  projects,
  webServer: {
    command: `node .ci/serve.mjs ${process.env.SITE_PORT}`,
    cwd: fileURLToPath(new URL('../..', import.meta.url)),
    url,
    reuseExistingServer: false,
  },
});

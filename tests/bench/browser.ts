/** A served copy of the built site and a Chromium to open it in, for measurements. */
import { spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from '@playwright/test';
import { findBrowser, flags } from '../../.ci/find-browser.mjs';

const freePort = () =>
  new Promise<number>((resolve) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });

/** Serves `dist`, opens a browser, calls `use` with both, and ends both whatever happens. */
export async function withSite(use: (browser: Browser, base: string) => Promise<void>): Promise<void> {
  const port = await freePort();
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const server = spawn(process.execPath, ['.ci/serve.mjs', String(port)], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const browser = await chromium.launch({ executablePath: await findBrowser(), args: flags });
  try {
    await new Promise((resolve, reject) => {
      server.stdout.once('data', resolve);
      server.once('exit', () => reject(new Error('the site could not be served')));
    });
    await use(browser, `http://127.0.0.1:${port}/`);
  } finally {
    await browser.close();
    server.kill();
  }
}

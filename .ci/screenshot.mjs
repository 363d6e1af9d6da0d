/** Takes the picture in the README from the built site: the first lesson after its guess. `npm run screenshot` */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { findBrowser, flags } from './find-browser.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const port = process.env.SITE_PORT ?? '4399';
const server = spawn(process.execPath, ['.ci/serve.mjs', port], {
  cwd: root,
  stdio: ['ignore', 'pipe', 'inherit'],
});
const browser = await chromium.launch({ executablePath: await findBrowser(), args: flags });
try {
  await Promise.race([
    once(server.stdout, 'data'),
    once(server, 'exit').then(() => Promise.reject(new Error(`port ${port} is taken: set SITE_PORT`))),
  ]);
  const page = await browser.newPage({
    viewport: { width: 1200, height: 900 },
    serviceWorkers: 'block',
    locale: 'en-US',
  });
  await page.goto(`http://127.0.0.1:${port}/lessons/proportion/`);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
  await page.getByRole('button', { name: /^skip/ }).first().click();
  // The figure with a little of the page above it.
  await page
    .locator('.lab')
    .first()
    .evaluate((lab) => window.scrollTo(0, lab.getBoundingClientRect().top + window.scrollY - 60));
  await page.waitForTimeout(500);
  await page.screenshot({ path: `${root}public/screenshot.png` });
} finally {
  await browser.close();
  server.kill();
}

/** Takes the picture in the README from the built site: the front page with a guess and its truth. `npm run screenshot` */
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
  // Faces are optional: the second visit has them.
  const address = `http://127.0.0.1:${port}/`;
  await page.goto(address);
  await page.waitForLoadState('networkidle');
  await page.goto(address);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
  const guess = page.locator('.guess-card');
  await guess.getByRole('textbox').fill('1/8');
  await guess.getByRole('textbox').press('Enter');
  await guess.getByRole('slider').waitFor();
  // Past the drawing of the truth, and without a ring around the answer.
  await page.evaluate(() => document.activeElement?.blur());
  await page.waitForTimeout(1200);
  await page.screenshot({ path: `${root}public/screenshot.png` });
} finally {
  await browser.close();
  server.kill();
}

/**
 * A new version is published while pages of the old one are open: two builds, served one after the other from one
 * address. The second is the first with every hashed file renamed and one sentence more on the front page.
 */
import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { writeServiceWorker } from '../../src/build/offline.ts';
import { dist, open } from './site.ts';

test.use({ serviceWorkers: 'allow', locale: 'en-GB' });

const news = 'This is the second version.';
const lesson = 'lessons/groove-margins/';

/** A second build beside the first, with none of its scripts and styles under the same name. */
async function secondBuild(folder: string): Promise<void> {
  cpSync(dist, folder, { recursive: true });
  const hashed = readdirSync(join(folder, '_astro')).filter((name) => /\.(js|css)$/.test(name));
  const renamed = (name: string) => name.replace(/\.(js|css)$/, '-2.$1');
  for (const name of hashed) renameSync(join(folder, '_astro', name), join(folder, '_astro', renamed(name)));
  const all = new RegExp(
    [...hashed]
      .sort((a, b) => b.length - a.length)
      .map((name) => name.replace(/[.\\$()[\]+*?^|{}]/g, '\\$&'))
      .join('|'),
    'g',
  );
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }))
    if (/\.(html|js|css)$/.test(name)) {
      const path = join(folder, name);
      writeFileSync(path, readFileSync(path, 'utf8').replace(all, renamed));
    }
  const front = join(folder, 'index.html');
  writeFileSync(front, readFileSync(front, 'utf8').replace('</h1>', `</h1><p>${news}</p>`));
  await writeServiceWorker(`${folder}/`);
}

const types: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript',
  css: 'text/css',
  json: 'application/json',
  svg: 'image/svg+xml',
  woff2: 'font/woff2',
};

/** Serves whichever folder is the published one at the moment. */
async function host() {
  let published = dist;
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '', 'http://host');
    const path = join(published, pathname.endsWith('/') ? `${pathname}index.html` : pathname);
    try {
      const body = readFileSync(path);
      response.setHeader('content-type', types[path.split('.').at(-1)!] ?? 'application/octet-stream');
      response.end(body);
    } catch {
      response.statusCode = 404;
      response.end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    publish(folder: string) {
      published = folder;
    },
    close() {
      server.closeAllConnections();
      server.close();
    },
  };
}

const controlled = (page: Page) =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller)
      await new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve));
  });

/** Names of the files the browser keeps for use without a network. */
const kept = (page: Page) =>
  page.evaluate(async () => {
    const all = await Promise.all(
      (await caches.keys()).map(async (name) =>
        (await (await caches.open(name)).keys()).map(({ url }) => url),
      ),
    );
    return all.flat();
  });

test('pages of the old version go on, with their late parts, until all are closed; then the new one is there, also without a network', async ({
  browser,
}) => {
  test.setTimeout(120_000);
  const folder = mkdtempSync(join(tmpdir(), 'second-'));
  const site = await host();
  const context = await browser.newContext({
    baseURL: site.address,
    serviceWorkers: 'allow',
    locale: 'en-GB',
  });
  try {
    const first = await context.newPage();
    await first.goto('');
    await controlled(first);
    const troubles = await open(first, lesson);

    await secondBuild(folder);
    site.publish(folder);
    // What the browser does by itself from time to time.
    await first.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      await registration?.update();
      while (!registration?.waiting) await new Promise((resolve) => setTimeout(resolve, 50));
    });
    // The old files are gone from the server.
    const old = readdirSync(join(dist, '_astro')).find((name) => name.endsWith('.js'))!;
    const answer = await context.request.get(`${site.address}_astro/${old}`);
    expect(answer.status()).toBe(404);

    // The open page fetches what it had not fetched yet: the reason of a number, the reading of a text.
    await first.getByRole('button', { name: 'skip, show me' }).first().click();
    const lab = first.locator('.lab').first();
    await lab.locator('details.result summary').first().click();
    await expect(lab.locator('.reason').first()).toContainText('Evidence');
    const field = lab.getByRole('textbox').first();
    await field.fill('1/2 in');
    await field.press('Enter');
    await expect(field).toHaveValue('12.7');

    // So does the next page of the same visit, in this tab and in another.
    const second = await context.newPage();
    for (const page of [first, second]) {
      troubles.push(...(await open(page, 'my-box/')));
      await page.goto('');
      await expect(page.getByText(news)).toHaveCount(0);
    }
    expect(troubles).toEqual([]);

    await first.close();
    await second.close();
    const next = await context.newPage();
    await expect(async () => {
      await next.goto('');
      await expect(next.getByText(news)).toBeVisible({ timeout: 500 });
      await next.goto('about:blank');
    }).toPass({ timeout: 20_000 });
    await next.goto('');
    await expect
      .poll(async () => (await kept(next)).filter((url) => url.endsWith(`/${old}`)), { timeout: 20_000 })
      .toEqual([]);
    await context.setOffline(true);
    const later = await open(next, lesson);
    await expect(next.locator('h1')).toBeVisible();
    expect(later).toEqual([]);
  } finally {
    await context.close();
    site.close();
    rmSync(folder, { recursive: true, force: true });
  }
});

test('a late part that cannot be fetched says so beside its field, and the text stays', async ({ page }) => {
  test.setTimeout(60_000);
  await open(page, lesson);
  await page.getByRole('button', { name: 'skip, show me' }).first().click();
  const lab = page.locator('.lab').first();
  // No service worker has taken this page yet in a new visit, and the files are gone.
  await page.context().setOffline(true);
  await page.route('**/*', (route) => route.abort());
  await lab.locator('details.result summary').first().click();
  await expect(lab.getByText('could not be fetched')).toBeVisible();
  const field = lab.getByRole('textbox').first();
  await field.fill('1/2 in');
  await field.press('Enter');
  await expect(lab.getByText('Your text stays here')).toBeVisible();
  await expect(field).toHaveValue('1/2 in');
});

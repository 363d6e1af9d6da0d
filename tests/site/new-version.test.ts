/**
 * A new version is published while pages of the old one are open: two builds, served one after the other from one
 * address. The second is the first with every hashed script, style and file of words renamed and one sentence more on
 * every page.
 * Over 150 lines: one visit across two builds, with the host that serves them.
 */
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { writeServiceWorker } from '../../src/build/offline.ts';
import { dist, open } from './site.ts';

test.use({ serviceWorkers: 'allow', locale: 'en-GB' });

const news = 'This is the second version.';
const lesson = 'lessons/where-the-groove-shows/';

/** Scripts, styles and words: what a page must get from its own version. */
const ofOneVersion = /^(_astro\/.*\.(js|css)|relations-.*\.json)$/;
const filesOf = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => name.replaceAll('\\', '/'));
const renamed = (name: string) => name.replace(/\.(\w+)$/, '-2.$1');

/** A second build beside the first, with none of these files under the same name. */
async function secondBuild(folder: string): Promise<void> {
  cpSync(dist, folder, { recursive: true });
  const files = filesOf(folder);
  const hashed = files.filter((name) => ofOneVersion.test(name));
  for (const name of hashed) renameSync(join(folder, name), join(folder, renamed(name)));
  const names = new RegExp(
    hashed.map((name) => name.replace('_astro/', '').replaceAll('.', '\\.')).join('|'),
    'g',
  );
  for (const name of filesOf(folder).filter((name) => /\.(html|js|css)$/.test(name))) {
    const path = join(folder, name);
    const text = readFileSync(path, 'utf8').replace(names, renamed);
    writeFileSync(path, text.replace('</h1>', `</h1><p>${news}</p>`));
  }
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

/** Serves whichever folder is the published one at the moment; some paths may come from the version before. */
async function host() {
  let published = dist;
  let late: readonly string[] = [];
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '', 'http://host');
    const path = join(
      late.includes(pathname) ? dist : published,
      pathname.endsWith('/') ? `${pathname}index.html` : pathname,
    );
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
    publish(folder: string, butNotYet: readonly string[] = []) {
      published = folder;
      late = butNotYet;
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

/** Lets the browser look for a new version, as it does by itself from time to time. @returns what became of its worker */
const lookForNews = (page: Page) =>
  page.evaluate(async () => {
    const registration = (await navigator.serviceWorker.getRegistration())!;
    await registration.update();
    const worker = registration.installing ?? registration.waiting!;
    while (worker.state === 'installing') await new Promise((resolve) => setTimeout(resolve, 50));
    return worker.state;
  });

/** The version of an open page: by its words, and by the scripts it came with. */
async function versionOf(page: Page): Promise<1 | 2> {
  const scripts = await page
    .locator('astro-island')
    .evaluateAll((islands) => islands.map((island) => island.getAttribute('component-url')!));
  const version = (await page.getByText(news).count()) > 0 ? 2 : 1;
  expect(
    scripts.map((url) => url.endsWith('-2.js')),
    'words and scripts of one version',
  ).toEqual(scripts.map(() => version === 2));
  return version;
}

/** Takes the steps of a lesson that need a file fetched late: the reason of a number, the reading of a text. */
async function useLateParts(page: Page): Promise<void> {
  const lab = page.locator('.lab').last();
  await lab.locator('details.result summary').first().click();
  await expect(lab.locator('.reason').first()).toContainText('Evidence');
  const field = lab.getByRole('textbox').first();
  await field.fill('1/2 in');
  await field.press('Enter');
  await expect(field).toHaveValue('12.7');
}

test('pages of the old version go on, with their late parts, until all are closed; then the new one is there, also without a network', async ({
  browser,
}) => {
  test.setTimeout(180_000);
  const folder = mkdtempSync(join(tmpdir(), 'second-'));
  const site = await host();
  const visit = { baseURL: site.address, serviceWorkers: 'allow', locale: 'en-GB' } as const;
  const context = await browser.newContext(visit);
  const passing = await browser.newContext({ ...visit, serviceWorkers: 'block' });
  try {
    const first = await context.newPage();
    await first.goto('');
    await controlled(first);
    const troubles = await open(first, lesson);
    const second = await context.newPage();
    troubles.push(...(await open(second, 'my-box/')));
    // A visit without a worker: a browser that has none, or one that leaves before its files are kept.
    const third = await passing.newPage();
    await open(third, lesson);
    await secondBuild(folder);

    await test.step('a version that is not there in full yet is not taken', async () => {
      site.publish(folder, ['/sources/index.html']);
      expect(await lookForNews(first)).toBe('redundant');
    });
    await test.step('a version that is there waits', async () => {
      site.publish(folder);
      expect(await lookForNews(first)).toBe('installed');
      for (const name of filesOf(dist).filter((name) => ofOneVersion.test(name)))
        expect(existsSync(join(folder, name)), `${name} is gone from the server`).toBe(false);
    });
    await test.step('it is offered, but not taken while other pages are open', async () => {
      const notice = first.locator('#new-version');
      await expect(notice).toBeVisible();
      await notice.getByRole('button', { name: 'use it now' }).click();
      await expect(notice).toContainText('Close the other pages');
      expect(await versionOf(first)).toBe(1);
    });
    await test.step('what was not fetched yet comes to the open pages', async () => {
      await useLateParts(first);
      await second.locator('#drawings > summary').click();
      const save = second.getByRole('button', { name: 'save the drawings as SVG' }).first();
      const [file] = await Promise.all([second.waitForEvent('download'), save.click()]);
      expect(file.suggestedFilename()).toMatch(/\.svg$/);
    });
    await test.step('reloading and going on stay with the old version in every tab', async () => {
      for (const page of [first, second]) {
        await page.reload();
        expect(await versionOf(page)).toBe(1);
      }
      troubles.push(...(await open(first, 'build-sheet/')), ...(await open(second, '')));
      await expect(first.locator('svg.qr')).toBeVisible();
      for (const page of [first, second]) expect(await versionOf(page)).toBe(1);
      expect(troubles).toEqual([]);
    });
    await test.step('a page fetched past the worker is the new version in every part', async () => {
      const past = await context.newPage();
      const session = await context.newCDPSession(past);
      await session.send('Network.enable');
      await session.send('Network.setBypassServiceWorker', { bypass: true });
      const met = await open(past, lesson);
      expect(await versionOf(past)).toBe(2);
      await useLateParts(past);
      expect(met).toEqual([]);
      await past.close();
      await first.reload();
      expect(await versionOf(first)).toBe(1);
    });
    await test.step('a page without a worker says what is gone, and is the new version after a reload', async () => {
      const lab = third.locator('.lab').last();
      await lab.locator('details.result summary').first().click();
      await expect(lab.locator('.reason').first()).toContainText('could not be fetched');
      const field = lab.getByRole('textbox').first();
      await field.fill('1/2 in');
      await field.press('Enter');
      await expect(lab.getByText('Your text stays here')).toBeVisible();
      await third.evaluate(() => localStorage.clear());
      await open(third, lesson);
      expect(await versionOf(third)).toBe(2);
      await useLateParts(third);
    });

    const next = await test.step('the next visit after all are closed is the new version', async () => {
      await first.close();
      await second.close();
      const page = await context.newPage();
      // The old worker goes when the browser has noticed that no page needs it.
      await expect(async () => {
        await page.goto('');
        const version = await versionOf(page);
        await page.goto('about:blank');
        expect(version).toBe(2);
      }).toPass({ timeout: 20_000 });
      await page.goto('');
      return page;
    });
    await test.step('nothing of the old version is kept', async () => {
      const old = filesOf(dist).filter((name) => ofOneVersion.test(name));
      const keptOf = async () => (await kept(next)).map((url) => decodeURI(new URL(url).pathname).slice(1));
      await expect.poll(async () => (await keptOf()).filter((name) => old.includes(name))).toEqual([]);
      expect(await keptOf()).toEqual(expect.arrayContaining(old.map(renamed)));
    });
    await test.step('a page alone takes the next version when its reader says so, and goes on where it was', async () => {
      for (const [published, version] of [
        [dist, 1],
        [folder, 2],
      ] as const) {
        await open(next, lesson);
        site.publish(published);
        expect(await lookForNews(next)).toBe('installed');
        const loaded = next.waitForEvent('load');
        await next.locator('#new-version').getByRole('button', { name: 'use it now' }).click();
        await loaded;
        expect(await versionOf(next)).toBe(version);
        expect(new URL(next.url()).pathname).toBe(`/${lesson}`);
      }
    });
    await test.step('without a network the new version is whole', async () => {
      await context.setOffline(true);
      await next.evaluate(() => localStorage.clear());
      const met = await open(next, lesson);
      expect(await versionOf(next)).toBe(2);
      await useLateParts(next);
      expect(met).toEqual([]);
    });
  } finally {
    await context.close();
    await passing.close();
    site.close();
    rmSync(folder, { recursive: true, force: true });
  }
});

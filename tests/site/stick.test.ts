/** The stick: the whole site as one zip, opened by a double click, and served by the script beside it. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { inflateRawSync } from 'node:zlib';
import { expect, type Page, test } from '@playwright/test';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = join(root, 'tests/results/stick');
const zip = join(folder, 'stick.zip');
const site = join(folder, 'unpacked/rule-and-reason/');

test.describe.configure({ mode: 'serial' });
test.use({ viewport: { width: 1024, height: 768 }, locale: 'en-GB' });

/** Unpacks a zip by its own directory, as PKWARE's note says it is read: signature, then sizes and the place of each file. */
function unpack(bytes: Buffer, into: string): number {
  const end = bytes.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'));
  const count = bytes.readUInt16LE(end + 10);
  let at = bytes.readUInt32LE(end + 16);
  for (let file = 0; file < count; file++) {
    const [packed, nameLength] = [bytes.readUInt32LE(at + 20), bytes.readUInt16LE(at + 28)];
    const start = bytes.readUInt32LE(at + 42);
    const name = bytes.toString('utf8', at + 46, at + 46 + nameLength);
    const data = start + 30 + bytes.readUInt16LE(start + 26) + bytes.readUInt16LE(start + 28);
    const path = join(into, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, inflateRawSync(bytes.subarray(data, data + packed)));
    at += 46 + nameLength + bytes.readUInt16LE(at + 30) + bytes.readUInt16LE(at + 32);
  }
  return count;
}

test.beforeAll(() => {
  test.setTimeout(300_000);
  rmSync(folder, { recursive: true, force: true });
  const made = spawnSync(process.execPath, ['.ci/stick.mjs', zip], { cwd: root, encoding: 'utf8' });
  expect(made.status, made.stderr).toBe(0);
  expect(unpack(readFileSync(zip), join(folder, 'unpacked'))).toBeGreaterThan(200);
});

/** What goes wrong on a page, in a line each. */
function troublesOf(page: Page): string[] {
  const troubles: string[] = [];
  page.on('console', (message) => message.type() === 'error' && troubles.push(message.text()));
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('requestfailed', (request) => troubles.push(request.url()));
  return troubles;
}

const awake = (page: Page) =>
  page.waitForFunction(
    () => !document.querySelector('astro-island[ssr]:not([client=visible], [client=touch])'),
  );

/** Changes the wall on my box, and follows links, as a reader would. */
async function use(page: Page, at: string): Promise<void> {
  await page.goto(`${at}index.html`);
  await awake(page);
  await page.getByRole('navigation', { name: 'Doors' }).getByRole('link', { name: 'my box' }).click();
  await expect(page).toHaveURL(/my-box\/(index\.html)?(#.*)?$/);
  await awake(page);
  await page.goto(`${at}my-box/index.html#walls`);
  await awake(page);
  const wall = page.getByRole('textbox', { name: /^wall thickness/ });
  await wall.fill('11');
  await wall.press('Enter');
  await expect(page.getByRole('slider', { name: /^wall thickness/ })).toHaveAttribute(
    'aria-valuetext',
    '11 millimeters',
  );
  // Reckoned by the worker.
  await expect(page.locator('.part div.band-says').first()).toBeVisible();
  // Kept from page to page.
  await page.goto(`${at}rules/wall-thickness/index.html`);
  await expect(page.locator('.answer-number').first()).toHaveText(/11\smm/, { useInnerText: true });
  // Fetched late: what is typed, reasons, and the answers to questions.
  await page.keyboard.press('/');
  await page.locator('dialog input').fill('the lid sticks');
  await expect(page.getByRole('link', { name: /The lid sticks/ }).first()).toBeVisible();
}

test('opened from a file without a network, pages wake, links lead on, and numbers are worked out', async ({
  page,
  context,
}) => {
  test.setTimeout(60_000);
  await context.setOffline(true);
  const troubles = troublesOf(page);
  await use(page, pathToFileURL(site).href);
  await page.goto(pathToFileURL(`${site}class/index.html`).href);
  await expect(page.locator('.ready')).toContainText('these pages come from a folder that has all of them');
  // A link that a script has drawn names a folder: it leads to its page all the same.
  await page.evaluate(() => {
    const link = document.createElement('a');
    link.href = new URL('../rules/twist/', location.href).href;
    link.textContent = 'drawn later';
    document.querySelector('main')!.append(link);
  });
  await page.getByText('drawn later').click();
  await expect(page.locator('h1')).toHaveText('Flat on a flat plate');
  expect(await page.evaluate(() => document.fonts.check('1rem "Notebook Serif"'))).toBe(true);
  // A cell at the end of a lesson wakes when it is used, and its worker works.
  await page.goto(pathToFileURL(`${site}lessons/proportion/index.html`).href);
  await page.locator('.own-sum > summary').click();
  const sum = page.getByRole('combobox', { name: 'a sum of this lesson' });
  await sum.focus();
  await expect(page.locator('.own-sum .cell-result')).not.toBeEmpty();
  await sum.fill('2 in to mm');
  await sum.press('Enter');
  await expect(page.locator('.own-sum .cell-result')).toContainText('50.8');
  expect(troubles).toEqual([]);
});

test('served by the script beside it, it does the same, and is ready for no network', async ({ browser }) => {
  test.setTimeout(90_000);
  const port = Number(process.env.SITE_PORT) + 2;
  expect(existsSync(`${site}READ-ME.txt`)).toBe(true);
  const server = spawn(process.execPath, ['serve.mjs', String(port)], { cwd: site });
  const context = await browser.newContext({ serviceWorkers: 'allow', locale: 'en-GB' });
  try {
    await once(server.stdout, 'data');
    const page = await context.newPage();
    const troubles = troublesOf(page);
    await use(page, `http://localhost:${port}/`);
    await page.goto(`http://localhost:${port}/class/`);
    await expect(page.locator('.ready')).toContainText(/^Ready for no network: all \d+ files/, {
      timeout: 60_000,
    });
    expect(troubles).toEqual([]);
    const outside = await fetch(`http://localhost:${port}/..%2f..%2fstick.zip`);
    expect(outside.status).toBe(404);
  } finally {
    await context.close();
    server.kill();
  }
});

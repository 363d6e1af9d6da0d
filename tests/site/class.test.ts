/** The pages for a class: on paper, for so many learners, and in a room without a network. */
import { existsSync, readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { readPdf } from './pdf.ts';
import { chooseUnits, dist, linkTo, numberField, open, pages } from './site.ts';

const blocks = pages.filter((path) => /^class\/\d/.test(path));
const formats = ['A4', 'Letter'] as const;

test('the course has eight blocks, each of which prints on one page in black, white and gray, A4 and Letter', async ({
  page,
}) => {
  test.setTimeout(120_000);
  expect(blocks).toHaveLength(8);
  const long: string[] = [];
  for (const path of blocks) {
    await open(page, path);
    await page.evaluate(() => document.fonts.ready);
    for (const format of formats) {
      const sheets = await readPdf(await page.pdf({ format }));
      if (sheets.length !== 1) long.push(`${path} ${format}: ${sheets.length}`);
      for (const color of sheets[0]!.colors) expect(color, path).toMatch(/^#(..)\1\1$/);
      expect(sheets[0]!.text, path).toContain('qualified');
    }
  }
  expect(long).toEqual([]);
});

test('rubric, sign-off, materials and care card print on one page each, with no button', async ({ page }) => {
  for (const path of ['rubric', 'sign-off', 'materials', 'care-card']) {
    await open(page, `class/${path}/`);
    for (const format of formats) {
      const sheets = await readPdf(await page.pdf({ format }));
      expect(sheets.length, `${path} ${format}`).toBe(1);
      expect(sheets[0]!.text).not.toMatch(/print this list|Rubric as CSV|lessons\s+rules\s+woods/);
    }
  }
});

test('the key of the cover lesson begins on a sheet of its own', async ({ page }) => {
  await open(page, 'class/cover/');
  const sheets = await readPdf(await page.pdf({ format: 'A4' }));
  const key = sheets.findIndex(({ text }) => /Key\s+Quiz: 1[a-d]/.test(text));
  expect(key).toBeGreaterThan(0);
  for (const { text } of sheets.slice(0, key)) expect(text).not.toContain('Accept what is within');
});

test('the footer of every page and the page of lessons lead there', async ({ page }) => {
  await open(page, 'lessons/');
  for (const part of ['main', 'footer'])
    await expect(page.locator(part).getByRole('link', { name: /^For a class$/ })).toHaveAttribute(
      'href',
      /\/class\/$/,
    );
});

test.describe('materials', () => {
  test.use({ locale: 'en-GB' });

  test('are those of the reader’s box, in meters or in feet, and follow the number of learners', async ({
    page,
  }) => {
    await open(page, 'class/materials/');
    const says = page.locator('.materials .says');
    // By hand in tests/box/stock/class-stock.test.ts: 15 boxes, 8 boards of 900 mm.
    await expect(says).toHaveText(
      /^8 boards, 7\.2\sm together, for 15 boxes: 12 learners and 3 to spare\.$/,
      {
        useInnerText: true,
      },
    );
    const learners = numberField(page, 'learners');
    await learners.fill('10');
    await learners.press('Enter');
    await expect(says).toContainText('12 boxes: 10 learners and 2 to spare');
    // In inches the example is another box, from boards of 36 in: whole feet.
    await chooseUnits(page, 'inch');
    await expect(says).toHaveText(/^\d+ boards, \d+\sft together/, { useInnerText: true });
  });

  test('may be those of a box kept on the device', async ({ page }) => {
    await open(page, linkTo('my-box/', { name: 'Tea box', boardLength: 1800 }));
    await page.getByRole('button', { name: 'my boxes', exact: true }).click();
    await page.getByRole('button', { name: 'keep', exact: false }).first().click();
    await open(page, linkTo('class/materials/', { name: 'Another' }));
    await page.getByLabel('everybody makes').selectOption({ label: 'Tea box' });
    await expect(page.locator('.materials h2')).toHaveText('Tea box');
  });
});

test('the rubric comes as a file with a column for each level', () => {
  const [head, ...rows] = readFileSync(`${dist}class/rubric.csv`, 'utf8').split('\n');
  expect(head).toBe('item,how it is measured,4 points,3 points,2 points,1 points,measured,points given');
  expect(rows.length).toBeGreaterThanOrEqual(10);
  expect(rows.join('\n')).toContain('reasons, spoken');
});

test('the sign-off says that it signs nobody off, and every line of it is blank', async ({ page }) => {
  await open(page, 'class/sign-off/');
  await expect(page.locator('main')).toContainText('signs nobody off');
  await expect(page.locator('main :is(input, button)')).toHaveCount(0);
  for (const text of await page.locator('td').allTextContents()) expect(text).toBe('');
});

test.describe('a room without a network, on the screen of an old tablet', () => {
  test.use({ serviceWorkers: 'allow', viewport: { width: 1024, height: 768 } });

  const line = (page: Page) => page.locator('.ready [role=status]');
  const ready = /^Ready for no network: all \d+ files are on this device\.$/;

  test('one line says that all is on the device, and then every page for a class opens', async ({
    page,
    context,
  }) => {
    test.setTimeout(90_000);
    await page.goto('class/');
    await expect(line(page)).toHaveText(ready, { timeout: 60_000 });
    await context.setOffline(true);
    for (const path of pages.filter((path) => path.startsWith('class/'))) {
      await page.goto(path);
      await expect(page.locator('h1'), path).toHaveCount(1);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth),
        `${path} fits the screen`,
      ).toBeLessThanOrEqual(1024);
    }
    await page.goto('class/');
    await expect(line(page)).toHaveText(ready);
  });

  test('says how much is missing, and the button fetches it, so that the page opens without a network', async ({
    page,
    context,
  }) => {
    test.setTimeout(90_000);
    await page.goto('class/');
    await expect(line(page)).toHaveText(ready, { timeout: 60_000 });
    await page.evaluate(async () => {
      const cache = await caches.open((await caches.keys())[0]!);
      for (const request of await cache.keys())
        if (/lessons\/(proportion|wood-movement)\//.test(request.url)) await cache.delete(request);
    });
    await page.reload();
    await expect(line(page)).toHaveText(/^Not ready: (\d+) of (\d+) files are on this device\.$/);
    const [some, all] = (await line(page).textContent())!.match(/\d+/g)!.map(Number);
    expect(all! - some!).toBe(2);
    await page.getByRole('button', { name: 'fetch the rest' }).click();
    await expect(line(page)).toHaveText(ready);
    await context.setOffline(true);
    await page.goto('lessons/proportion/');
    await expect(page.locator('h1')).toBeVisible();
  });
});

test('the list of what is kept is kept too, and names every page', () => {
  expect(existsSync(`${dist}kept.json`)).toBe(true);
  const list = new Set(
    (JSON.parse(readFileSync(`${dist}kept.json`, 'utf8')) as [string][]).map(([url]) => url),
  );
  for (const path of pages)
    expect([...list], path).toContain(path === '' || path.endsWith('/') ? `${path}index.html` : path);
  expect(readFileSync(`${dist}service-worker.js`, 'utf8')).toContain('kept.json');
});

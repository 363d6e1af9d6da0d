/** What holds for every page of the built site. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, type Page, test } from '@playwright/test';
import type axe from 'axe-core';
import { htmlOf, isBuilt, lessons, open, pages } from './site.ts';

const axeScript = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const phone = { width: 390, height: 844 };

/** Everything that axe-core finds on the page, in one line each. */
async function findings(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeScript);
  const { violations } = await page.evaluate(() =>
    (window as unknown as { axe: typeof axe }).axe.run(document, { resultTypes: ['violations'] }),
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.html}`),
  );
}

/** Elements that stick out of the window to the right, unless an own scroll area holds them. */
const tooWide = (page: Page) =>
  page.evaluate(() => {
    const root = document.documentElement;
    if (root.scrollWidth <= root.clientWidth) return [];
    return [...document.body.querySelectorAll('*')]
      .filter((element) => element.getBoundingClientRect().right > root.clientWidth + 0.5)
      .map((element) => `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`);
  });

/** Every text of the page, hidden or not, also the attributes that are read aloud. */
const words = (page: Page) =>
  page.evaluate(() => {
    const body = document.body.cloneNode(true) as HTMLElement;
    for (const code of body.querySelectorAll('script, style, template')) code.remove();
    const spoken = ['aria-label', 'aria-valuetext', 'title', 'alt', 'value', 'placeholder'];
    const attributes = [...body.querySelectorAll('*')].flatMap((element) =>
      spoken.map((name) => element.getAttribute(name) ?? ''),
    );
    return [document.title, body.textContent, ...attributes].join('\n');
  });

test('there is a page to test, and a lesson if there is any lesson file', () => {
  expect(pages).toContain('');
  // A list of lessons without a lesson behind it would leave the tests below without their subject.
  if (pages.includes('lessons/')) expect(lessons.length).toBeGreaterThan(0);
});

for (const path of pages) {
  test.describe(`/${path}`, () => {
    test('loads without an error, names itself and has one main heading', async ({ page }) => {
      const troubles = await open(page, path);
      expect(troubles.filter((text) => !(path === '404.html' && text.endsWith('404')))).toEqual([]);
      expect(await page.title()).toMatch(/\S.{3,}/);
      expect(await page.getAttribute('html', 'lang')).toMatch(/^en/);
      expect(await page.locator('h1').count()).toBe(1);
      expect((await page.getAttribute('meta[name=description]', 'content')) ?? '').not.toBe('');
    });

    test('has no accessibility finding in light, in dark and on a phone, and fits the phone', async ({
      page,
    }) => {
      await open(page, path);
      expect(await findings(page), 'light').toEqual([]);
      await page.emulateMedia({ colorScheme: 'dark' });
      expect(await findings(page), 'dark').toEqual([]);
      await page.setViewportSize(phone);
      expect(await findings(page), 'dark, phone').toEqual([]);
      await page.emulateMedia({ colorScheme: 'light' });
      expect(await findings(page), 'light, phone').toEqual([]);
      expect(await tooWide(page), 'wider than 390 px').toEqual([]);
    });

    test('shows no number or word that a fault has left behind', async ({ page }) => {
      await open(page, path);
      expect(await words(page)).not.toMatch(
        /\b(NaN|undefined|null|Infinity|TODO|FIXME|lorem ipsum)\b|\[object /,
      );
    });

    test('tells its text without JavaScript too', async ({ browser, baseURL }) => {
      const context = await browser.newContext({ javaScriptEnabled: false, baseURL });
      const page = await context.newPage();
      await page.goto(path);
      await expect(page.locator('main h1')).toBeVisible();
      // biome-ignore lint/performance/useDomNodeTextContent: text that style hides does not count here
      expect((await page.locator('main').innerText()).length).toBeGreaterThan(30);
      await context.close();
    });

    test('links only to pages, places and files that exist', async ({ page, baseURL }) => {
      await open(page, path);
      const targets = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('[href], [src]')].map(
          (element) =>
            new URL(element.getAttribute('href') ?? element.getAttribute('src') ?? '', document.baseURI).href,
        ),
      );
      const dead = [...new Set(targets)].filter((target) => {
        if (!target.startsWith(baseURL!)) return !/^(https?|mailto|data|blob):/.test(target);
        const { pathname, hash } = new URL(target);
        const to = decodeURI(pathname.slice(1));
        if (!isBuilt(to)) return true;
        // "#main" must be there; a longer fragment, as in "#box=…", is read by the page itself.
        return (
          hash.length > 1 && !hash.includes('=') && !htmlOf(to).includes(`id="${decodeURI(hash.slice(1))}"`)
        );
      });
      expect(dead).toEqual([]);
    });
  });
}

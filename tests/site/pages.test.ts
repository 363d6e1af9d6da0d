/** What holds for every page of the built site: several checks on one load, each in words of its own. */
import { expect } from '@playwright/test';
import { isAccessible } from './every-page/accessible.ts';
import { faces } from './every-page/faces.ts';
import { fieldsNameTheirUnits } from './every-page/units-of-fields.ts';
import { test } from './every-page/visit.ts';
import { deadLinks, words } from './every-page/words.ts';
import { everyKind, lessons, pages } from './site.ts';

test('there is a page to test, and a lesson if there is any lesson file', () => {
  expect(pages).toContain('');
  // A list of lessons without a lesson behind it would leave the tests below without their subject.
  if (pages.includes('lessons/')) expect(lessons.length).toBeGreaterThan(0);
});

for (const path of pages) {
  test.describe(`/${path}`, () => {
    // One worker, in this order: what a check opens or switches is open and switched for the next one.
    test.describe.configure({ mode: 'default' });

    test('loads without an error, names itself and has one main heading', async ({ visit }) => {
      const { page, troubles } = await visit(path);
      expect(troubles.filter((text) => !(path === '404.html' && text.endsWith('404')))).toEqual([]);
      expect(await page.title()).toMatch(/\S.{3,}/);
      expect(await page.getAttribute('html', 'lang')).toMatch(/^en/);
      expect(await page.locator('h1').count()).toBe(1);
      expect((await page.getAttribute('meta[name=description]', 'content')) ?? '').not.toBe('');
    });

    test('shows no number or word that a fault has left behind', async ({ visit }) => {
      const { page } = await visit(path);
      expect(await words(page)).not.toMatch(
        /\b(NaN|undefined|null|Infinity|TODO|FIXME|lorem ipsum)\b|\[object /,
      );
    });

    test('links only to pages, places and files that exist', async ({ visit, baseURL }) => {
      const { page } = await visit(path);
      expect(await deadLinks(page, baseURL!)).toEqual([]);
    });

    test('tells its text without JavaScript too', async ({ quiet }) => {
      await quiet.goto(path);
      await expect(quiet.locator('main h1')).toBeVisible();
      // biome-ignore lint/performance/useDomNodeTextContent: text that style hides does not count here
      expect((await quiet.locator('main').innerText()).length).toBeGreaterThan(30);
    });

    test('has no accessibility finding in light, in dark and on a phone, and fits the phone', async ({
      visit,
    }) => {
      await isAccessible((await visit(path)).page);
    });

    if (everyKind.includes(path))
      test('names the unit of every number field as the reader has chosen it', async ({ visit }) => {
        const { page } = await visit(path);
        await page.setViewportSize({ width: 1280, height: 720 });
        await fieldsNameTheirUnits(page);
      });

    test('is drawn with the faces of the site alone, down to the last sign', async ({ visit }) => {
      const { own, strange } = await faces((await visit(path)).page);
      expect(own).toContain('Literata');
      expect(strange).toEqual([]);
    });
  });
}

/**
 * At 400 % zoom a window of 1280 x 1024 px is 320 x 256 px wide and high (WCAG 2.2, 1.4.10): nothing scrolls sideways but
 * wide tables within themselves, and the tab key reaches every control in sight, marked, under nothing that stays (2.4.11).
 */
import { expect, test } from '@playwright/test';
import { open, pages } from './site.ts';
import { tabThrough } from './tab-through.ts';

test.use({ locale: 'en-US', viewport: { width: 320, height: 256 }, reducedMotion: 'reduce' });

const block = pages.find((path) => /^class\/\d/.test(path))!;
const walked = [
  'exercises/',
  'exercises/e5/',
  'exercises/sheets/',
  'class/',
  block,
  'class/materials/',
  'class/rubric/',
  'class/sign-off/',
  'class/cover/',
  'scratch/',
  'notebook/',
  'notebook/cards/',
  'lessons/wood-movement/',
  'lessons/joint-spacing/',
];

for (const path of walked)
  test(`/${path} at 400 %: no scrolling sideways, every control in sight under the focus`, async ({
    page,
  }) => {
    test.setTimeout(120_000);
    await open(page, path);
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll<HTMLDetailsElement>('main details')) fold.open = true;
    });
    const { met, faults } = await tabThrough(page);
    expect(faults).toEqual([]);
    expect(met).toBeGreaterThan(10);
    expect(met, 'the focus leaves the page at its end').toBeLessThan(400);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });

test('a lesson on a phone: what has the focus stands above the bar with the place in it', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await page.setViewportSize({ width: 390, height: 700 });
  await open(page, 'lessons/wood-movement/');
  await expect(page.locator('.place-bar')).toBeVisible();
  const { met, faults } = await tabThrough(page);
  expect(faults).toEqual([]);
  expect(met).toBeGreaterThan(30);
});

test('a figure on the wall at 400 %: it is read by scrolling down, and left by keyboard', async ({
  page,
}) => {
  await open(page, 'lessons/wood-movement/#wall=lid-august');
  await expect(page.locator('.on-wall')).toBeVisible();
  await expect(page.getByRole('navigation', { name: 'Wall' })).toBeFocused();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  const { met, faults } = await tabThrough(page);
  expect(faults).toEqual([]);
  expect(met).toBeGreaterThan(3);
  await page.getByRole('navigation', { name: 'Wall' }).focus();
  await page.keyboard.press('PageDown');
  await expect(page.locator('.on-wall .guess-answer')).toContainText('it jams');
  await page.keyboard.press('Escape');
  await expect(page.locator('.on-wall')).toHaveCount(0);
});

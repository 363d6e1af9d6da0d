/** The list of lessons, and the reader's place in it. */
import { expect, type Page, test } from '@playwright/test';
import { lessons, open } from './site.ts';

test.use({ locale: 'en-GB' });

const lesson = 'wood-movement';
const item = (page: Page) => page.locator(`.lesson-list li:has(a[href$="/lessons/${lesson}/"])`);

test('every lesson stands in the list once, with its number, its question and its drawing', async ({
  page,
}) => {
  await open(page, 'lessons/');
  const items = page.locator('.lesson-list > li');
  await expect(items).toHaveCount(lessons.length);
  await expect(items.locator('svg.small-drawing')).toHaveCount(lessons.length);
  expect(await items.locator('.order').allTextContents()).toEqual(lessons.map((_, i) => String(i + 1)));
  for (const text of await items.locator('div > p:first-of-type').allTextContents())
    expect(text).toMatch(/\?$/);
});

test('what is done and skipped in a lesson is hatched in the list, and the way leads to the next question', async ({
  page,
}) => {
  await open(page, 'lessons/');
  const go = page.locator('.go-on');
  await expect(go).toContainText('Begin with lesson 1');
  const number = await item(page).locator('.order').textContent();
  await expect(item(page).locator('.steps-done')).toHaveText(/^\d questions$/);
  await expect(item(page).locator('.done, .skipped')).toHaveCount(0);

  await open(page, `lessons/${lesson}/`);
  const first = page.locator('.lesson-step').first();
  await first.getByRole('textbox').fill('1');
  await first.getByRole('textbox').press('Enter');
  await expect(first.locator('.guess-answer')).toBeVisible();
  const second = page.locator('.lesson-step').nth(1);
  await second.getByRole('button', { name: 'just show me' }).click();
  await expect(second.locator('.guess-answer')).toBeVisible();
  const third = await page.locator('.lesson-step').nth(2).locator('h2').first().textContent();

  await page.goto('/lessons/');
  await expect(item(page).locator('.done')).toHaveCount(1);
  await expect(item(page).locator('.skipped')).toHaveCount(1);
  await expect(item(page).locator('.steps-done')).toHaveText(/^2 of \d$/);
  await expect(go).toContainText(`Go on with lesson ${number}, question 3`);
  await expect(go).toContainText(third!);
  await page.reload();
  await expect(go).toContainText(`Go on with lesson ${number}, question 3`);
  await go.click();
  await expect(page.locator('.lesson-step').nth(2).locator('h2').first()).toBeInViewport();

  await page.goto('/');
  const way = page.locator('.doors .way').first();
  await expect(way).toHaveText(`Go on: lesson ${number}, question 3`);
  await way.getByRole('link').press('Enter');
  await expect(page).toHaveURL(new RegExp(`/lessons/${lesson}/#`));
});

test('without JavaScript the list is whole, and no box claims to be done', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false, baseURL });
  const page = await context.newPage();
  await page.goto('lessons/');
  await expect(page.locator('.lesson-list > li')).toHaveCount(lessons.length);
  await expect(page.locator('.done, .skipped')).toHaveCount(0);
  const first = await page.locator('.lesson-list > li a').first().getAttribute('href');
  await expect(page.locator('.go-on')).toHaveAttribute('href', new RegExp(`${first}(#|$)`));
  await context.close();
});

/** The words of a lesson: a link to their meaning, and a note beside the word where the browser knows how. */
import { expect, test } from '@playwright/test';
import { htmlOf, lessons, open } from './site.ts';

const lesson = 'lessons/joint-spacing/';

test('each lesson marks a word once, and leads to its meaning on the page of words', () => {
  const page = htmlOf('words/');
  for (const path of lessons) {
    const words = [...htmlOf(path).matchAll(/<a class="word"[^>]* data-word="([^"]+)"/g)].map(
      ([, id]) => id!,
    );
    expect(words.length, path).toBeGreaterThan(2);
    expect(new Set(words).size, path).toBe(words.length);
    for (const id of words) {
      expect(page, `${path}: ${id}`).toContain(`id="word-${id}"`);
      expect(htmlOf(path), `${path}: ${id}`).toContain(`id="meaning-${id}"`);
    }
  }
});

test('a press on a word opens its meaning inside the window, and Escape leads back to it', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, lesson);
  const word = page.locator('a.word:visible').first();
  const note = page.locator(`#meaning-${await word.getAttribute('data-word')}`);
  await expect(note).toBeHidden();
  await word.focus();
  await page.keyboard.press('Enter');
  await expect(note).toBeVisible();
  await expect(note).toBeFocused();
  const { x, width } = (await note.boundingBox())!;
  expect(x).toBeGreaterThanOrEqual(0);
  expect(x + width).toBeLessThanOrEqual(390);
  await page.keyboard.press('Escape');
  await expect(note).toBeHidden();
  await expect(word).toBeFocused();
  expect(page.url()).not.toContain('words');
});

test('without JavaScript a word leads to the page of words', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(baseURL + lesson);
  await page.locator('a.word:visible').first().click();
  await expect(page).toHaveURL(/words\/#word-/);
  await context.close();
});

test('on paper nothing of a meaning is left over, and the page of words has its words and no places', async ({
  page,
}) => {
  await open(page, lesson);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.meaning').first()).toBeHidden();
  await open(page, 'words/');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('#word-kerf dd').first()).toBeVisible();
  await expect(page.locator('.word-places').first()).toBeHidden();
});

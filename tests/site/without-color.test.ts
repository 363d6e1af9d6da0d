/** Without color, be it a gray screen or a reader's own high contrast: right, wrong, and what was guessed are told by words or shape. */
import { expect, test } from '@playwright/test';
import { open } from './site.ts';

test.use({ locale: 'en-GB', forcedColors: 'active' });

test('an answer to an exercise says in words whether it is right', async ({ page }) => {
  await open(page, 'exercises/e1/?class=7b&n=12&u=mm');
  const asked = page.locator('.own-task .asked').first();
  await asked.locator('input').fill('1');
  await asked.getByRole('button', { name: 'check' }).click();
  await expect(asked.getByRole('status')).toContainText(/\w{3}/);
  await expect(asked.getByRole('status')).not.toContainText('Right');
});

test('a guess says what was guessed, and draws it as a dashed line, not only in another color', async ({
  page,
}) => {
  await open(page, 'lessons/wood-movement/');
  const card = page.locator('[data-guess=lid-august]');
  await card.getByRole('textbox', { name: /^your mark/ }).fill('2');
  await card.getByRole('textbox', { name: /^your mark/ }).press('Enter');
  await expect(card.locator('.guess-answer')).toContainText('You said 2');
  const dashes = await card
    .locator('.ghost')
    .first()
    .evaluate((line) => getComputedStyle(line).strokeDasharray);
  expect(dashes).not.toBe('none');
});

test('an answer to a question from earlier says Right or No', async ({ page }) => {
  await open(page, 'lessons/joint-spacing/');
  const fold = page.locator('.recalls');
  await fold.locator('> summary').click();
  await fold.getByRole('radio').first().check();
  await fold.getByRole('button', { name: 'check' }).click();
  await expect(fold.locator('.ask-in-turn [role=status]')).toContainText(/^(Right|No)\./);
});

test('a sum that went wrong says what to type, and is marked as wrong for who hears', async ({ page }) => {
  await open(page, 'scratch/');
  const field = page.getByRole('combobox', { name: 'cell 1' });
  await field.fill('1 in + 1 kg');
  await field.press('Enter');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(page.locator('.cell-result').first()).toContainText(/\w+ \w+/);
});

test('in forced colors the focus is marked', async ({ page }) => {
  await open(page, 'exercises/');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  const outline = await page.evaluate(() => getComputedStyle(document.activeElement!).outlineStyle);
  expect(outline).not.toBe('none');
});

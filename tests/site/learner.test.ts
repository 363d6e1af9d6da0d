/**
 * A learner's lesson by keyboard alone: from the questions at its head to the link at its end, with the tab key, arrows,
 * Enter and typed numbers, and never back.
 */
import { expect, type Page, test } from '@playwright/test';
import { askedOf, taskFor } from '../../src/exercises/core/task.ts';
import { keyText } from '../../src/exercises/core/written.ts';
import { byId } from '../exercises/seeds.ts';
import { open } from './site.ts';

test.use({ locale: 'en-GB', viewport: { width: 1024, height: 768 } });

/** Goes on with the tab key until the focus is on what is wanted. */
async function tabTo(page: Page, wanted: string, within = 150): Promise<void> {
  for (let pressed = 0; pressed < within; pressed++) {
    if (await page.evaluate((selector) => document.activeElement?.matches(selector), wanted)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no way to ${wanted} by keyboard`);
}
const hasFocus = (page: Page, wanted: string) =>
  expect
    .poll(() => page.evaluate((selector) => document.activeElement?.matches(selector), wanted))
    .toBe(true);

test('questions, guesses, a control, the box, an exercise of one’s own, a sum, and on to the next lesson', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const troubles = await open(page, 'lessons/joint-spacing/');

  await test.step('the questions at the head', async () => {
    await tabTo(page, '.recalls > summary');
    await page.keyboard.press('Enter');
    await expect(page.locator('.recalls').getByRole('button', { name: 'check' })).toBeVisible();
    for (const next of ['next question', 'next question', 'done']) {
      await tabTo(page, '.recalls input[type=radio]');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('Enter');
      await expect(page.locator('.ask-in-turn [role=status]')).toContainText(/Right\.|No\./);
      await expect(page.locator('.recalls').getByRole('button', { name: next })).toBeFocused();
      await page.keyboard.press('Enter');
    }
  });

  const cards = page.locator('.guess-card');
  const count = await cards.count();
  expect(count).toBeGreaterThan(2);
  await test.step('the first guess, by its mark', async () => {
    const card = cards.first();
    await tabTo(page, '.guess-card .mark-handle');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowDown');
    await tabTo(page, '.guess-card button[type=submit]');
    await page.keyboard.press('Enter');
    await expect(card.locator('.guess-answer')).toContainText('You said');
    await hasFocus(page, '.guess-answer');
  });

  await test.step('a control moves its figure, and its numbers go into my box', async () => {
    await tabTo(page, '.lab input[type=range]');
    const heard = () => page.evaluate(() => document.activeElement?.getAttribute('aria-valuetext'));
    const before = await heard();
    await page.keyboard.press('ArrowRight');
    await expect.poll(heard).not.toBe(before);
  });

  await test.step('every other guess', async () => {
    for (let at = 1; at < count; at++) {
      const card = cards.nth(at);
      await tabTo(page, '.guess-card :is(input[type=radio], input[type=text]):not([data-state=open] *)');
      const kind = await page.evaluate(() => (document.activeElement as HTMLInputElement).type);
      if (kind === 'radio') await page.keyboard.press('ArrowDown');
      else await page.keyboard.type('2');
      await page.keyboard.press('Enter');
      await expect(card.locator('.guess-answer')).toBeVisible();
      await hasFocus(page, '.guess-answer');
    }
  });

  await test.step('the numbers of the lesson go into the box', async () => {
    const put = page.locator('.pinned').getByRole('button', { name: 'put these in my box' });
    for (let pressed = 0; pressed < 150; pressed++) {
      if ((await page.evaluate(() => document.activeElement?.textContent)) === 'put these in my box') break;
      await page.keyboard.press('Tab');
    }
    await expect(put.and(page.locator(':focus'))).toHaveCount(1);
    await page.keyboard.press('Enter');
    await hasFocus(page, '.pinned');
    await expect.poll(() => page.evaluate(() => localStorage.getItem('rule-and-reason.box'))).not.toBeNull();
  });

  await test.step('an exercise with numbers of one’s own, and back', async () => {
    const learner = { className: '7b', number: 12 };
    await tabTo(page, '.new-numbers a[href*="exercises/e3/"], a[href$="/exercises/e3/"]');
    await page.keyboard.press('Enter');
    await expect(page).toHaveURL(/exercises\/e3\//);
    await tabTo(page, '[name=class]');
    await page.keyboard.type('7b');
    await tabTo(page, '[name=n]');
    await page.keyboard.type('12');
    await page.keyboard.press('Enter');
    const asked = page.locator('.own-task .asked');
    const keys = askedOf(taskFor(byId('e3'), learner, 'mm')).map(({ gives }) => keyText(gives, 'mm'));
    await expect(asked).toHaveCount(keys.length);
    for (const [at, key] of keys.entries()) {
      await tabTo(page, '.own-task .asked input[type=text]');
      await page.keyboard.type(key.replace(/,.*/, ''));
      await page.keyboard.press('Enter');
      await expect(asked.nth(at)).toContainText('Right.');
      await page.keyboard.press('Tab');
    }
    await page.goBack();
    await expect(page.locator('h1')).toBeVisible();
  });

  await test.step('a sum at the end, and the next lesson', async () => {
    await tabTo(page, '.own-sum > summary', 400);
    await page.keyboard.press('Enter');
    await tabTo(page, '.own-sum input');
    const sum = page.getByRole('combobox', { name: 'a sum of this lesson' });
    await expect(page.locator('.own-sum .cell-result')).not.toBeEmpty();
    await page.keyboard.press('Control+a');
    await page.keyboard.type('3 * 8 mm to mm');
    await page.keyboard.press('Enter');
    await expect(page.locator('.own-sum .cell-result')).toContainText('24 mm', { useInnerText: true });
    await expect(sum).toBeFocused();
    await tabTo(page, '.next a');
    await page.keyboard.press('Enter');
    await expect(page).not.toHaveURL(/joint-spacing/);
    await expect(page).toHaveURL(/lessons\//);
  });
  expect(troubles).toEqual([]);
});

/** What is done before a page is awake is not lost, and focus stays with the reader. */
import { expect, type Page, test } from '@playwright/test';
import { linkTo, open } from './site.ts';

test.use({ locale: 'en-GB' });

/** Holds the page's scripts back until they are let go. */
async function asleep(page: Page, path: string): Promise<() => void> {
  let wake = () => {};
  const awake = new Promise<void>((resolve) => {
    wake = resolve;
  });
  await page.route('**/_astro/*.js', async (route) => {
    await awake;
    await route.continue();
  });
  await page.goto(path, { waitUntil: 'commit' });
  await page.locator('main h1').waitFor();
  return wake;
}

test('a number typed before the page is awake is taken over', async ({ page }) => {
  const wake = await asleep(page, 'my-box/');
  const wall = page.getByRole('textbox', { name: /^wall thickness/ });
  await wall.fill('11');
  await wall.press('Tab');
  wake();
  await expect(page.getByRole('slider', { name: /^wall thickness/ })).toHaveAttribute(
    'aria-valuetext',
    '11 millimeters',
  );
  await expect(wall).toHaveValue('11');
});

test('a guess chosen and given before the page is awake is taken over', async ({ page }) => {
  const wake = await asleep(page, 'lessons/proportion/');
  const guess = page.locator('.guess').first();
  await guess.getByRole('radio').nth(1).check();
  await guess.getByRole('button', { name: 'this is my guess' }).click();
  wake();
  await expect(guess).toContainText('Right.');
});

test('the answer of a guess gets the focus and is announced; to guess again leads back to the field and covers again', async ({
  page,
}) => {
  await open(page, 'lessons/proportion/');
  const guess = page.locator('.guess').first();
  await guess.getByRole('radio').nth(1).check();
  await guess.getByRole('button', { name: 'this is my guess' }).click();
  await expect(guess.locator('.guess-answer')).toBeFocused();
  await expect(guess.locator('.guess-answer')).toHaveRole('status');
  await guess.getByRole('button', { name: 'guess again' }).click();
  await expect(guess.getByRole('radio').first()).toBeFocused();
  await expect(guess.locator('svg').first()).toBeHidden();
});

test('mending what cannot be built leads on to what is left, of which only the heading is announced', async ({
  page,
}) => {
  await open(page, linkTo('my-box/', { grooveDepth: 15, fingerWidth: 25 }));
  const heading = page.locator('.refusals h2');
  await expect(heading).toHaveRole('status');
  expect((await heading.textContent())!.length).toBeLessThan(80);
  expect(await page.locator('.refusals[role=status], .refusals ul[role]').count()).toBe(0);
  // All texts at once: the row may be gone between a look whether it is there and a look at what it says.
  const first = async () => (await page.locator('.refusals li').allTextContents())[0] ?? '';
  const before = await first();
  expect(before).not.toBe('');
  await page.getByRole('button', { name: 'fix it' }).first().click();
  await expect.poll(first).not.toBe(before);
  if ((await heading.count()) > 0) await expect(heading).toBeFocused();
});

test('paper keeps a guess covered until it is given', async ({ page }) => {
  await open(page, 'lessons/proportion/');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.guess .covered svg').first()).toBeHidden();
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });
  test('no dead control is shown', async ({ page }) => {
    for (const path of ['my-box/', 'lessons/proportion/', 'lessons/wood-movement/']) {
      await page.goto(path);
      for (const dead of await page.locator('main input, main select, main button').all())
        await expect(dead).toBeHidden();
    }
  });
});

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
  const lid = page.getByRole('textbox', { name: /^lid thickness/ });
  await lid.fill('11');
  await lid.press('Tab');
  wake();
  await expect(page.getByRole('slider', { name: /^lid thickness/ })).toHaveAttribute(
    'aria-valuetext',
    '11 millimeters',
  );
  await expect(lid).toHaveValue('11');
});

test('a part taken by its name before the page is awake is taken over, and the box in the address stays', async ({
  page,
}) => {
  const wake = await asleep(page, linkTo('my-box/', { wall: 11 }));
  const names = page.getByRole('navigation', { name: 'Parts of the box' });
  await names.getByRole('link', { name: 'walls' }).click();
  wake();
  await expect(page.getByRole('textbox', { name: /^wall thickness/ })).toHaveValue('11');
});

test('a guess typed and given before the page is awake is taken over', async ({ page }) => {
  const wake = await asleep(page, 'lessons/proportion/');
  const guess = page.locator('.guess-card').first();
  await guess.getByRole('textbox').fill('120');
  await guess.getByRole('button', { name: 'Build it' }).click();
  wake();
  await expect(guess.locator('.guess-answer')).toContainText('You said', { useInnerText: true });
  await expect(guess.locator('.guess-answer')).toContainText(/120\smm/, { useInnerText: true });
});

test('the answer of a guess gets the focus and is announced; to guess again leads back to the mark and covers again', async ({
  page,
}) => {
  await open(page, 'lessons/proportion/');
  const guess = page.locator('.guess-card').first();
  await guess.getByRole('textbox').fill('120');
  await guess.getByRole('button', { name: 'Build it' }).click();
  await expect(guess.locator('.guess-answer')).toBeFocused();
  await expect(guess.locator('.guess-answer')).toHaveRole('status');
  await expect(guess.locator('.arrives')).toBeVisible();
  await guess.getByRole('button', { name: 'guess again' }).click();
  await expect(guess.getByRole('slider')).toBeFocused();
  await expect(guess.locator('.arrives')).toHaveCount(0);
});

test('mending what cannot be built leaves the reader at its place, which says so, and what is left comes first', async ({
  page,
}) => {
  await open(page, linkTo('my-box/', { grooveDepth: 15, fingerWidth: 25 }));
  const tapes = page.getByRole('list', { name: 'Warnings', exact: true });
  const first = tapes.locator('.tape').first();
  await expect(first).toContainText('breaks');
  const id = (await first.getAttribute('data-check'))!;
  await first.locator('button.mend').press('Enter');
  const place = tapes.locator(`[data-check="${id}"]`);
  await expect(place).toContainText('mended');
  await expect(place).toBeFocused();
  await expect(place).toHaveRole('listitem');
});

test('paper keeps a guess covered until it is given', async ({ page }) => {
  await open(page, 'lessons/proportion/');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.guess-card .because').first()).toBeHidden();
  await expect(page.locator('.guess-card .arrives')).toHaveCount(0);
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

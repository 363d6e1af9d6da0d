/** The lesson on a year of a panel, by keyboard, by pointer, and with air that has no figure. */
import { expect, type Locator, type Page, test } from '@playwright/test';
import { open } from './site.ts';

const path = 'lessons/a-year-of-a-panel/';

/** The lesson with all guesses open, all folds unfolded and all figures awake, and one of its labs. */
async function lab(page: Page, title: string): Promise<Locator> {
  await open(page, path);
  const show = page.getByRole('button', { name: 'just show me' });
  while ((await show.count()) > 0) await show.first().click();
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('.more-of-it')) fold.open = true;
  });
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]:not([client=touch])'));
  return page.getByRole('region', { name: title });
}

test('by keyboard alone the day of building moves, is said, and moves in every figure', async ({ page }) => {
  const bottom = await lab(page, 'The bottom through a year');
  const day = bottom.getByRole('slider', { name: 'built on' });
  await day.focus();
  await page.keyboard.press('Home');
  await expect(day).toHaveAttribute('aria-valuetext', '1 January');
  for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
  await expect(day).toHaveAttribute('aria-valuetext', '4 January');
  await expect(bottom.locator('.says')).toContainText('Built on 4 January');
  await expect(bottom.getByRole('img')).toHaveAccessibleName(/built on 4 January/);
  const season = page.getByRole('region', { name: 'In which season to build' });
  await expect(season.getByRole('slider', { name: 'built on' })).toHaveAttribute(
    'aria-valuetext',
    '4 January',
  );
  await page.keyboard.press('End');
  await expect(bottom.locator('.says')).toContainText('Built on 31 December');
});

test('by pointer: with a small gap a bottom built in winter jams, built in the dampest weeks it does not', async ({
  page,
}) => {
  const bottom = await lab(page, 'The bottom through a year');
  const slider = (name: string | RegExp) => bottom.getByRole('slider', { name });
  const drag = async (name: string | RegExp, from: number, to: number) => {
    await slider(name).scrollIntoViewIfNeeded();
    const { x, y, width, height } = (await slider(name).boundingBox())!;
    await page.mouse.move(x + 10 + (width - 20) * from, y + height / 2);
    await page.mouse.down();
    await page.mouse.move(x + 10 + (width - 20) * to, y + height / 2, { steps: 5 });
    await page.mouse.up();
  };
  // 0.3 to 0.5 mm: less than the 0.57 mm that it grows at each side from winter to summer (112.5 × 0.00248 × 4.1 / 2).
  await drag(/^gap at each side/, 0.13, 0.08);
  await expect(bottom.locator('.says')).toContainText(/the bottom jams from/);
  await expect(bottom.getByRole('img')).toContainText(/jams from \d+ \w+/);
  // The middle of August is day 226 of 364.
  await drag('built on', 45 / 364, 226 / 364);
  await expect(bottom.locator('.says')).toContainText(/Built on \d+ August/);
  await expect(bottom.locator('.says')).toContainText(/stays free/);
});

test('the gap that the page asks for is one that never jams', async ({ page }) => {
  const bottom = await lab(page, 'The bottom through a year');
  const asked = await bottom.locator('.result strong .mm').first().textContent();
  const gap = bottom.getByRole('textbox', { name: /^gap at each side/ });
  await gap.fill(asked ?? '');
  await gap.press('Enter');
  await expect(bottom.locator('.says')).toContainText(/stays free and in its groove all year/);
});

test('air that has no figure gives a sentence in place of the picture, and the way back brings it again', async ({
  page,
}) => {
  const bottom = await lab(page, 'The bottom through a year');
  await bottom.getByText('month by month').click();
  const july = bottom.getByRole('textbox', { name: 'humidity in July' });
  await july.fill('100');
  await july.press('Enter');
  await expect(bottom.getByRole('status').filter({ hasText: 'no number' })).toContainText(
    /no number here.*July.*5 to 95 %/,
  );
  await expect(bottom.getByRole('img')).toHaveCount(0);
  await expect(bottom.locator('.results')).toBeEmpty();
  await july.fill('120');
  await july.press('Enter');
  await expect(bottom.getByRole('alert')).toContainText(/from 0\s% to 100\s%/);
  await july.fill('60');
  await july.press('Enter');
  await expect(bottom.getByRole('img')).toHaveCount(1);
});

test('two readings too near each other are refused in words; apart they make a year, which is kept on the device', async ({
  page,
}) => {
  const bottom = await lab(page, 'The bottom through a year');
  await bottom.getByRole('combobox', { name: 'a year of indoor air' }).selectOption('readings');
  const second = bottom.getByRole('group', { name: 'second reading' });
  const day = second.getByRole('slider', { name: /^on/ });
  await day.fill('30');
  await expect(bottom.getByRole('status')).toContainText(/some months apart/);
  await day.fill('205');
  await expect(bottom.getByRole('img')).toContainText('built');
  await page.reload();
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]:not([client=touch])'));
  // The figure is folded away again, so the choice is looked at where it stands.
  await expect(page.locator('.lab select').first()).toHaveValue('readings');
});

test('this air can be put in the box', async ({ page }) => {
  const bottom = await lab(page, 'The bottom through a year');
  await bottom.getByRole('combobox', { name: 'a year of indoor air' }).selectOption('warm-damp-coast');
  await bottom.getByRole('button', { name: 'put this air in my box' }).click();
  await expect(bottom.getByRole('button', { name: 'my box has this air' })).toBeDisabled();
  expect(await page.evaluate(() => localStorage.getItem('rule-and-reason.box'))).toMatch(/"humidityDamp":66/);
});

test('without JavaScript every figure of the year is there', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false, baseURL });
  const page = await context.newPage();
  await page.goto(path);
  await expect(page.locator('.lab svg.drawing')).toHaveCount(6);
  await context.close();
});

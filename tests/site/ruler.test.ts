/** The reader's ruler: chosen in the header, kept, and what sizes are written on. */
import { expect, type Page, test } from '@playwright/test';
import { linkTo, open, takePart } from './site.ts';

test.use({ locale: 'en-US' });

const choice = (page: Page) => page.locator('details.my-ruler');
const name = (page: Page) => choice(page).locator('summary');
const choose = async (page: Page, ruler: string) => {
  await name(page).click();
  await choice(page).getByRole('radio', { name: ruler }).click();
};
const cell = (page: Page, part: string, column: number) =>
  page
    .locator('.cut-list tr', { has: page.getByRole('rowheader', { name: part }) })
    .locator('td')
    .nth(column);

test('a first visit has 32nds in the United States, half millimeters elsewhere', async ({
  page,
  browser,
  baseURL,
}) => {
  await open(page, '');
  await expect(name(page)).toHaveText('my ruler 1/32\u00a0in');
  const other = await browser.newPage({ locale: 'de-DE', baseURL: baseURL! });
  await open(other, '');
  await expect(name(other)).toHaveText('my ruler 0.5\u00a0mm');
  await other.close();
});

test('units kept by an earlier version of the site are still read, and a ruler of other units gives way to them', async ({
  page,
}) => {
  await open(page, '');
  await page.evaluate(() => localStorage.setItem('rule-and-reason.units', 'mm'));
  await open(page, 'my-box/');
  await expect(name(page)).toHaveText('my ruler 0.5\u00a0mm');
  await expect(page.locator('html')).toHaveAttribute('data-units', 'mm');
  for (const damaged of ['1/64 in', '7 mm', '']) {
    await page.evaluate((text) => localStorage.setItem('rule-and-reason.ruler', text), damaged);
    await page.reload();
    await expect(name(page)).toHaveText('my ruler 0.5\u00a0mm');
  }
});

test('sizes go to its marks, with ~ between two; what goes in stays as typed; it is kept on the device', async ({
  page,
}) => {
  // Walls 9/32 in: inside 6 3/8 and outside 6 15/16 long.
  await open(page, linkTo('my-box/', { wall: (9 / 32) * 25.4 }));
  await page.locator('#cut-list > summary').click();
  await page.locator('#drawings > summary').click();
  await expect(cell(page, 'left side', 1)).toContainText('9/32\u00a0in');
  await choose(page, '1/16 in');
  await expect(choice(page)).not.toHaveAttribute('open');
  await expect(cell(page, 'left side', 1)).toContainText('~5/16\u00a0in');
  await expect(page.locator('.drawings')).toContainText('wall ~5/16\u00a0in');
  await takePart(page, 'inside');
  await expect(page.locator('.size-of-contents')).toContainText('5\u00a029/32\u00a0in');
  await choose(page, '0.01 in');
  await expect(cell(page, 'left side', 1)).toContainText('~0.28\u00a0in');
  await page.reload();
  await expect(name(page)).toHaveText('my ruler 0.01\u00a0in');
  await page.locator('#cut-list > summary').click();
  await expect(cell(page, 'left side', 1)).toContainText('~0.28\u00a0in');
});

test('steps of a slider are its marks', async ({ page }) => {
  await open(page, 'my-box/');
  await takePart(page, 'walls');
  const slider = page.getByRole('slider', { name: 'wall thickness, slider' });
  for (const [ruler, heard] of [
    ['1/16 in', '3 eighths of an inch'],
    ['1/64 in', '25 sixty-fourths of an inch'],
  ] as const) {
    await choose(page, ruler);
    await slider.press('ArrowRight');
    await expect(slider).toHaveAttribute('aria-valuetext', heard);
  }
});

test('with keys alone: Enter opens, arrows choose, Escape leads back', async ({ page }) => {
  await open(page, '');
  await name(page).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await expect(choice(page).getByRole('radio', { name: '1/32 in' })).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(name(page)).toHaveText('my ruler 1/64\u00a0in');
  await expect(choice(page)).toHaveAttribute('open');
  await page.keyboard.press('Escape');
  await expect(choice(page)).not.toHaveAttribute('open');
  await expect(name(page)).toBeFocused();
  await page.keyboard.press('Enter');
  await page.locator('.site-name').focus();
  await expect(choice(page)).not.toHaveAttribute('open');
});

test('without JavaScript there is no choice that does nothing', async ({ browser, baseURL }) => {
  const page = await browser.newPage({ javaScriptEnabled: false, baseURL: baseURL! });
  await page.goto('');
  await expect(choice(page)).toBeHidden();
  await page.close();
});

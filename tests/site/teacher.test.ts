/**
 * A teacher's block in a room without a network, on a projector of 1024 x 768: from the page of the class to its block, the
 * guess on the wall by two keys, a rule's figure, and a sheet for each learner on paper.
 */
import { expect, type Page, test } from '@playwright/test';
import { wrongOnWall } from './on-the-wall.ts';
import { readPdf } from './pdf.ts';
import { open } from './site.ts';

test.use({
  locale: 'en-GB',
  viewport: { width: 1024, height: 768 },
  serviceWorkers: 'allow',
  reducedMotion: 'reduce',
});

const fitsAcross = async (page: Page) =>
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
    page.url(),
  ).toBeLessThanOrEqual(0);

test('with the network off: the block, its guess opened on the wall, its figure, and sheets printed', async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  const troubles = await open(page, 'class/');
  await expect(page.locator('.ready')).toContainText(/^Ready for no network: all \d+ files/, {
    timeout: 90_000,
  });
  await fitsAcross(page);
  await context.setOffline(true);

  await page
    .getByRole('main')
    .getByRole('link', { name: /Wood moves/ })
    .first()
    .click();
  await expect(page).toHaveURL(/class\/2-wood-moves\/$/);
  const block = page.url();
  await fitsAcross(page);

  const onWall = page.locator('.on-wall');
  const wall = page.locator('a[href*="#wall="]');
  await wall.first().click();
  await expect(onWall).toHaveAttribute('data-state', 'blank');
  await expect(page.getByRole('navigation', { name: 'Wall' })).toBeFocused();
  await page.waitForTimeout(150);
  expect(await wrongOnWall(page, 28)).toEqual([]);
  await page.keyboard.press('PageDown');
  await expect(onWall.locator('.guess-answer')).toBeVisible();
  await page.waitForTimeout(150);
  expect(await wrongOnWall(page, 28)).toEqual([]);
  await page.keyboard.press('PageUp');
  await expect(onWall).toHaveAttribute('data-state', 'blank');
  await page.keyboard.press('Escape');
  await expect(onWall).toHaveCount(0);

  await page.goto(block);
  await wall.nth(1).click();
  await expect(page).toHaveURL(/rules\/.*#wall=figure/);
  await expect(onWall).toBeVisible();
  await page.waitForTimeout(150);
  expect(await wrongOnWall(page, 28)).toEqual([]);

  await page.goto(block);
  await page.getByRole('link', { name: 'a sheet for each learner' }).click();
  await expect(page.getByLabel('those of a block').locator('option:checked')).toHaveText('2 Wood moves');
  await fitsAcross(page);
  await page.getByRole('textbox', { name: 'class' }).fill('7b');
  await page.getByRole('textbox', { name: /^learners/ }).fill('4');
  await page.getByRole('button', { name: 'make the sheets' }).click();
  await expect(page.getByRole('button', { name: 'print', exact: true })).toBeVisible();
  await fitsAcross(page);
  const paper = await readPdf(await page.pdf({ preferCSSPageSize: true }));
  expect(paper.length).toBe(await page.locator('.paper-page').count());
  for (const number of [1, 2, 3, 4])
    expect(paper.some(({ text }) => text.replace(/\s+/g, ' ').includes(`number ${number}`))).toBe(true);
  expect(troubles).toEqual([]);
});

/** A new box from three questions: answered from the start, changed by hand or by keys, put on the bench. */
import { expect, type Page, test } from '@playwright/test';
import type { Box } from '../../src/box/subjects/inputs.ts';
import { chooseUnits, linkTo, open, openDrawer } from './site.ts';

test.use({ locale: 'en-GB' });

const kept = (page: Page): Promise<Box> =>
  page.evaluate(() => JSON.parse(localStorage.getItem('rule-and-reason.box')!).box);
const drawn = (page: Page) => page.locator('.box-made svg.drawing');
const made = (page: Page) => page.locator('.box-made');

test('the answers that stand at first make a box; others make another, and it goes to the bench', async ({
  page,
}) => {
  await open(page, 'my-box/');
  await openDrawer(page, 'new box');
  await expect(made(page)).toContainText('It can be built');
  await expect(drawn(page)).toBeVisible();
  const before = await made(page).textContent();
  await page.getByRole('radio', { name: /2 packs of cards/ }).check();
  await page.getByRole('radio', { name: 'lifts off' }).check();
  await page.getByRole('radio', { name: 'black walnut' }).check();
  await expect.poll(() => made(page).textContent()).not.toBe(before);
  await expect(made(page)).toContainText('It can be built');
  await made(page).getByRole('button', { name: 'put it on the bench' }).click();
  await expect(page.locator('.drawer')).toHaveCount(0);
  expect(await kept(page)).toMatchObject({
    name: 'Box for 2 packs of cards',
    kind: 'lift-off',
    species: 'black-walnut',
    items: [{ count: 2, length: 88.9 }],
  });
  await expect(page.locator('.tape.breaks')).toHaveCount(0);
});

test('the box before it stays among my boxes, and the example needs no place there', async ({ page }) => {
  await open(page, linkTo('my-box/', { name: 'Tea box', wall: 10 }));
  await openDrawer(page, 'new box');
  await expect(made(page)).toContainText('Tea box stays under');
  await made(page).getByRole('button', { name: 'put it on the bench' }).click();
  await openDrawer(page, 'my boxes');
  await expect(page.locator('.designs')).toContainText('Tea box');
});

test('by keys alone, with a thing of my own, in inches', async ({ page }) => {
  await open(page, 'my-box/');
  await chooseUnits(page, 'inch');
  await openDrawer(page, 'new box');
  await page.getByRole('radio', { name: /28 dominoes/ }).focus();
  await page.keyboard.press('ArrowUp');
  await expect(page.getByRole('radio', { name: /^my own/ })).toBeChecked();
  const length = page.getByRole('textbox', { name: 'length in inches', exact: true });
  const before = await made(page).textContent();
  await length.fill('7 1/2');
  await length.press('Enter');
  await expect.poll(() => made(page).textContent()).not.toBe(before);
  await expect(made(page)).toContainText('It can be built');
  const put = made(page).getByRole('button', { name: 'put it on the bench' });
  await expect(put).toBeEnabled();
  await put.focus();
  await page.keyboard.press('Enter');
  expect((await kept(page)).items).toMatchObject([{ length: 190.5 }]);
  // On a rule of 32nds every size of it is a whole number of them.
  const { wall, lidThickness, bottomThickness } = await kept(page);
  for (const size of [wall, lidThickness, bottomThickness])
    expect(Math.abs((size / 25.4) * 32 - Math.round((size / 25.4) * 32))).toBeLessThan(1e-6);
});

test('what fits in no box is said, and nothing can be put on the bench', async ({ page }) => {
  await open(page, 'my-box/');
  await openDrawer(page, 'new box');
  await page.getByRole('radio', { name: /^my own/ }).check();
  for (const side of ['length', 'width', 'height']) {
    const field = page.getByRole('textbox', { name: `${side} in millimeters`, exact: true });
    await field.fill('600');
    await field.press('Enter');
  }
  await expect(made(page).getByRole('alert')).toBeVisible();
  await expect(made(page).getByRole('button', { name: 'put it on the bench' })).toBeDisabled();
});

test('on a phone “more” opens what concerns the whole box, and the box stays in sight while it is chosen', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, 'my-box/');
  await expect(page.getByRole('button', { name: 'new box' })).toBeHidden();
  await page.getByRole('button', { name: 'more', exact: true }).click();
  await page.getByRole('button', { name: 'new box' }).click();
  await expect(drawn(page)).toBeInViewport();
  await page.getByRole('radio', { name: 'yellow-poplar' }).scrollIntoViewIfNeeded();
  await expect(drawn(page)).toBeInViewport({ ratio: 0.9 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});

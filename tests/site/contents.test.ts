/** The things that go in, typed by keyboard: the box follows at once, and what does not fit is said beside its field. */
import { expect, type Page, test } from '@playwright/test';
import type { Box } from '../../src/box/subjects/inputs.ts';
import { chooseUnits, linkTo, open, takePart } from './site.ts';

test.use({ locale: 'en-GB' });
/** What the reader's units show, not what is hidden beside it. */
const seen = { useInnerText: true };

const field = (page: Page, name: RegExp, row = 0) =>
  page.locator('.items > li').nth(row).getByRole('textbox', { name });
const says = (page: Page) => page.locator('.size-of-contents');
const isFocused = (page: Page, name: RegExp) => expect(field(page, name)).toBeFocused();

/** Opens the bench with the list of things unfolded. */
async function openContents(page: Page, changes?: Partial<Box>): Promise<string[]> {
  const troubles = await open(page, changes ? linkTo('my-box/', changes) : 'my-box/');
  await takePart(page, 'inside');
  return troubles;
}

/** Types over what has the focus, and Enter. */
async function type(page: Page, text: string) {
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

test('a size that is typed changes the inside at once, the focus stays, and one step back takes it back', async ({
  page,
}) => {
  const troubles = await openContents(page);
  await page.locator('#cut-list > summary').click();
  await expect(says(page)).toContainText('156\u00a0mm by 96\u00a0mm by 35\u00a0mm', seen);
  await field(page, /^length/).focus();
  await type(page, '51');
  // Three rows of ten on edge: 3 × 51 + 2 × 3 = 159.
  await expect(says(page)).toContainText('159\u00a0mm by 96\u00a0mm by 35\u00a0mm', seen);
  // And two walls of 8.
  await expect(page.locator('.cut-list')).toContainText('175\u00a0mm');
  await isFocused(page, /^length/);
  await expect(page.locator('.ways .chosen')).toHaveCount(1);
  await page.getByRole('button', { name: /^undo/ }).press('Enter');
  await expect(says(page)).toContainText('156\u00a0mm by 96\u00a0mm by 35\u00a0mm', seen);
  await expect(field(page, /^length/)).toHaveValue('50');
  expect(troubles).toEqual([]);
});

test('an inch reader’s size does the same on their own rulers', async ({ page }) => {
  await openContents(page);
  await chooseUnits(page, 'inch');
  await expect(says(page)).toContainText('6\u00a03/8\u00a0in by 4\u00a0in', seen);
  await field(page, /^length/).focus();
  // 3 × 2 1/8 + 2 × 1/8 + 1/8 = 6 3/4.
  await type(page, '2 1/8');
  await expect(says(page)).toContainText('6\u00a03/4\u00a0in by 4\u00a0in', seen);
});

test('what fits in no way is refused beside its row, the text stays, and the box is as it was', async ({
  page,
}) => {
  await openContents(page);
  const before = await page.evaluate(() => localStorage.getItem('box'));
  await field(page, /^length/).focus();
  await type(page, '700');
  const alert = page.locator('.items > li').first().getByRole('alert');
  await expect(alert).toContainText('100\u00a0mm (3\u00a015/16\u00a0in) more length than the 600\u00a0mm');
  await expect(alert).toContainText('Nothing has changed.');
  await expect(field(page, /^length/)).toHaveValue('700');
  await expect(field(page, /^length/)).toHaveAttribute('aria-invalid', 'true');
  await isFocused(page, /^length/);
  await expect(says(page)).toContainText('156\u00a0mm by 96\u00a0mm by 35\u00a0mm', seen);
  expect(await page.evaluate(() => localStorage.getItem('box'))).toBe(before);
  await type(page, '51');
  await expect(alert).toHaveCount(0);
  await expect(says(page)).toContainText('159\u00a0mm', seen);
});

test('sizes that fit only together are taken together', async ({ page }) => {
  // 94 by 54 by 35 mm are left in this inside: a thing of 50 × 50 × 80 needs its length before its height.
  const box: Partial<Box> = {
    items: [{ name: 'tin', length: 30, width: 30, height: 20, count: 1 }],
    sizeFrom: 'inside',
    wantedLength: 100,
    wantedWidth: 60,
    wantedHeight: 45,
  };
  await openContents(page, box);
  await expect(says(page)).toContainText('You gave the size of the box', seen);
  await field(page, /^how many/).focus();
  await type(page, '12');
  await expect(page.locator('.items').getByRole('alert')).toContainText('the size you gave');
  await field(page, /^height/).focus();
  await type(page, '5');
  await expect(page.locator('.items').getByRole('alert')).toHaveCount(0);
  await expect(field(page, /^how many/)).toHaveValue('12');
  await expect(says(page)).toContainText('100\u00a0mm by 60\u00a0mm by 45\u00a0mm', seen);
});

test('a number that was refused and then given up is not tried again with the next one', async ({ page }) => {
  await openContents(page);
  const alert = page.locator('.items').getByRole('alert');
  for (const giveUp of [() => page.keyboard.press('Escape'), () => type(page, 'long')]) {
    await field(page, /^length/).focus();
    await type(page, '700');
    await expect(alert).toContainText('Nothing has changed.');
    await giveUp();
    await expect(alert.filter({ hasText: 'Nothing has changed.' })).toHaveCount(0);
    await field(page, /^how many/).focus();
    await type(page, '27');
    await expect(alert.filter({ hasText: 'Nothing has changed.' })).toHaveCount(0);
    // Nine rows of three on edge.
    await expect(says(page)).toContainText('156\u00a0mm by 87\u00a0mm by 35\u00a0mm', seen);
    await page.getByRole('button', { name: /^undo/ }).press('Enter');
    await expect(says(page)).toContainText('156\u00a0mm by 96\u00a0mm by 35\u00a0mm', seen);
  }
});

test('a thing that is taken in, and one that is taken out, moves the box, and the rest is laid', async ({
  page,
}) => {
  await openContents(page);
  const select = page.locator('.add-item select');
  await select.focus();
  await select.selectOption('my own');
  await expect(says(page)).not.toContainText('156\u00a0mm by 96\u00a0mm by 35\u00a0mm', seen);
  await page.getByRole('button', { name: 'take out domino' }).press('Enter');
  // One thing of 50 by 30 by 10, the room around it 3, above it 10.
  await expect(says(page)).toContainText('56\u00a0mm by 36\u00a0mm by 20\u00a0mm', seen);
  await expect(page.locator('.ways .chosen')).toHaveCount(1);
});

test('a size of the contents that was set by hand stays while the things fit, and says so when it gives way', async ({
  page,
}) => {
  await openContents(page);
  const length = page.getByRole('textbox', { name: /^length of the contents/ });
  await length.fill('157');
  await length.press('Enter');
  await expect(says(page)).toContainText('You set the size of the contents yourself, 157\u00a0mm', seen);
  await field(page, /^how many/).focus();
  await type(page, '27');
  await expect(length).toHaveValue('157');
  await field(page, /^length/).focus();
  await type(page, '60');
  await expect(page.getByRole('status').filter({ hasText: 'no longer fit into the 157' })).toBeVisible();
  await expect(length).not.toHaveValue('157');
  await page.getByRole('button', { name: /^undo/ }).press('Enter');
  await expect(length).toHaveValue('157');
  await expect(page.getByRole('status').filter({ hasText: 'no longer fit' })).toHaveCount(0);
});

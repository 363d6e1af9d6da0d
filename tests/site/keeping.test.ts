/** A reader's box is never lost: links, reloads, full and blocked stores, two tabs, kept designs. */
import { expect, type Page, test } from '@playwright/test';
import { chooseUnits, linkTo, open, openDrawer, takePart } from './site.ts';

test.use({ locale: 'en-GB' });

const wall = (page: Page) => page.getByRole('textbox', { name: /^wall thickness/ });
/** Opens the bench at the walls. */
const openAtWalls = (page: Page, changes?: Parameters<typeof linkTo>[1], path = 'my-box/') =>
  open(page, changes ? `${linkTo(path, changes)}&walls` : `${path}#walls`);
const undo = (page: Page) => page.getByRole('button', { name: /^undo/ });
const setWall = async (page: Page, value: string) => {
  await wall(page).fill(value);
  await wall(page).press('Enter');
  // Texts are read by a part of the page that is fetched with the first of them.
  await expect(page.getByRole('slider', { name: 'wall thickness, slider' })).toHaveAttribute(
    'aria-valuetext',
    `${value} millimeters`,
  );
};
const keptWall = (page: Page) =>
  page.evaluate(() => JSON.parse(localStorage.getItem('rule-and-reason.box') ?? '{}').box?.wall);

test('a link puts the former box one step back and among the kept designs, and leaves the address', async ({
  page,
}) => {
  await openAtWalls(page);
  await setWall(page, '12');
  await open(page, linkTo('my-box/?from=code', { name: 'From a friend', wall: 7 }));
  await expect.poll(() => new URL(page.url()).hash).toBe('');
  await takePart(page, 'walls');
  await expect(wall(page)).toHaveValue('7');
  expect(new URL(page.url()).search).toBe('?from=code');
  await openDrawer(page, 'my boxes');
  await expect(page.locator('.designs .kept')).toContainText('Domino box');
  await undo(page).click();
  await expect(wall(page)).toHaveValue('12');
});

test('what is changed after a link was opened survives a reload, and Back', async ({ page }) => {
  await open(page, '');
  await openAtWalls(page, { wall: 7 });
  await setWall(page, '8');
  await page.reload();
  await expect(wall(page)).toHaveValue('8');
  await page.goto('rules/wall-thickness/');
  await page.goBack();
  await expect(wall(page)).toHaveValue('8');
});

test('a damaged link leaves the box in place and says so; changing it afterwards loses nothing', async ({
  page,
}) => {
  await openAtWalls(page);
  await setWall(page, '12');
  await page.goto('about:blank');
  await page.goto('my-box/#box=1.%%%&walls');
  await expect(page.getByRole('alert').first()).toContainText('Your own box is as it was');
  await expect(wall(page)).toHaveValue('12');
});

test('one bad field in the store costs that field alone, and it is named', async ({ page }) => {
  await page.goto('404.html');
  await page.evaluate(() =>
    localStorage.setItem('rule-and-reason.box', JSON.stringify({ version: 1, box: { wall: 12, kerf: 900 } })),
  );
  await openAtWalls(page);
  await expect(page.getByRole('alert').first()).toContainText('kerf');
  await expect(wall(page)).toHaveValue('12');
});

test('a device that keeps nothing says so at once, and the box goes along to the next page', async ({
  page,
}) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await openAtWalls(page);
  await setWall(page, '12');
  await expect(page.getByRole('alert').filter({ hasText: 'does not let the page keep' })).toBeVisible();
  await openDrawer(page, 'my boxes');
  await page.getByRole('button', { name: 'keep it on this device' }).click();
  await expect(page.locator('.designs [role=status]')).not.toContainText('is kept');
  await page.getByRole('link', { name: 'build sheet' }).click();
  await expect(page).not.toHaveURL(/#box/);
  await expect(page.getByRole('region', { name: 'Cut list' })).toContainText('12\u00a0mm');
  await page.getByRole('link', { name: 'change the box' }).click();
  await takePart(page, 'walls');
  await expect(wall(page)).toHaveValue('12');
  await openDrawer(page, 'my boxes');
  await expect(page.locator('.designs .kept')).toHaveCount(0);
});

test('two tabs add to one list of designs and one list of guesses, and undo takes back this tab’s change only', async ({
  page,
  context,
}) => {
  await openAtWalls(page);
  const other = await context.newPage();
  await openAtWalls(other);
  for (const [tab, name] of [
    [page, 'One'],
    [other, 'Two'],
  ] as const) {
    await tab.getByLabel('name of this box').fill(name);
    await tab.getByLabel('name of this box').press('Enter');
    await openDrawer(tab, 'my boxes');
    await tab.getByRole('button', { name: 'keep it on this device' }).click();
  }
  for (const tab of [page, other])
    for (const name of ['One', 'Two']) await expect(tab.locator('.designs .kept')).toContainText(name);
  await setWall(page, '12');
  await expect(wall(other)).toHaveValue('12');
  await takePart(other, 'the board');
  const kerf = other.getByRole('textbox', { name: /^kerf/ });
  await kerf.fill('2');
  await kerf.press('Enter');
  await undo(page).click();
  await expect.poll(() => keptWall(page)).not.toBe(12);
  await takePart(page, 'the board');
  await expect(page.getByRole('textbox', { name: /^kerf/ })).toHaveValue('2');
});

test('saving under a name that is kept asks first, and a deleted design can be put back', async ({
  page,
}) => {
  await openAtWalls(page);
  const keep = page.getByRole('button', { name: 'keep it on this device' });
  await openDrawer(page, 'my boxes');
  await keep.click();
  await setWall(page, '12');
  await keep.click();
  await expect(page.locator('.designs [role=status]')).toContainText('is kept already');
  await page.getByRole('button', { name: 'leave it' }).click();
  await page.locator('.kept').getByRole('button', { name: 'open', exact: true }).click();
  await expect(wall(page)).not.toHaveValue('12');
  await page.getByRole('button', { name: /^delete/ }).click();
  await expect(page.locator('.designs .kept')).toHaveCount(0);
  await page.getByRole('button', { name: 'put it back' }).click();
  await expect(page.locator('.designs .kept')).toContainText('Domino box');
});

test.describe('the example', () => {
  test('is the one of the reader’s units while it is untouched, and a box of one’s own is never converted', async ({
    page,
  }) => {
    await openAtWalls(page);
    const lip = page.getByRole('textbox', { name: /^wood above the lid groove/ });
    await page.locator('#cut-list > summary').click();
    await expect(wall(page)).toHaveValue('8');
    await chooseUnits(page, 'inch');
    await expect(wall(page)).toHaveValue('5/16');
    await takePart(page, 'grooves');
    await expect(lip).toHaveValue('1/8');
    await expect(page.locator('.cut-list')).toContainText('4\u00a05/8\u00a0in');
    await chooseUnits(page, 'mm');
    await expect(lip).toHaveValue('3.5');
    await takePart(page, 'walls');
    await setWall(page, '9');
    await chooseUnits(page, 'inch');
    await chooseUnits(page, 'mm');
    await expect(wall(page)).toHaveValue('9');
    await takePart(page, 'grooves');
    await expect(lip).toHaveValue('3.5');
  });
});

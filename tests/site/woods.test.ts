/** The woods page by keyboard and pointer: sort, filter, compare, walk through the points, take the table along. */
import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { csvParse } from 'd3-dsv';
import { open } from './site.ts';

test.use({ locale: 'en-GB' });

test.beforeEach(async ({ page }) => {
  await open(page, 'woods/');
});

const numbers = (texts: string[]) => texts.map((text) => Number.parseFloat(text)).filter(Number.isFinite);

test('a heading sorts by its column, and the other way round when it is pressed again', async ({ page }) => {
  const heading = page.getByRole('button', { name: 'along the rings' });
  await heading.focus();
  await page.keyboard.press('Enter');
  const column = page.locator('table.woods tbody td:nth-of-type(1)');
  const up = numbers(await column.allTextContents());
  expect(up.length).toBeGreaterThan(50);
  expect(up).toEqual([...up].sort((a, b) => a - b));
  await expect(page.getByRole('columnheader', { name: 'along the rings' })).toHaveAttribute(
    'aria-sort',
    'ascending',
  );
  await page.keyboard.press('Enter');
  const down = numbers(await column.allTextContents());
  expect(down).toEqual([...down].sort((a, b) => b - a));
});

test('words and group narrow the list, and the count says so', async ({ page }) => {
  await page.getByRole('searchbox', { name: 'words' }).fill('maple');
  const rows = page.locator('table.woods tbody tr');
  await expect(page.getByRole('status').first()).toHaveText(`${await rows.count()} woods`);
  for (const name of await rows.locator('th').allTextContents()) expect(name).toContain('maple');
  await page.getByRole('combobox', { name: 'group' }).selectOption('softwood');
  await expect(rows).toHaveCount(0);
});

test('up to four woods are compared, for a panel of the reader’s width in the air of the reader’s box', async ({
  page,
}) => {
  for (const name of ['black walnut', 'sugar maple', 'white ash'])
    await page.getByRole('checkbox', { name, exact: true }).check();
  const comparison = page.getByRole('region', { name: 'Comparison' });
  await expect(comparison.getByRole('columnheader')).toHaveCount(4);
  await expect(page.getByRole('checkbox', { name: 'red alder', exact: true })).toBeDisabled();
  // 120 mm of flat-sawn black cherry from 30 to 60 % humidity at 20 °C: 120 × 0.00248 × (11.00 - 6.19) = 1.43, up.
  await expect(comparison.getByRole('row', { name: /^the panel, flat-sawn/ })).toContainText(/1\.4[345]\smm/);
  await comparison.getByRole('button', { name: 'leave out white ash' }).click();
  await expect(page.getByRole('checkbox', { name: 'red alder', exact: true })).toBeEnabled();
});

test('the points are walked through by keyboard, and a click picks the nearest one', async ({ page }) => {
  const walk = page.getByRole('slider', { name: /walk through the points/ });
  await walk.focus();
  await page.keyboard.press('Home');
  const first = await walk.getAttribute('aria-valuetext');
  await page.keyboard.press('ArrowRight');
  expect(await walk.getAttribute('aria-valuetext')).not.toBe(first);
  const point = page.locator('.drawing .point').nth(30);
  await point.click({ force: true });
  await expect(walk).not.toHaveValue('1');
});

test('a group of species is never shown as one', async ({ page }) => {
  await page.getByRole('searchbox', { name: 'words' }).fill('commercial');
  for (const row of await page.locator('table.woods tbody tr').all())
    await expect(row).toContainText('group of species');
});

test('the file holds every wood, each figure with its status and source', async ({ page }) => {
  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: /Download the table as CSV/ }).click();
  const rows = csvParse(readFileSync(await (await download).path(), 'utf8'));
  expect(rows.length).toBe(await page.locator('table.woods tbody tr').count());
  const walnut = rows.find((row) => row.wood === 'black walnut')!;
  // Wood Handbook (2010), Table 13-5: black walnut 0.00190 and 0.00274.
  expect(walnut['radial (fraction per 1 % MC)']).toBe('0.0019');
  expect(walnut['tangential (fraction per 1 % MC)']).toBe('0.00274');
  expect(walnut['tangential: source']).toContain('13-5');
  for (const row of rows)
    for (const key of ['tangential', 'radial'])
      if (row[`${key} (fraction per 1 % MC)`]) expect(row[`${key}: source`]).not.toBe('');
});

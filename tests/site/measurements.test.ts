/** A reader keeps what they measured and weighed: by keyboard, out and in as CSV, on paper, and the tries in a figure. */
import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { numberField, open } from './site.ts';

test.use({ locale: 'en-GB' });

test('a gap is kept by keyboard with a comma or a fraction, compared, and still there after reloading and on paper', async ({
  page,
}) => {
  const troubles = await open(page, 'measurements/');
  await page.getByRole('combobox', { name: 'what was measured' }).selectOption('wall-height');
  await numberField(page, 'measured').fill('60,5');
  await numberField(page, 'humidity of the air').fill('45');
  await numberField(page, 'temperature').fill('20');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('status').filter({ hasText: 'Kept: height of the walls' })).toBeVisible();
  await expect(numberField(page, 'measured')).toBeFocused();
  const rows = page.locator('.measured-rows tbody tr');
  await expect(rows.first().locator('td').nth(1)).toContainText('60.5 mm');
  await page.keyboard.type('2 3/8 in');
  await page.keyboard.press('Enter');
  await expect(rows).toHaveCount(2);
  // Two and three eighths of 25.4 mm.
  await expect(rows.nth(1).locator('td').nth(1)).toContainText('60.33 mm');

  await page.reload();
  await expect(rows).toHaveCount(2);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('button', { name: 'keep this measurement' })).toBeHidden();
  await expect(rows.first()).toBeVisible();
  expect(troubles).toEqual([]);
});

test('what cannot be used is said at its field, which gets the hand, and nothing is kept', async ({
  page,
}) => {
  await open(page, 'measurements/');
  await numberField(page, 'measured').fill('much');
  await numberField(page, 'humidity of the air').fill('45');
  await numberField(page, 'temperature').fill('20');
  await page.getByRole('button', { name: 'keep this measurement' }).click();
  await expect(numberField(page, 'measured')).toBeFocused();
  await expect(numberField(page, 'measured')).toHaveAttribute('aria-invalid', 'true');
  await expect(page.locator('.measured-rows')).toHaveCount(0);
});

test('a piece that is weighed says whether it has settled, and its weights go out as CSV and come back in', async ({
  page,
}) => {
  await open(page, 'measurements/');
  const file = page.getByLabel('bring in a CSV of weighings');
  // 480 g and a way of 40 g that goes as e^(−t/5 days), to a tenth of a gram; and a row that is none.
  const text = `piece,date,mass g\n${[0, 3, 6, 10, 15, 21]
    .map(
      (day) =>
        `offcut,2026-03-${String(day + 1).padStart(2, '0')},${(480 + 40 * Math.exp(-day / 5)).toFixed(1)}`,
    )
    .join('\n')}\noffcut,2026-02-30,500\n`;
  const bring = (content: string | Buffer) =>
    file.setInputFiles({ name: 'weighings.csv', mimeType: 'text/csv', buffer: Buffer.from(content) });
  await bring(text);
  await expect(page.getByText('6 of 7 rows brought in')).toBeVisible();
  await expect(page.getByText(/Row 8: date should be a day/)).toBeVisible();
  const piece = page.getByRole('region', { name: 'offcut' });
  await expect(piece).toContainText('it ends at about 480 g');
  await expect(piece).toContainText('The limit is 0.3 %');

  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'save as CSV' }).click(),
  ]);
  const out = readFileSync((await saved.path())!);
  for (let left = 6; left > 0; left--)
    await piece
      .getByRole('button', { name: /^take out/ })
      .first()
      .click();
  await expect(piece).toHaveCount(0);
  await bring(out);
  await expect(page.getByText('6 of 6 rows brought in')).toBeVisible();
  await expect(piece.locator('tbody tr')).toHaveCount(6);
});

test('a figure notes a try once the hand is still, brings it back, and says when two things changed at once', async ({
  page,
}) => {
  await open(page, 'lessons/thickness-from-thickness/');
  const lab = page.locator('.lab').first();
  await lab.scrollIntoViewIfNeeded();
  await page.waitForFunction(() => !document.querySelector('.lab')?.closest('astro-island[ssr]'));
  const sliders = lab.getByRole('slider');
  const before = await sliders.first().getAttribute('aria-valuetext');
  await sliders.first().focus();
  await page.keyboard.press('ArrowRight');
  const tries = lab.locator('.lab-tries');
  await tries.locator('summary').click();
  await expect(tries.locator('li')).toHaveCount(2, { timeout: 10_000 });
  await expect(tries.locator('.nudge')).toBeEmpty();
  await tries.getByRole('button', { name: 'bring back try 1' }).click();
  await expect(sliders.first()).toHaveAttribute('aria-valuetext', before!);
  await tries.getByRole('button', { name: 'clear my tries' }).click();
  await expect(tries.locator('li')).toHaveCount(0);
  await sliders.first().focus();
  await page.keyboard.press('ArrowRight');
  await sliders.nth(1).focus();
  await page.keyboard.press('ArrowRight');
  await expect(tries.locator('.nudge')).toContainText('Two things changed at once', { timeout: 10_000 });
});

/** What physics supports: every claim can be seen, with its number in the reader's units and the way to its rule. */
import { expect, test } from '@playwright/test';
import { open } from './site.ts';

test('claims are seen, and a lid 100 mm wide locks up to 46 mm', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('rule-and-reason.units', 'mm'));
  await open(page, 'what-physics-supports/');
  const claims = page.locator('.claims > li');
  expect(await claims.count()).toBeGreaterThan(20);
  const lid = claims.filter({ hasText: 'needs a harder pull' });
  const box = (await lid.boundingBox())!;
  expect(box.width).toBeGreaterThan(200);
  await expect(lid.getByText(/^46\smm$/)).toBeVisible();
  await expect(lid.getByRole('link', { name: 'Long lids run, short ones jam' })).toBeVisible();
});

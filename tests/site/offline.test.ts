/** Once a page has been read, the whole site works without a network. */
import { expect, test } from '@playwright/test';
import { pages } from './site.ts';

test.use({ serviceWorkers: 'allow' });

test('after one visit every page opens without a network, with its style and its controls', async ({
  page,
  context,
}) => {
  // Every page of the site, one after the other, also on a slow machine.
  test.setTimeout(400_000);
  await page.goto('');
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    // Ready means installed, and installed means that every file has been fetched; the page is taken over just after.
    if (!navigator.serviceWorker.controller)
      await new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve));
  });
  await context.setOffline(true);
  const failed: string[] = [];
  page.on('requestfailed', (request) => failed.push(request.url()));
  for (const path of pages) {
    await page.goto(path);
    await expect(page.locator('h1'), path).toBeVisible();
    await page.waitForFunction(
      () => !document.querySelector('astro-island[ssr]:not([client=visible], [client=touch])'),
    );
    expect(await page.evaluate(() => document.styleSheets.length), path).toBeGreaterThan(0);
  }
  expect(failed).toEqual([]);
  // The network is really gone: what was never part of the site is not there.
  expect(
    await page.evaluate(() =>
      fetch('/no-such-page/').then(
        () => 'reached',
        () => 'gone',
      ),
    ),
  ).toBe('gone');
});

test('an address without its last slash leads to its page, and an unknown one to ours, without a network', async ({
  page,
  context,
}) => {
  await page.goto('');
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await page.reload();
  await context.setOffline(true);
  await page.goto('rules/lid-clearance?from=print#why');
  await expect(page).toHaveURL(/rules\/lid-clearance\/\?from=print#why$/);
  await expect(page.locator('h1')).not.toHaveText('There is no such page');
  for (const unknown of ['no-such-page', 'rules/no-such-rule/', 'lessons/proportion/no/such/place.html']) {
    await page.goto(unknown);
    await expect(page.locator('h1'), unknown).toHaveText('There is no such page');
    await expect(page.getByRole('link', { name: 'all rules' })).toBeVisible();
  }
});

test('a link with a box in it opens the kept page too', async ({ page, context }) => {
  await page.goto('');
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await page.reload();
  await context.setOffline(true);
  await page.goto('my-box/?from=link#box=damaged');
  await expect(page.locator('h1')).toBeVisible();
});

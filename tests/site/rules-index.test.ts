/** The page of all rules: a part is chosen by pointing, by its name or by a link; stages, and the list from A to Z, lead to every rule. */
import { expect, type Page, test } from '@playwright/test';
import { chooseUnits, linkTo, open, pages } from './site.ts';

test.use({ locale: 'en-GB' });

const rules = pages.filter((path) => /^rules\/[^/]+\/$/.test(path));
const name = (page: Page, part: string) =>
  page.getByRole('navigation', { name: 'Parts of the box' }).getByRole('link', { name: part, exact: true });
const list = (page: Page) => page.locator('.rules-beside section:visible');
const heading = (page: Page) => list(page).getByRole('heading');
const drawing = (page: Page) => page.locator('.pointed svg.bench-box:visible');

test('a part is chosen by its name with the keyboard; the focus goes on in its rules, and a rule is one more step', async ({
  page,
}) => {
  await open(page, 'rules/');
  await expect(heading(page)).toHaveText('The lid');
  await name(page, 'grooves').focus();
  await page.keyboard.press('Enter');
  await expect(heading(page)).toHaveText('The grooves');
  await expect(heading(page)).toBeFocused();
  await expect(drawing(page).locator('.spoken')).toContainText('Marked: the grooves');
  await page.keyboard.press('Tab');
  const first = list(page).getByRole('link').first();
  await expect(first).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/rules\/lip-beside-lid-groove\/$/);
  await page.goBack();
  await expect(heading(page), 'the way back leads to the part').toHaveText('The grooves');
});

test('a touch on the drawing takes the part under it, and the list tells as many rules as the name', async ({
  page,
}) => {
  await open(page, 'rules/');
  for (const part of ['walls', 'bottom', 'corners', 'lid']) {
    const dot = page.locator(`.leaders:visible [data-part=${part}] circle`);
    // The first touch fetches what draws a chosen part, and the dots may move with it.
    await expect(async () => {
      const box = (await dot.boundingBox())!;
      await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
      await expect(heading(page)).toHaveText(`The ${part}`, { timeout: 1000 });
    }).toPass();
    await expect(name(page, part)).toHaveAttribute('aria-current', 'true');
    const told = await name(page, part).locator('xpath=..').locator('.rule-count').textContent();
    expect(await list(page).locator('[data-rule]').count()).toBe(Number.parseInt(told!, 10));
  }
});

test('warnings stand on top and are said in words; further rules are folded', async ({ page }) => {
  await open(page, 'rules/');
  const rows = list(page).locator('[data-rule]');
  const states = await rows.locator('.state-tag').allTextContents();
  const looks = states.filter((state) => state.trim() === 'look').length;
  expect(looks).toBeGreaterThan(0);
  expect(states.slice(0, looks).every((state) => state.trim() === 'look')).toBe(true);
  await expect(name(page, 'lid').locator('xpath=..')).toContainText(`${looks} to look at`);
  const hidden = rows.nth(10);
  await expect(hidden).toBeHidden();
  await list(page)
    .getByText(/^\d+ more$/)
    .click();
  await expect(hidden).toBeVisible();
});

test('the number is the one on the page of the rule, for a box of my own and in my units', async ({
  page,
}) => {
  await open(page, linkTo('rules/', { wall: 4, lidPlay: 0.4 }));
  await chooseUnits(page, 'inch');
  await name(page, 'lid').click();
  for (const rule of ['lid-clearance', 'lip-beside-lid-groove', 'pull-in-the-middle']) {
    const bold = list(page).locator(`[data-rule=${rule}] b`);
    await expect(bold).toHaveCount(1);
    await list(page)
      .locator('.more-rules')
      .evaluate((fold) => fold.setAttribute('open', ''));
    const here = await bold.locator('span:visible').first().textContent();
    await open(page, `rules/${rule}/`);
    await expect(
      page.locator('.for-my-box .answer-number').getByText(here!, { exact: true }).first(),
    ).toBeVisible();
    await page.goBack();
    await expect(heading(page)).toHaveText('The lid');
    // Until it is awake the page tells the example's numbers.
    await expect(page.locator('astro-island[ssr]:has(.point-at-box)')).toHaveCount(0);
  }
});

test('the drawing is of my box', async ({ page }) => {
  await open(page, linkTo('rules/', { kind: 'sawn' }));
  await expect(drawing(page).locator('.spoken')).toContainText('hinged lid');
});

test('a link to a part chooses it, and one to a stage opens its card, at once and later', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, 'rules/#walls');
  await expect(heading(page)).toHaveText('The walls');
  await page.evaluate(() => {
    location.hash = 'contents';
  });
  await expect(heading(page)).toHaveText('The inside');
  const stage = page.locator('#stage-joints');
  await expect(stage).toBeHidden();
  await page.evaluate(() => {
    location.hash = 'stage-joints';
  });
  await expect(stage.getByRole('link').first()).toBeInViewport();
  // From the page of a rule.
  await open(page, 'rules/finger-width/');
  await page.locator('.kicker a').first().click();
  await expect(stage.getByRole('link').first()).toBeInViewport();
});

test('every rule page’s links to parts and stages lead to something', async ({ page }) => {
  await open(page, 'rules/');
  const ids = await page.evaluate(() => [...document.querySelectorAll('main [id]')].map(({ id }) => id));
  for (const anchor of ['whole-box', 'walls', 'corners', 'grooves', 'bottom', 'lid', 'contents'])
    expect(ids).toContain(anchor);
  expect(ids.filter((id) => id.startsWith('stage-'))).toHaveLength(12);
});

test('on a phone the box, the names and the first rules stand on the first screen', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, 'rules/');
  await expect(drawing(page)).toBeInViewport({ ratio: 1 });
  await expect(name(page, 'whole box')).toBeInViewport({ ratio: 1 });
  await expect(list(page).getByRole('link').nth(1)).toBeInViewport({ ratio: 1 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  const rows = await page.getByRole('navigation', { name: 'Parts of the box' }).getByRole('listitem').all();
  for (const row of rows) expect((await row.boundingBox())!.height).toBeGreaterThanOrEqual(44);
  await name(page, 'corners').click();
  await expect(heading(page)).toHaveText('The corners');
  await expect(heading(page)).toBeInViewport({ ratio: 1 });
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('the example is drawn, its names lead to lists, and every rule is a link', async ({ page }) => {
    await page.goto('rules/');
    await expect(drawing(page).first()).toBeVisible();
    for (const part of ['walls', 'whole box', 'inside']) {
      await name(page, part).click();
      await expect(
        page.locator('.rules-beside').getByRole('heading', { name: `The ${part}` }),
      ).toBeInViewport();
    }
    const leads = await page
      .locator('.stage-card a')
      .evaluateAll((links) => links.map((link) => new URL((link as HTMLAnchorElement).href).pathname));
    expect(leads.map((path) => path.replace(/^.*\/rules/, 'rules')).sort()).toEqual([...rules].sort());
    const card = page.locator('.stage-card').first();
    await card.locator('summary').click();
    await expect(card.getByRole('link').first()).toBeVisible();
  });
});

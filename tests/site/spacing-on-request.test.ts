/** Text with more space, for who asks for it: by keyboard, with the numbers of WCAG 2.2, 1.4.12, kept, and there before anything is drawn. */
import { expect, type Page, test } from '@playwright/test';
import { isAccessible } from './every-page/accessible.ts';
import { open, pages } from './site.ts';

test.use({ locale: 'en-GB' });

/** How a paragraph stands, in shares of its type size. */
const stands = (page: Page) =>
  page
    .locator('.step-text > p')
    .first()
    .evaluate((paragraph) => {
      const style = getComputedStyle(paragraph);
      const size = Number.parseFloat(style.fontSize);
      const share = (value: string) => (Number.parseFloat(value) || 0) / size;
      return {
        letter: share(style.letterSpacing),
        word: share(style.wordSpacing),
        line: share(style.lineHeight),
        below: share(style.marginBottom),
        align: style.textAlign,
        measure: paragraph.getBoundingClientRect().width / size,
      };
    });
const choice = (page: Page) =>
  page.getByRole('checkbox', { name: 'More space between letters, words and lines' });

/** Opens my ruler by keyboard, and goes to the choice. */
async function choose(page: Page) {
  await page.locator('.my-ruler > summary').focus();
  await page.keyboard.press('Enter');
  // The choice of the rule, and then this one.
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(choice(page)).toBeFocused();
  await page.keyboard.press('Space');
}

test('chosen by keyboard, text stands as far apart as 1.4.12 says, flush left, in shorter lines, and goes back', async ({
  page,
}) => {
  const troubles = await open(page, 'lessons/joint-spacing/');
  const usual = await stands(page);
  await choose(page);
  await expect(page.locator('html')).toHaveAttribute('data-spacing', 'wide');
  const wide = await stands(page);
  expect(wide.letter).toBeCloseTo(0.12, 2);
  expect(wide.word).toBeCloseTo(0.16, 2);
  expect(wide.line).toBeGreaterThanOrEqual(1.5);
  expect(wide.below).toBeGreaterThanOrEqual(2);
  expect(wide.align).toBe('left');
  expect(wide.measure).toBeLessThan(usual.measure);
  // What the ruler opens stays on the page.
  expect(
    await page.locator('.my-ruler .choices').evaluate((open) => open.getBoundingClientRect().left),
  ).toBeGreaterThan(0);
  // Labels of drawings keep their places.
  expect(
    await page
      .locator('svg.drawing text')
      .first()
      .evaluate((label) => getComputedStyle(label).letterSpacing),
  ).toBe('normal');
  await page.keyboard.press('Space');
  expect(await stands(page)).toEqual(usual);
  await page.keyboard.press('Space');
  await isAccessible(page);
  expect(troubles).toEqual([]);
});

test('it is kept on the device, and there before any script of the page has come', async ({
  page,
  context,
}) => {
  await open(page, '');
  await choose(page);
  await page.route('**/_astro/*.js*', (route) => route.abort());
  await page.goto('lessons/joint-spacing/', { waitUntil: 'commit' });
  await page.locator('.step-text > p').first().waitFor();
  expect((await stands(page)).letter).toBeCloseTo(0.12, 2);
  await page.unroute('**/_astro/*.js*');
  // In another tab too, which follows when it goes back.
  await open(page, 'exercises/');
  const other = await context.newPage();
  await open(other, '');
  await expect(other.locator('html')).toHaveAttribute('data-spacing', 'wide');
  await choose(page);
  await expect(other.locator('html')).not.toHaveAttribute('data-spacing');
});

test('with it no page scrolls sideways on the narrowest phone', async ({ page }) => {
  test.setTimeout(120_000);
  await page.setViewportSize({ width: 320, height: 640 });
  await open(page, '');
  await page.evaluate(() => localStorage.setItem('rule-and-reason.spacing', 'wide'));
  const block = pages.find((path) => /^class\/\d/.test(path))!;
  const wide: string[] = [];
  for (const path of [
    ...[
      '',
      'lessons/',
      'lessons/wood-movement/',
      'rules/',
      'rules/finger-fit/',
      'troubles/',
      'my-box/',
      'words/',
    ],
    ...['exercises/', 'exercises/e5/', 'exercises/sheets/', 'class/', block, 'class/rubric/', 'class/cover/'],
    ...['scratch/', 'notebook/', 'notebook/cards/'],
  ]) {
    await open(page, path);
    await expect(page.locator('html')).toHaveAttribute('data-spacing', 'wide');
    if (await page.evaluate(() => document.documentElement.scrollWidth > 320)) wide.push(path);
  }
  expect(wide).toEqual([]);
});

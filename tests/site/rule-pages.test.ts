/** Pages of single rules: the answer first, one reader's units, one page of paper. */
import { expect, test } from '@playwright/test';
import { readPdf } from './pdf.ts';
import { chooseUnits, linkTo, open, pages } from './site.ts';

const rules = pages.filter((path) => /^rules\/[^/]+\/$/.test(path));
/** Both units of one fact, as an author writes them. */
const bothUnits =
  /\d\s(mm|cm|N|kg|g|°C|MPa)\s\([^)]*\d\s(in|lb|lbf|oz|°F|psi|ft)\b|\d\s(in|lb|lbf|oz|°F|psi|ft)\s\([^)]*\d\s(mm|cm|N|kg|g|°C|MPa)\b/;

test('no page of a rule shows a fact in both units, and each shows them on request', async ({ page }) => {
  test.setTimeout(480_000);
  const both: string[] = [];
  let onRequest = 0;
  for (const path of rules) {
    await open(page, path);
    const article = page.locator('article.rule');
    for (const system of ['mm', 'inch'] as const) {
      await page.evaluate((units) => {
        document.documentElement.dataset.units = units;
      }, system);
      // biome-ignore lint/performance/useDomNodeTextContent: what style hides does not count
      const found = bothUnits.exec(await article.innerText());
      if (found) both.push(`${path}: ${found[0]}`);
    }
    await page.getByLabel('show both units').check();
    const pairs = await article.evaluate(
      (element) =>
        [...element.querySelectorAll('span.mm + span.inch')].filter(
          (inch) => inch.checkVisibility() && inch.previousElementSibling!.checkVisibility(),
        ).length,
    );
    if (pairs > 0) onRequest++;
  }
  expect(both).toEqual([]);
  expect(onRequest).toBeGreaterThan(30);
});

test('each rule is one page of paper, A4 and Letter', async ({ page }) => {
  test.setTimeout(600_000);
  const long: string[] = [];
  for (const path of rules) {
    await open(page, path);
    for (const format of ['A4', 'Letter']) {
      const sheets = await readPdf(await page.pdf({ format }));
      if (sheets.length !== 1) long.push(`${path} ${format}: ${sheets.length}`);
    }
  }
  expect(rules.length).toBeGreaterThan(50);
  expect(long).toEqual([]);
});

test('on a phone the number for my box and its bar stand on the first screen', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  for (const path of [
    'wall-thickness',
    'lip-beside-lid-groove',
    'bottom-thickness',
    'odd-finger-count',
    'lid-clearance',
  ]) {
    await open(page, `rules/${path}/`);
    const answer = page.locator('.answer').first();
    for (const part of ['.answer-number', '.range-bar.mm'])
      expect(
        await answer.locator(part).evaluate((element) => element.getBoundingClientRect().bottom),
        `${path} ${part}`,
      ).toBeLessThanOrEqual(844);
  }
});

test('the answer is that of the reader’s box, follows the input beside it, and says why it is worked out so', async ({
  page,
}) => {
  await open(page, linkTo('rules/wall-thickness/', { wall: 11 }));
  await chooseUnits(page, 'mm');
  const answer = page.locator('.answer').first();
  await expect(answer.locator('.answer-number')).toHaveText(/11\smm/, { useInnerText: true });
  const wall = answer.getByRole('textbox', { name: /^wall thickness, in my box/ });
  await wall.fill('25');
  await wall.press('Enter');
  await expect(answer.locator('.answer-number')).toHaveText(/25\smm/, { useInnerText: true });
  await expect(answer.locator('.answer-says')).toContainText('outside the usual range');
  // Why it is so: the sum, with the number that the answer has.
  await page.goto('my-box/');
  await page.goto('rules/lip-beside-lid-groove/');
  const push = page.locator('.answer', { hasText: 'push the lid’s lip takes' }).locator('.answer-number');
  const sum = page.locator('.sum', { hasText: 'push the lid’s lip takes' });
  // biome-ignore lint/performance/useDomNodeTextContent: what style hides does not count
  await expect(sum.locator('.sum-result')).toContainText(await push.innerText());
  await expect(sum.locator('.symbols li').first()).toBeVisible();
});

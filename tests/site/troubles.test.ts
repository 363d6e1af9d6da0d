/** Pages of what goes wrong: found by pointing and by asking, with the reader's numbers, on one page of paper, and ways both ways. */
import { expect, test } from '@playwright/test';
import { readPdf } from './pdf.ts';
import { chooseUnits, linkTo, open, pages } from './site.ts';

test.use({ locale: 'en-GB' });

const troubles = pages.filter((path) => /^troubles\/[^/]+\/$/.test(path));
/** Both units of one fact, as an author writes them. */
const bothUnits = /\d\s(mm|cm|N|kg|g|°C|MPa)\s\([^)]*\d\s(in|lb|lbf|oz|°F|psi|ft)\b/;
const numbers = '.for-my-box .answer-number:visible, .for-my-box .answer-says:visible';

test('the number is that of the reader’s box: another play of the lid, another number and verdict', async ({
  page,
}) => {
  await open(page, linkTo('troubles/lid-jams/', { lidPlay: 0.2 }));
  const first = page.locator('.answer[data-check=lid-clearance]');
  await expect(first.locator('.answer-number')).toContainText('0.2 mm');
  await expect(first).toContainText('breaks something');
  const wide = page.getByRole('button', { name: /more/i }).first();
  await wide.click();
  await expect(first.locator('.answer-number')).not.toContainText('0.2 mm');
});

test('a box that opens another way is told so, and a measured number can be set there', async ({ page }) => {
  await open(page, linkTo('troubles/lid-jams/', { kind: 'sawn' }));
  await expect(page.locator('.answer.silent').first()).toContainText('My box has none');
  await open(page, 'troubles/box-rocks/');
  const twist = page.locator('.answer[data-check=twist]');
  await expect(twist).toContainText('Not measured yet');
  await twist.getByRole('textbox').fill('0.5');
  await twist.getByRole('textbox').press('Enter');
  await expect(twist.locator('.answer-number')).toContainText('0.5 mm');
  await expect(page.locator('[data-result=lidGapOfTwist] .answer-number')).toContainText('mm');
});

test('on a phone the likeliest cause and the number stand on the first screen', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  for (const path of ['lid-jams', 'bottom-rattles', 'miter-gapes', 'lip-splits', 'contents-do-not-fit']) {
    await open(page, `troubles/${path}/`);
    for (const place of ['.lead', '.answer-number']) {
      const box = (await page.locator(`.trouble ${place}`).first().boundingBox())!;
      expect(box.y + box.height, `${path} ${place}`).toBeLessThan(844);
    }
  }
});

test('each is one page of paper, A4 and Letter, and shows one reader’s units', async ({ page }) => {
  test.setTimeout(480_000);
  const [long, both]: [string[], string[]] = [[], []];
  for (const path of troubles) {
    await open(page, path);
    // biome-ignore lint/performance/useDomNodeTextContent: what style hides does not count
    const found = bothUnits.exec(await page.locator('article').innerText());
    if (found) both.push(`${path}: ${found[0]}`);
    for (const format of ['A4', 'Letter']) {
      const sheets = await readPdf(await page.pdf({ format }));
      if (sheets.length !== 1) long.push(`${path} ${format}: ${sheets.length}`);
    }
  }
  expect(troubles.length).toBeGreaterThanOrEqual(28);
  expect(long).toEqual([]);
  expect(both).toEqual([]);
});

test('inch readers see inches', async ({ page }) => {
  await open(page, 'troubles/lid-jams/');
  await chooseUnits(page, 'inch');
  await expect(page.locator(numbers).first()).toContainText(' in', { useInnerText: true });
  await expect(page.locator(numbers).first()).not.toContainText('mm', { useInnerText: true });
});

test('the list is sorted by the part that is pointed at; a trouble is one step away', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, 'troubles/');
  const list = page.locator('.rules-beside section:visible');
  await expect(list.getByRole('heading')).toHaveText('The lid');
  const first = (await list.getByRole('link').first().boundingBox())!;
  expect(first.y + first.height, 'on the first screen of a phone').toBeLessThan(844);
  const parts = page.getByRole('navigation', { name: 'Parts of the box' });
  await parts.getByRole('link', { name: 'corners', exact: true }).click();
  await expect(list.getByRole('heading')).toHaveText('The corners');
  await list.getByRole('link', { name: 'A miter gapes' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('A miter gapes');
  await page.locator('.kicker a').first().click();
  await expect(list.getByRole('heading')).toHaveText('The corners');
});

test('every trouble is in the list, and all of them without scripts', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(`${baseURL}troubles/`);
  const listed = await page
    .locator('.rules-beside a[href*="troubles/"]')
    .evaluateAll((links) => links.map((link) => new URL((link as HTMLAnchorElement).href).pathname));
  expect(new Set(listed).size).toBe(troubles.length);
  await context.close();
});

test('rules, lessons, the front page, the foot of a page and answers lead there', async ({ page }) => {
  await open(page, 'rules/lid-clearance/');
  await page.locator('.when-wrong').getByRole('link', { name: 'The lid sticks' }).click();
  await expect(page).toHaveURL(/troubles\/lid-jams\/$/);
  await page.locator('.causes').getByRole('link', { name: 'Play beside a sliding lid' }).first().click();
  await expect(page).toHaveURL(/rules\/lid-clearance\/$/);
  await open(page, 'lessons/wood-movement/');
  await page.locator('.troubles-told > summary').click();
  await expect(page.locator('.troubles-told').getByRole('link', { name: 'The lid sticks' })).toBeVisible();
  await page.locator('footer.site').getByRole('link', { name: 'Troubles' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What is wrong with it?');
  await open(page, '');
  await expect(page.getByRole('main').getByRole('link', { name: 'What is wrong with it?' })).toHaveAttribute(
    'href',
    /troubles\/$/,
  );
  await page.getByRole('button', { name: /ask/i }).first().click();
  await page.getByRole('textbox', { name: 'Ask' }).fill('lid stuck in damp weather');
  await expect(page.locator('.answers .answer-title').first()).toHaveAttribute(
    'href',
    /troubles\/lid-jams\/$/,
  );
});

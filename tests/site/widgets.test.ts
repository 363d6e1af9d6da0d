/**
 * What a reader does with the widgets, by keyboard and by pointer, in a real browser.
 * Over 150 lines: what every control does, by pointer and by key.
 */
import { expect, type Locator, type Page, test } from '@playwright/test';
import { chooseUnits, numberField, open, openDrawer, takePart } from './site.ts';

test.use({ locale: 'en-GB' });

/** The first lab of a lesson, uncovered. */
async function lab(page: Page, path: string, title: string): Promise<Locator> {
  await open(page, path);
  const skip = page.getByRole('button', { name: 'skip, show me' });
  while ((await skip.count()) > 0) await skip.first().click();
  // A lab may stand behind a fold of its step.
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('.more-of-it')) fold.open = true;
  });
  return page.getByRole('region', { name: title });
}
const slider = (within: Locator, name: string) => within.getByRole('slider', { name: `${name}, slider` });
const field = numberField;

const proportion = 'lessons/proportion/';
const insideOutside = 'Inside and outside of one box';

test.describe('a slider and its number field', () => {
  test('are one control: arrows move both by a shop step, and the figure and words follow', async ({
    page,
  }) => {
    const here = await lab(page, proportion, insideOutside);
    const wall = slider(here, 'wall thickness');
    await wall.focus();
    await expect(wall).toHaveAttribute('aria-valuetext', '8 millimeters');
    const before = await here.locator('svg').innerHTML();
    await page.keyboard.press('ArrowRight');
    await expect(wall).toHaveAttribute('aria-valuetext', '8.5 millimeters');
    await expect(field(here, 'wall thickness')).toHaveValue('8.5');
    expect(await here.locator('svg').innerHTML()).not.toBe(before);
    await page.keyboard.press('End');
    await expect(field(here, 'wall thickness')).toHaveValue('25');
  });

  test('take a length as it is written in either unit', async ({ page }) => {
    const here = await lab(page, proportion, insideOutside);
    const wall = field(here, 'wall thickness');
    await wall.fill('1/2 in');
    await wall.press('Enter');
    await expect(wall).toHaveValue('12.7');
    await wall.fill('0,8 cm');
    await wall.press('Tab');
    await expect(wall).toHaveValue('8');
  });

  test('say what was expected beside a text that cannot be used, and keep the last good value', async ({
    page,
  }) => {
    const here = await lab(page, proportion, insideOutside);
    const wall = field(here, 'wall thickness');
    for (const [text, said] of [
      ['thick', 'Write a length'],
      ['300', 'from 3'],
      ['21 °C', 'belongs to a temperature'],
      ['', 'Write a length'],
    ] as const) {
      await wall.fill(text);
      await wall.press('Enter');
      await expect(here.getByRole('alert')).toContainText(said);
      await expect(here.getByRole('alert')).toContainText('8 mm stays in use');
      await expect(wall).toHaveAttribute('aria-invalid', 'true');
      await expect(slider(here, 'wall thickness')).toHaveAttribute('aria-valuetext', '8 millimeters');
    }
    await wall.press('Escape');
    await expect(wall).toHaveValue('8');
    await expect(here.getByRole('alert')).toHaveCount(0);
  });

  test('follow the pointer', async ({ page }) => {
    const here = await lab(page, proportion, insideOutside);
    await slider(here, 'wall thickness').scrollIntoViewIfNeeded();
    const box = (await slider(here, 'wall thickness').boundingBox())!;
    await page.mouse.move(box.x + box.width * 0.3, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.9, box.y + box.height / 2, { steps: 5 });
    await page.mouse.up();
    expect(Number(await field(here, 'wall thickness').inputValue())).toBeGreaterThan(18);
  });
});

test.describe('units', () => {
  test('come from the browser’s language first', async ({ browser, baseURL }) => {
    for (const [locale, units] of [
      ['en-US', 'inch'],
      ['de-DE', 'mm'],
    ] as const) {
      const context = await browser.newContext({ locale, baseURL: baseURL! });
      const page = await context.newPage();
      await open(page, '');
      await expect(page.locator('html')).toHaveAttribute('data-units', units);
      await context.close();
    }
  });

  test('are those of the first language, not of a region named later', async ({ page }) => {
    await page.addInitScript(() =>
      Object.defineProperty(navigator, 'languages', { get: () => ['de', 'en-US', 'en'] }),
    );
    await open(page, '');
    await expect(page.locator('html')).toHaveAttribute('data-units', 'mm');
  });

  test('switch how numbers are written, move no value, and are remembered', async ({ page }) => {
    const here = await lab(page, proportion, insideOutside);
    await chooseUnits(page, 'inch');
    await expect(field(here, 'wall thickness')).toHaveValue('5/16');
    await chooseUnits(page, 'mm');
    // 8 mm is not 5/16 in: had the value moved, it would be 7.94 now.
    await expect(field(here, 'wall thickness')).toHaveValue('8');
    await chooseUnits(page, 'inch');
    await page.reload();
    await expect(page.locator('html')).toHaveAttribute('data-units', 'inch');
  });

  test('are those in which a drawing is described, and the description follows the control', async ({
    page,
  }) => {
    const here = await lab(page, proportion, insideOutside);
    const drawing = here.getByRole('img').first();
    await expect(drawing).toHaveAccessibleName(/\d\smm\b/);
    await expect(drawing).not.toHaveAccessibleName(/\d\sin\b/);
    await chooseUnits(page, 'inch');
    await expect(drawing).toHaveAccessibleName(/5\/16\sin\b/);
    await expect(drawing).not.toHaveAccessibleName(/\bmm\b/);
    await slider(here, 'wall thickness').focus();
    await page.keyboard.press('ArrowRight');
    await expect(drawing).toHaveAccessibleName(/11\/32\sin\b/);
  });

  test('give readers in inches their own steps', async ({ page }) => {
    const here = await lab(page, proportion, insideOutside);
    await chooseUnits(page, 'inch');
    await slider(here, 'wall thickness').focus();
    await page.keyboard.press('ArrowRight');
    await expect(field(here, 'wall thickness')).toHaveValue('11/32');
  });
});

test('every result opens its reason: equation, the reader’s numbers, what moves it most, the source', async ({
  page,
}) => {
  const here = await lab(page, proportion, insideOutside);
  await here.getByText('inside length to width').first().click();
  const reason = here.locator('.reason').first();
  await expect(reason.locator('math')).toHaveCount(2);
  await expect(reason).toContainText('180');
  await expect(reason).toContainText('What moves it most');
  await expect(reason).toContainText('Evidence: geometry');
});

test('new numbers are checked, and the usual slip is named', async ({ page }) => {
  await open(page, proportion);
  const exercise = page.locator('.exercise').first();
  const answer = exercise.getByRole('textbox');
  await answer.fill('1.5');
  await exercise.getByRole('button', { name: 'check' }).click();
  await expect(exercise.getByRole('status')).toContainText(/outside/);
  // Outside 150 by 100, walls 10: 130 / 80 = 1.625.
  await answer.fill('1.625');
  await exercise.getByRole('button', { name: 'check' }).click();
  await expect(exercise.getByRole('status')).toHaveText('Right.');
});

test.describe('the current box', () => {
  test('follows the reader from page to page and over a reload', async ({ page }) => {
    await open(page, 'my-box/#walls');
    const wall = numberField(page, 'wall thickness');
    await wall.fill('11');
    await wall.press('Enter');
    await expect(page.getByRole('slider', { name: 'wall thickness, slider' })).toHaveAttribute(
      'aria-valuetext',
      '11 millimeters',
    );
    await open(page, 'rules/wall-thickness/');
    await expect(page.locator('.for-my-box')).toContainText('11 mm');
    await page.reload();
    await expect(page.locator('.for-my-box')).toContainText('11 mm');
  });

  test('is not touched by the numbers a lesson pins, until they are put into it', async ({ page }) => {
    const here = await lab(page, 'lessons/joint-spacing/', 'Fingers of one corner');
    await expect(here).toContainText('starts from the lesson’s numbers');
    await field(here, 'finger width').fill('7');
    await field(here, 'finger width').press('Enter');
    const mine = page.locator('.put-in-my-box');
    await mine.scrollIntoViewIfNeeded();
    await expect(field(mine, 'finger width')).toHaveValue('8');
    await here.getByRole('button', { name: 'put these in my box' }).click();
    await mine.scrollIntoViewIfNeeded();
    await expect(field(mine, 'finger width')).toHaveValue('7');
  });

  test('travels in a link', async ({ page, context }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await open(page, 'my-box/#walls');
    const wall = numberField(page, 'wall thickness');
    await wall.fill('12');
    await wall.press('Enter');
    await expect(page.getByRole('slider', { name: 'wall thickness, slider' })).toHaveAttribute(
      'aria-valuetext',
      '12 millimeters',
    );
    await openDrawer(page, 'share');
    await page.getByRole('button', { name: 'copy a link' }).click();
    const link = await page.evaluate(() => navigator.clipboard.readText());
    await page.evaluate(() => localStorage.clear());
    await page.goto('about:blank');
    await page.goto(link);
    await takePart(page, 'walls');
    await expect(numberField(page, 'wall thickness')).toHaveValue('12');
  });

  for (const [what, hash, kept, says] of [
    ['a damaged link', '#box=1.%%%', undefined, 'Your own box is as it was'],
    [
      'a hostile link',
      `#box=1.${Buffer.from('{"wall":"<img src=x onerror=alert(1)>"}').toString('base64url')}`,
      undefined,
      'Your own box is as it was',
    ],
    ['a damaged store', '', '{"version":1,"box":{"wall":-4}}', 'The example is shown instead'],
  ] as const) {
    test(`falls back to the example with a message after ${what}, and what was found can be copied`, async ({
      page,
    }) => {
      if (kept) {
        await page.goto('');
        await page.evaluate((text) => localStorage.setItem('rule-and-reason.box', text), kept);
        // Another page that wakes up with it must not write over it.
        await open(page, 'rules/wall-thickness/');
      }
      await page.goto('about:blank');
      await page.goto(`my-box/${hash}`);
      await expect(page.getByRole('alert').first()).toContainText(says);
      await expect(page.getByRole('textbox', { name: 'What was found' })).toHaveValue(/.+/);
      await takePart(page, 'walls');
      await expect(numberField(page, 'wall thickness')).toHaveValue('8');
    });
  }
});

test('rules are found by words, stage and evidence', async ({ page }) => {
  await open(page, 'rules/');
  await page.locator('#a-z > summary').click();
  const found = page.locator('#a-z').getByRole('status');
  await expect(page.locator('#a-z astro-island[ssr]')).toHaveCount(0);
  const all = Number((await found.textContent())!.split(' ')[0]);
  await page.getByRole('searchbox', { name: 'words' }).fill('jam');
  await expect(page.locator('#a-z').getByRole('link', { name: /lid/i }).first()).toBeVisible();
  expect(Number((await found.textContent())!.split(' ')[0])).toBeLessThan(all);
  await page.getByRole('searchbox', { name: 'words' }).fill('');
  await page.getByRole('combobox', { name: 'stage of the work' }).selectOption('joints');
  await expect(page.locator('.rule-list li .meta').first()).toContainText('joints');
  await page.getByRole('searchbox', { name: 'words' }).fill('zebra');
  await expect(page.getByText('No rule fits all of this')).toBeVisible();
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('a lesson shows its figures, the numbers of the example and the reasons', async ({ page }) => {
    await page.goto(proportion);
    await page.getByText('From thin walls to thick').click();
    const here = page.getByRole('region', { name: insideOutside });
    await expect(here.locator('svg').first()).toBeVisible();
    await expect(here.locator('.result').first()).toContainText('1.5');
    await here.locator('.result summary').first().click();
    await expect(here.locator('.reason math').first()).toBeVisible();
  });
});

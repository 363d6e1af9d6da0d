/** A guess inside its figure, and a lesson in steps: by hand, finger and keys, without JavaScript and on paper. */
import { expect, type Page, test } from '@playwright/test';
import { open } from './site.ts';

const path = 'lessons/wood-movement/';
const card = (page: Page) => page.locator('[data-guess="lid-august"]');
const inInches = { locale: 'en-US' };
test.use(inInches);

test('the mark is dragged, the truth is drawn, the mark stays and one sentence compares the two', async ({
  page,
}) => {
  await open(page, path);
  const guess = card(page);
  await expect(guess).not.toContainText('jams');
  await guess.locator('.guess-bar').scrollIntoViewIfNeeded();
  const knob = (await guess.locator('.mark-knob').boundingBox())!;
  await page.mouse.move(knob.x + 13, knob.y + 13);
  await page.mouse.down();
  await page.mouse.move(knob.x + 160, knob.y + 20, { steps: 5 });
  await page.mouse.up();
  await expect(guess.locator('.ghost')).toBeVisible();
  await expect(guess.getByRole('textbox')).not.toHaveValue('');
  await guess.getByRole('button', { name: 'Let August come' }).click();
  await expect(guess.locator('.guess-answer')).toBeFocused();
  await expect(guess.locator('.guess-answer')).toContainText(
    /You said .*in\. The lid grows 0\.0\d+.* so it jams/,
    { useInnerText: true },
  );
  await expect(guess.locator('.ghost')).toBeVisible();
  await expect(guess.locator('.because')).toBeVisible();
  await page.reload();
  await expect(guess.locator('.guess-answer')).toContainText('You said', { useInnerText: true });
  await guess.getByRole('button', { name: 'guess again' }).click();
  await expect(guess.locator('.because')).toBeHidden();
  await expect(guess.locator('.ghost')).toHaveCount(0);
  await expect(guess).not.toContainText('jams');
});

test('keys set the mark by the marks of a rule, and Enter gives it', async ({ page }) => {
  await open(page, path);
  const guess = card(page);
  const handle = guess.getByRole('slider');
  await handle.focus();
  for (let i = 0; i < 8; i++) await page.keyboard.press('ArrowRight');
  await expect(handle).toHaveAttribute('aria-valuetext', /0\.125 inches, 1 eighth/);
  await page.keyboard.press('PageUp');
  await expect(handle).toHaveAttribute('aria-valuetext', /0\.25|1 quarter/);
  await page.keyboard.press('Home');
  await page.keyboard.press('Enter');
  await expect(guess.locator('.guess-answer')).toContainText('You expected nothing.');
});

test('a length is typed as a fraction, with its unit or a comma, and what cannot be read loses nothing', async ({
  page,
}) => {
  await open(page, path);
  const guess = card(page);
  const field = guess.getByRole('textbox');
  await field.fill('a bit');
  await field.press('Enter');
  await expect(guess.locator('.message')).not.toBeEmpty();
  await expect(field).toHaveValue('a bit');
  await field.fill('1/32');
  await field.press('Enter');
  await expect(guess.locator('.guess-answer')).toContainText('You said 1/32 in.', { useInnerText: true });
});

test('without a mark nothing is given, and the bar says what to do; to be shown at once is a way too', async ({
  page,
}) => {
  await open(page, path);
  const guess = card(page);
  await guess.getByRole('button', { name: 'Let August come' }).click();
  await expect(guess.locator('.message')).toContainText('type 0');
  await guess.getByRole('button', { name: 'just show me' }).press('Enter');
  await expect(guess.locator('.guess-answer')).not.toContainText('You said', { useInnerText: true });
  await expect(guess.locator('.guess-answer')).toContainText('so it jams', { useInnerText: true });
  await guess.getByRole('slider', { name: 'growth rings to the face, slider' }).press('End');
  await expect(guess.locator('.says')).toContainText('still slides');
});

test('one of the drawn outcomes is picked, by keys too', async ({ page }) => {
  await open(page, path);
  const guess = page.locator('[data-guess="jams-with-play"]');
  await guess.getByRole('button', { name: 'Pull' }).click();
  await expect(guess.locator('.message')).toContainText('Pick one first');
  await guess.getByRole('radio').first().focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await expect(guess.getByRole('radio', { name: 'the long one' })).toBeChecked();
  await page.keyboard.press('Enter');
  await expect(guess.locator('.guess-answer')).toContainText('Not as you said.');
  await expect(guess.locator('.outcome.right')).toContainText('so it is');
  await expect(guess.locator('.outcome.mine')).toContainText('your pick');
});

test('a finger that swipes up over the drawing scrolls the page and sets no mark', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({
    ...inInches,
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    baseURL,
  });
  const page = await context.newPage();
  await open(page, path);
  const guess = card(page);
  await guess.locator('.guess-sheet').scrollIntoViewIfNeeded();
  const box = (await guess.locator('.mark-knob').boundingBox())!;
  const before = await page.evaluate(() => scrollY);
  const touch = await context.newCDPSession(page);
  const [x, y] = [box.x + 13, box.y + 13];
  await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
  for (let i = 1; i <= 8; i++)
    await touch.send('Input.dispatchTouchEvent', {
      type: 'touchMove',
      touchPoints: [{ x: x + 2, y: y - i * 25 }],
    });
  await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(before + 50);
  await expect(guess.locator('.ghost')).toHaveCount(0);
  await context.close();
});

test('the contents tell where one is and what is done, and lead back after a reload', async ({ page }) => {
  await open(page, path);
  const contents = page.getByRole('navigation', { name: 'In this lesson' });
  await expect(contents.getByRole('link', { name: 'By August' })).toHaveAttribute('aria-current', 'step');
  await card(page).getByRole('button', { name: 'just show me' }).click();
  await expect(contents.getByRole('link', { name: /^By August ?, skipped$/ })).toBeVisible();
  await page.getByRole('link', { name: 'How much less does it move with the rings upright?' }).click();
  await expect(
    page.getByRole('heading', { name: 'How much less does it move with the rings upright?' }),
  ).toBeFocused();
  await expect(contents.getByRole('link', { name: 'Rings upright' })).toHaveAttribute('aria-current', 'step');
  await expect(contents).toContainText('1 of 7 done');
  await page.goto('/');
  await page.goto(path);
  await page.getByRole('link', { name: 'Back to where you were: Rings upright' }).click();
  await expect(
    page.getByRole('heading', { name: 'How much less does it move with the rings upright?' }),
  ).toBeFocused();
  await contents.getByRole('button', { name: 'start over' }).click();
  await expect(contents).toContainText('0 of 7 done');
});

test('on a phone a bar at the foot holds the place, opens the list upward and leads on', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, path);
  const bar = page.locator('.place-bar');
  await expect(bar.getByRole('button')).toHaveText('1 of 7 By August');
  await bar.getByRole('button').click();
  await expect(page.getByRole('link', { name: 'Jams with play left' })).toBeInViewport();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('link', { name: 'Jams with play left' })).toBeHidden();
  await expect(bar.getByRole('button')).toBeFocused();
  await bar.getByRole('link', { name: 'Next' }).click();
  await expect(bar.getByRole('button')).toHaveText('2 of 7 Rings upright');
});

test('without JavaScript the outcome stays covered and can be shown', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false, baseURL });
  const page = await context.newPage();
  await page.goto(path);
  const guess = card(page);
  await expect(guess.getByRole('button')).toHaveCount(0);
  await expect(guess.locator('.because')).toBeHidden();
  await guess.getByText('Show what happens').click();
  await expect(guess.locator('.because')).toBeVisible();
  await expect(guess.locator('.outcome')).toContainText('so it jams', { useInnerText: true });
  await context.close();
});

test('paper has a line for a guess that was not made, and the one that was', async ({ page }) => {
  await open(page, path);
  await page.emulateMedia({ media: 'print' });
  await expect(card(page)).toContainText('My guess ____');
  await expect(card(page).locator('.because')).toBeHidden();
  await page.emulateMedia({ media: 'screen' });
  await card(page).getByRole('textbox').fill('1/16');
  await card(page).getByRole('textbox').press('Enter');
  await page.emulateMedia({ media: 'print' });
  await expect(card(page).locator('.guess-answer')).toContainText('You said 1/16 in', { useInnerText: true });
});

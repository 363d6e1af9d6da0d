/** The front page: the guess that hooks, three doors, and behind them the reader's own place and box. */
import { expect, type Page, test } from '@playwright/test';
import { linkTo, open } from './site.ts';

test.use({ locale: 'en-GB' });

const door = 'li:has(> h2 > a[href$="/my-box/"])';

test('who has no box yet sees the example, and the way to it', async ({ page }) => {
  await open(page, '');
  const box = page.locator(door);
  await expect(box.locator('svg.small-drawing')).toBeVisible();
  await box.getByRole('link', { name: 'Begin with the example' }).click();
  await expect(page).toHaveURL(/my-box/);
});

test('a returning reader sees the drawing, the name and the state of their box, also after a reload', async ({
  page,
}) => {
  const box = page.locator(door);
  await open(page, linkTo('', { name: 'Tea box' }));
  // The example's own two, since only the name differs.
  await expect(box.locator('.way')).toHaveText('Tea box: two things to look at');
  const drawn = await box.locator('svg.small-drawing').innerHTML();
  await open(page, linkTo('', { name: 'Tea box', kind: 'lift-off', wall: 12 }));
  await expect.poll(() => box.locator('svg.small-drawing').innerHTML()).not.toBe(drawn);
  await expect(box.locator('.way')).toHaveText(/^Tea box: \w+ things to look at$/);
  const says = (await box.locator('.way').textContent())!;
  await page.reload();
  await expect(box.locator('.way')).toHaveText(says);
  await box.getByRole('link', { name: 'Tea box' }).click();
  await expect(page.locator('h1')).toBeVisible();
});

test('a box that cannot be built says so at its door', async ({ page }) => {
  await open(page, linkTo('', { name: 'Matchbox', sizeFrom: 'outside', wantedHeight: 15, bottomLip: 14 }));
  await expect(page.locator(door).locator('.way')).toHaveText('Matchbox: it cannot be built yet');
});

test('the doors stand in the order of who comes: with a phone a reader asks first', async ({ page }) => {
  await open(page, '');
  const tops = () =>
    page.locator('.doors > li').evaluateAll((doors) =>
      doors
        .map((each) => ({
          name: each.querySelector('h2')!.textContent,
          ...each.getBoundingClientRect().toJSON(),
        }))
        .sort((one, other) => one.top - other.top || one.left - other.left)
        .map(({ name }) => name),
    );
  expect(await tops()).toEqual(['Learn', 'Ask', 'My box']);
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await tops()).toEqual(['Ask', 'Learn', 'My box']);
});

const guess = (page: Page) => page.locator('[data-guess="lid-august"]');
const phone = { width: 390, height: 844 };

/** The handle's middle, on the screen. */
async function knobOf(page: Page) {
  const knob = (await guess(page).locator('.mark-knob').boundingBox())!;
  return { x: knob.x + knob.width / 2, y: knob.y + knob.height / 2 };
}

for (const [name, size] of [
  ['wide', { width: 1280, height: 900 }],
  ['narrow', phone],
] as const)
  test(`on a ${name} screen the handle goes where the pointer goes, and the mark stays beside the truth`, async ({
    page,
  }) => {
    await page.setViewportSize(size);
    await open(page, '');
    const from = await knobOf(page);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 100, from.y + 3, { steps: 6 });
    const to = await knobOf(page);
    // Within half a step of the rule.
    expect(Math.abs(to.x - from.x - 100)).toBeLessThan(4);
    await page.mouse.up();
    await expect(guess(page).locator('.ghost')).toHaveCount(1);
    await guess(page).getByRole('button', { name: 'Let August come' }).click();
    await expect(guess(page).locator('.guess-answer')).toBeFocused();
    await expect(guess(page).locator('svg.drawing:visible').first()).toContainText('it jams');
    await expect(guess(page).locator('.ghost')).toHaveCount(1);
    await expect(guess(page).getByText('Lesson 4 has the whole reason')).toBeVisible();
    await page.reload();
    await expect(guess(page).locator('.guess-answer')).toContainText('You said');
    // What else moves it comes with the calculation, and then the drawing follows.
    await guess(page).getByRole('slider').press('End');
    await expect(guess(page).locator('svg.drawing:visible').first()).toContainText('it slides');
  });

test('keys alone guess, look and cover again', async ({ page }) => {
  await open(page, '');
  await guess(page).getByRole('slider').focus();
  for (let i = 0; i < 10; i++) await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await expect(guess(page).locator('.guess-answer')).toContainText('You said 1 mm.', { useInnerText: true });
  await page.keyboard.press('Tab');
  await expect(page.locator(':focus')).toHaveText('guess again');
  await page.keyboard.press('Enter');
  await expect(guess(page)).not.toContainText('it jams');
});

test('the guess made here is open in its lesson, and the other way round', async ({ page }) => {
  await open(page, '');
  await guess(page).getByRole('textbox').fill('2');
  await guess(page).getByRole('textbox').press('Enter');
  await expect(guess(page).locator('.guess-answer')).toBeVisible();
  await open(page, 'lessons/wood-movement/');
  await expect(guess(page).locator('.guess-answer')).toContainText('You said 2 mm.', { useInnerText: true });
  await guess(page).getByRole('button', { name: 'guess again' }).click();
  await open(page, '');
  await expect(guess(page).getByRole('button', { name: 'Let August come' })).toBeVisible();
});

test('a finger drags the mark sideways, and a swipe up over the drawing scrolls and marks nothing', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ viewport: phone, hasTouch: true, baseURL });
  const page = await context.newPage();
  await open(page, '');
  const touch = await context.newCDPSession(page);
  const swipe = async (dx: number, dy: number) => {
    const { x, y } = await knobOf(page);
    await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
    for (let i = 1; i <= 8; i++)
      await touch.send('Input.dispatchTouchEvent', {
        type: 'touchMove',
        touchPoints: [{ x: x + (dx * i) / 8, y: y + (dy * i) / 8 }],
      });
    await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  };
  await swipe(4, -200);
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(50);
  await expect(guess(page).locator('.ghost')).toHaveCount(0);
  const before = await knobOf(page);
  await swipe(90, 6);
  await expect(guess(page).locator('.ghost')).toHaveCount(1);
  expect(Math.abs((await knobOf(page)).x - before.x - 90)).toBeLessThan(8);
  await context.close();
});

for (const [who, kept] of [
  ['a first visit', {}],
  [
    'a returning reader',
    {
      progress: JSON.stringify({ last: 'wood-movement', lessons: { 'wood-movement': { steps: {} } } }),
      guesses: JSON.stringify({ 'lid-august': '2' }),
    },
  ],
] as const)
  for (const size of [phone, { width: 1280, height: 900 }])
    test(`nothing moves while the page wakes: ${who}, ${size.width} px`, async ({ page }) => {
      await page.setViewportSize(size);
      await page.addInitScript((kept) => {
        for (const [key, text] of Object.entries(kept)) localStorage.setItem(`rule-and-reason.${key}`, text);
        const shifts: number[] = [];
        Object.assign(window, { shifts });
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries())
            shifts.push((entry as PerformanceEntry & { value: number }).value);
        }).observe({ type: 'layout-shift', buffered: true });
      }, kept);
      await open(page, '');
      await page.waitForTimeout(1000);
      const moved = await page.evaluate(() =>
        (window as unknown as { shifts: number[] }).shifts.reduce((sum, value) => sum + value, 0),
      );
      expect(moved).toBeLessThan(0.01);
    });

test('without JavaScript there is no dead control, and the outcome can be shown', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ javaScriptEnabled: false, baseURL });
  const page = await context.newPage();
  await page.goto('');
  await expect(page.locator('main :is(input, button, select):visible')).toHaveCount(0);
  await expect(guess(page).locator('svg.drawing:visible')).toHaveCount(1);
  await expect(guess(page).locator('.because')).toBeHidden();
  await guess(page).getByText('Show what happens').click();
  await expect(guess(page).locator('.outcome')).toContainText('so it jams', { useInnerText: true });
  await expect(page.locator('.doors .way a').first()).toHaveAttribute(
    'href',
    /lessons\/start-from-what-goes-in-it/,
  );
  await context.close();
});

test('on paper stands the guess that was not made, without the outcome', async ({ page }) => {
  await open(page, '');
  await page.emulateMedia({ media: 'print' });
  await expect(guess(page)).toContainText('My guess ____');
  await expect(guess(page).locator('svg.drawing:visible')).toHaveCount(1);
  await expect(guess(page).locator('.because')).toBeHidden();
});

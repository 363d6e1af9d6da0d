/** A number of the box on its ruler: hands, keys, its band, and what is said when the worker cannot be fetched. */
import { expect, type Locator, type Page, test } from '@playwright/test';
import { isBuilt, linkTo, open } from './site.ts';

test.use({ locale: 'en-US' });

const control = (page: Page, label: string) =>
  page.locator('.ruler-control').filter({ has: page.getByText(label, { exact: false }).first() });
const slider = (page: Page, label: string) => page.getByRole('slider', { name: `${label}, slider` });
const heard = (page: Page, label: string, text: string) =>
  expect(slider(page, label)).toHaveAttribute('aria-valuetext', text);

/** What is seen of a sentence, in the reader's units. */
const tells = (says: Locator, text: string) =>
  expect(says).toHaveText(new RegExp(RegExp.escape(text)), { useInnerText: true });

/** A finger on an element, by raw touches: so the browser decides whether it scrolls. */
async function finger(
  page: Page,
  on: Locator,
  path: readonly (readonly [x: number, y: number])[],
): Promise<void> {
  const box = (await on.boundingBox())!;
  const session = await page.context().newCDPSession(page);
  const at = ([x, y]: readonly [number, number]) => [{ x: box.x + x, y: box.y + y }];
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(path[0]!) });
  for (const place of path.slice(1))
    await session.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(place) });
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

test.describe('with a mouse and keys', () => {
  test('a press takes the mark it points at, a drag goes on, and both leave one step to take back', async ({
    page,
  }) => {
    await open(page, 'my-box/#bottom');
    const ruler = control(page, 'bottom thickness').locator('.ruler');
    const { x, y, width } = (await ruler.boundingBox())!;
    await heard(page, 'bottom thickness', '1 quarter of an inch');
    await page.mouse.move(x + width * 0.5, y + 30);
    await page.mouse.down();
    const jumped = await slider(page, 'bottom thickness').inputValue();
    expect(jumped).not.toBe('8');
    await page.mouse.move(x + width * 0.8, y + 30, { steps: 6 });
    expect(Number(await slider(page, 'bottom thickness').inputValue())).toBeGreaterThan(Number(jumped));
    await page.mouse.up();
    await page.getByRole('button', { name: /^undo/ }).click();
    await heard(page, 'bottom thickness', '1 quarter of an inch');
  });

  test('arrows go by one mark, Page by four, Home to the least', async ({ page }) => {
    await open(page, 'my-box/#bottom');
    const keys = slider(page, 'bottom thickness');
    await keys.press('ArrowRight');
    await heard(page, 'bottom thickness', '9 thirty-seconds of an inch');
    await keys.press('PageUp');
    await heard(page, 'bottom thickness', '13 thirty-seconds of an inch');
    await keys.press('PageDown');
    await keys.press('ArrowLeft');
    await heard(page, 'bottom thickness', '1 quarter of an inch');
    await keys.press('Home');
    // 2 mm is the least: the first mark from there is 3/32 in.
    await heard(page, 'bottom thickness', '3 thirty-seconds of an inch');
  });

  test('the stepper takes one mark a press, and goes on while it is held', async ({ page }) => {
    await open(page, 'my-box/#bottom');
    const more = page.getByRole('button', { name: 'more: bottom thickness' });
    await more.click();
    await heard(page, 'bottom thickness', '9 thirty-seconds of an inch');
    await more.press('Enter');
    await heard(page, 'bottom thickness', '5 sixteenths of an inch');
    await more.hover();
    await page.mouse.down();
    await expect(slider(page, 'bottom thickness')).toHaveAttribute(
      'aria-valuetext',
      /(1[3-9]|7 sixteenths|1 half)/,
      {
        timeout: 5000,
      },
    );
    await page.mouse.up();
    const after = await slider(page, 'bottom thickness').inputValue();
    await page.waitForTimeout(400);
    await expect(slider(page, 'bottom thickness')).toHaveValue(after);
    const { width, height } = (await more.boundingBox())!;
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
  });

  test('text that is no number gets words below it, and the last number stays', async ({ page }) => {
    await open(page, 'my-box/#bottom');
    const field = control(page, 'bottom thickness').getByRole('textbox');
    await field.fill('thick');
    await field.press('Enter');
    await expect(control(page, 'bottom thickness').getByRole('alert')).toContainText(
      '1/4\u00a0in stays in use',
    );
    await heard(page, 'bottom thickness', '1 quarter of an inch');
  });

  test('whole fingers hold the height: what the lid takes comes from the room above, and comes back', async ({
    page,
  }) => {
    await open(page, 'my-box/#lid');
    const height = () => page.locator('.part-size').first().textContent();
    const before = await height();
    const lid = slider(page, 'lid thickness');
    await lid.press('ArrowRight');
    await lid.press('ArrowLeft');
    await heard(page, 'lid thickness', '3 sixteenths of an inch');
    expect(await height()).toBe(before);
    await expect(page.locator('.bench-top')).toContainText('the example, until you change it');
  });
});

test.describe('the band', () => {
  test('says where every rule is kept, by the range of the page for a bottom of solid wood', async ({
    page,
  }) => {
    await open(page, 'my-box/#bottom');
    const says = control(page, 'bottom thickness').locator('.band-says');
    await tells(says, 'Keeps every rule from 1/4\u00a0in to 5/16\u00a0in.');
    await slider(page, 'bottom thickness').press('PageUp');
    await tells(says, 'outside · Keeps every rule from 1/4\u00a0in to 5/16\u00a0in.');
    await says.getByText('why?').click();
    await tells(says, 'The rule on thickness of the solid bottom');
    await expect(control(page, 'bottom thickness').locator('.band-kept')).toHaveCount(1);
    await expect(slider(page, 'bottom thickness')).toHaveAccessibleName('bottom thickness, slider');
  });

  test('goes by the reader’s ruler', async ({ page }) => {
    await open(page, linkTo('my-box/', { bottomThickness: 7 }));
    await page.goto('my-box/#bottom');
    const says = control(page, 'bottom thickness').locator('.band-says');
    await page.locator('.my-ruler summary').click();
    await page.getByRole('radio', { name: '1 mm' }).click();
    await tells(says, 'Keeps every rule from 6\u00a0mm to 8\u00a0mm.');
  });

  test('whose worker cannot be fetched says so beside the number, and comes with the next change', async ({
    page,
  }) => {
    let gone = true;
    await page.route(/worker-[\w-]+\.js/, (route) => (gone ? route.abort() : route.continue()));
    await open(page, 'my-box/#bottom');
    const says = control(page, 'bottom thickness').locator('.band-says');
    await tells(says, 'could not be fetched');
    gone = false;
    await slider(page, 'bottom thickness').press('ArrowRight');
    await tells(says, 'Keeps every rule from 1/4\u00a0in to 5/16\u00a0in.');
  });
});

test.describe('kept for use without a network', () => {
  test.use({ serviceWorkers: 'allow' });

  test('works without a network once the site is kept', async ({ page, context }) => {
    expect(isBuilt('service-worker.js')).toBe(true);
    await open(page, 'my-box/');
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.waitForFunction(() => navigator.serviceWorker.controller);
    await context.setOffline(true);
    await page.reload();
    await page.goto('my-box/#bottom');
    await expect(control(page, 'bottom thickness').locator('.band-says')).toContainText(
      'Keeps every rule from',
    );
  });
});

test.describe('with a finger on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test('a tap changes nothing, a swipe up scrolls and changes nothing, a pull sideways moves it by as much', async ({
    page,
  }) => {
    await open(page, 'my-box/#bottom');
    const ruler = control(page, 'bottom thickness').locator('.ruler');
    await ruler.scrollIntoViewIfNeeded();
    await heard(page, 'bottom thickness', '1 quarter of an inch');
    await finger(page, ruler, [[250, 20]]);
    await heard(page, 'bottom thickness', '1 quarter of an inch');
    const top = await page.evaluate(() => scrollY);
    await finger(
      page,
      ruler,
      Array.from({ length: 12 }, (_, step) => [250 + step, 20 - 20 * step] as const),
    );
    await expect.poll(() => page.evaluate(() => scrollY)).not.toBe(top);
    await heard(page, 'bottom thickness', '1 quarter of an inch');
    await ruler.scrollIntoViewIfNeeded();
    await finger(
      page,
      ruler,
      Array.from({ length: 12 }, (_, step) => [60 + 6 * step, 20 + (step % 2)] as const),
    );
    await expect(slider(page, 'bottom thickness')).not.toHaveValue('8');
  });
});

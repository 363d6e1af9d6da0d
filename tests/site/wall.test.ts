/** On the wall: every figure fills a projector's screen, and two keys are enough. */
import { expect, type Page, test } from '@playwright/test';
import { findings } from './every-page/accessible.ts';
import { wrongOnWall } from './on-the-wall.ts';
import { lessons, open, pages } from './site.ts';

test.use({ locale: 'en-GB', viewport: { width: 1024, height: 768 }, reducedMotion: 'reduce' });

const onWall = async (page: Page, path: string, name: string) => {
  const troubles = await open(page, `${path}#wall=${name}`);
  await expect(page.locator('.on-wall')).toBeVisible();
  await expect(page.getByRole('navigation', { name: 'Wall' })).toBeFocused();
  return troubles;
};
const state = (page: Page) => page.locator('.on-wall').getAttribute('data-state');
const settled = (page: Page) => page.waitForTimeout(120);

/** Goes through all the figures of a page by Page Down alone. @returns what is wrong with any of them */
async function walk(page: Page, least: number): Promise<string[]> {
  const wrong: string[] = [];
  const count = await page.locator('.to-wall').count();
  for (let at = 0; at < count; at++) {
    const name = new URL(page.url()).hash;
    for (const turn of ['covered', 'open']) {
      await settled(page);
      for (const one of await wrongOnWall(page, least)) wrong.push(`${name} ${turn}: ${one}`);
      if ((await state(page)) !== 'blank') break;
      await page.keyboard.press('PageDown');
    }
    await page.keyboard.press('PageDown');
  }
  await expect(page.getByText('That was the last figure.')).toBeVisible();
  return wrong;
}
const firstFigure = async (page: Page, path: string) => {
  await open(page, path);
  await page
    .locator('.to-wall')
    .first()
    .evaluate((link: HTMLAnchorElement) => link.click());
  await expect(page.locator('.on-wall')).toBeVisible();
};

for (const path of lessons)
  test(`/${path}: each figure fills 1024 x 768, covered and open, with type of 28 px and nothing over another`, async ({
    page,
  }) => {
    test.setTimeout(60_000);
    await firstFigure(page, path);
    expect(await walk(page, 28)).toEqual([]);
  });

for (const [width, height, least] of [
  [1280, 720, 28],
  [1920, 1080, 39],
] as const)
  test(`on ${width} x ${height} too, in inches`, async ({ browser, baseURL }) => {
    test.setTimeout(120_000);
    const context = await browser.newContext({
      viewport: { width, height },
      locale: 'en-US',
      baseURL,
      reducedMotion: 'reduce',
    });
    const page = await context.newPage();
    for (const path of ['lessons/wood-movement/', 'lessons/which-corner-joint/', 'lessons/is-it-square/']) {
      await firstFigure(page, path);
      expect(await walk(page, least), path).toEqual([]);
    }
    await context.close();
  });

test('each state of a rule’s figure is a figure of its own', async ({ page }) => {
  await onWall(page, 'rules/odd-finger-count/', 'figure');
  expect(await wrongOnWall(page, 28)).toEqual([]);
  await page.keyboard.press('PageDown');
  await expect(page.locator('.on-wall figcaption')).toContainText('Odd');
  expect(await wrongOnWall(page, 28)).toEqual([]);
});

test('two keys open a guess, go on, come back and cover it again; the reader’s own guesses return', async ({
  page,
}) => {
  await open(page, 'lessons/wood-movement/');
  const card = page.locator('[data-guess=lid-august]');
  await card.getByRole('textbox', { name: /^your mark/ }).fill('2');
  await card.getByRole('button', { name: 'Let August come' }).click();
  await expect(card.locator('.guess-answer')).toContainText('You said 2');
  const kept = await page.evaluate(() => localStorage.getItem('rule-and-reason.guesses'));

  await card.getByRole('link', { name: 'on the wall' }).click();
  await expect(page.locator('.on-wall')).toHaveAttribute('data-state', 'blank');
  await expect(page.locator('.on-wall')).not.toContainText('You said');
  await page.keyboard.press('PageDown');
  await expect(page.locator('.on-wall .guess-answer')).toContainText('it jams');
  await page.keyboard.press('PageDown');
  await expect(page).toHaveURL(/#wall=rings-upright$/);
  expect(await state(page)).toBe('blank');
  await page.keyboard.press('PageUp');
  await expect(page).toHaveURL(/#wall=lid-august$/);
  await expect(page.locator('.on-wall .guess-answer')).toBeVisible();
  await page.keyboard.press('PageUp');
  expect(await state(page)).toBe('blank');
  await page.keyboard.press('PageUp');
  await expect(page.getByText('This is the first figure.')).toBeVisible();

  await page.keyboard.press('Escape');
  await expect(page.locator('.on-wall')).toHaveCount(0);
  await expect(card.locator('.guess-answer')).toContainText('You said 2');
  expect(await page.evaluate(() => localStorage.getItem('rule-and-reason.guesses'))).toBe(kept);
  await expect(card.getByRole('link', { name: 'on the wall' })).toBeFocused();
});

test('a show of hands is counted before, and stays beside the truth', async ({ page }) => {
  await onWall(page, 'lessons/wood-movement/', 'lid-august');
  await page.keyboard.press('h');
  const fields = page.getByRole('form', { name: 'Show of hands' }).getByRole('textbox');
  await expect(fields.first()).toBeFocused();
  const count = await fields.count();
  for (const hands of [12, 9, 4, 3, 2, 1, 0].slice(0, count)) {
    await page.keyboard.type(String(hands));
    await page.keyboard.press('Enter');
  }
  await expect(fields).toHaveCount(0);
  await page.keyboard.press('PageDown');
  const said = page.locator('.on-wall .wall-hands');
  await expect(said.locator('dd').first()).toHaveText('12');
  // The lid grows 1.03 mm: the second range, from 1 to 2 mm.
  await expect(said.locator('dd.is-true')).toHaveText('9 true');
  await expect(said.locator('dt.is-true')).toHaveText(/1–2/);
  await settled(page);
  expect(await wrongOnWall(page, 28)).toEqual([]);
  await page.keyboard.press('r');
  await expect(said).toHaveCount(0);
  expect(await state(page)).toBe('blank');

  await onWall(page, 'lessons/wood-movement/', 'jams-with-play');
  await page.keyboard.press('h');
  for (const hands of ['5', '14', '1']) {
    await page.keyboard.type(hands);
    await page.keyboard.press('Enter');
  }
  await page.keyboard.press('PageDown');
  await expect(page.locator('.on-wall .outcome').nth(1)).toHaveAttribute('data-hands', '14 hands');
  await settled(page);
  expect(await wrongOnWall(page, 28)).toEqual([]);
});

test('reset brings the sliders back, and an arrow on a slider moves the slider', async ({ page }) => {
  await onWall(page, 'lessons/joint-spacing/', 'finger-layout');
  const slider = page.locator('.on-wall').getByRole('slider').first();
  const first = await slider.getAttribute('aria-valuetext');
  await slider.focus();
  await page.keyboard.press('ArrowRight');
  await expect(slider).not.toHaveAttribute('aria-valuetext', first!);
  await expect(page).toHaveURL(/#wall=finger-layout$/);
  await page.keyboard.press('r');
  await expect(slider).toHaveAttribute('aria-valuetext', first!);
});

test('the code opens the same figure as it stands; at an address of this device alone there is none', async ({
  page,
  baseURL,
}) => {
  await onWall(page, 'lessons/joint-spacing/', 'finger-layout');
  await page.keyboard.press('c');
  await expect(page.getByRole('dialog')).toContainText('no phone can reach');

  await page.route('http://box.example/**', async (route) =>
    route.fulfill({
      response: await route.fetch({ url: route.request().url().replace('http://box.example/', baseURL!) }),
    }),
  );
  await onWall(page, 'http://box.example/lessons/joint-spacing/', 'finger-layout');
  const slider = page.locator('.on-wall').getByRole('slider').first();
  await slider.focus();
  await page.keyboard.press('ArrowRight');
  const set = await slider.getAttribute('aria-valuetext');
  await page.keyboard.press('c');
  await expect(page.getByRole('img', { name: 'QR code of the link to this figure' })).toBeVisible();
  const link = await page.locator('.wall-code').getAttribute('data-link');
  expect(link).toMatch(/^http:\/\/box\.example\/lessons\/joint-spacing\/#at=finger-layout&set=.+&box=3\./);
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');

  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('about:blank');
  await open(page, link!);
  const lab = page
    .locator('.lab')
    .filter({ has: page.getByRole('heading', { name: 'Fingers of one corner' }) });
  await expect(lab.getByRole('slider').first()).toHaveAttribute('aria-valuetext', set!);
  await expect(lab).toBeInViewport();
});

test('the wall is light on a device that prefers dark, and dark on request; axe finds nothing in either', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await onWall(page, 'lessons/wood-movement/', 'lid-august');
  const ground = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  expect(await ground()).toBe('rgb(251, 249, 243)');
  for (const key of ['PageDown', 'h', 'd']) {
    await page.keyboard.press(key);
    await settled(page);
    expect(await findings(page), key).toEqual([]);
  }
  expect(await ground()).toBe('rgb(29, 27, 24)');
  await page.keyboard.press('d');
});

test('without a network too', async ({ browser, baseURL }) => {
  const context = await browser.newContext({
    baseURL,
    serviceWorkers: 'allow',
    viewport: { width: 1024, height: 768 },
  });
  const page = await context.newPage();
  await page.goto('');
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller)
      await new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve));
  });
  await context.setOffline(true);
  await onWall(page, 'lessons/is-it-square/', 'diagonals');
  await page.keyboard.press('PageDown');
  await expect(page).toHaveURL(/#wall=(?!diagonals)/);
  await context.close();
});

test('every figure that a class page names is there', async ({ page }) => {
  for (const path of pages.filter((one) => /^class\/(\d.*)?$/.test(one))) {
    await page.goto(path);
    const links = await page
      .locator('a[href*="#wall="]')
      .evaluateAll((all) => all.map((one) => (one as HTMLAnchorElement).href));
    expect(links.length, path).toBeGreaterThan(0);
    for (const link of links) {
      await page.goto('about:blank');
      await page.goto(link);
      await expect(page.locator('.on-wall'), link).toBeVisible();
    }
  }
});

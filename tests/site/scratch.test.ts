/** Scratch cells in the browser: by keyboard alone, by touch, kept, linked, filed, stopped, offline. */
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { isAccessible } from './every-page/accessible.ts';
import { open } from './site.ts';

test.use({ locale: 'en-US' });

const cell = (page: Page, place: number) =>
  page.getByRole('combobox', { name: `cell ${place}`, exact: true });
const resultOf = (page: Page, place: number) =>
  page
    .locator('.cells > li')
    .nth(place - 1)
    .locator('.cell-result');
const isWorker = /_astro\/worker-.*\.js/;

/** A link to cells, as `src/notebook/scratch/cells.ts` writes it. */
const linkTo = (...cells: object[]) =>
  `scratch/#scratch=1.${Buffer.from(JSON.stringify(cells)).toString('base64url')}`;
const sum = (text: string) => ({ type: 'sum', text });

test('by keyboard alone: a name is completed, cells follow one another, an endless one is stopped and mended', async ({
  page,
}) => {
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  const troubles = await open(page, 'scratch/');
  expect(
    fetched.filter((url) => /worker-|relations-/.test(url)),
    'nothing is fetched before the first use',
  ).toEqual([]);
  await cell(page, 1).focus();
  await page.keyboard.type('box.inside.wi');
  const first = page.getByRole('option', { name: /^box\.inside\.width/ });
  await expect(first).toBeVisible();
  await page.keyboard.press('ArrowDown');
  await expect(first).toHaveAttribute('aria-selected', 'true');
  await expect(cell(page, 1)).toHaveAttribute('aria-activedescendant', (await first.getAttribute('id'))!);
  await page.keyboard.press('Enter');
  await expect(cell(page, 1)).toHaveValue('box.inside.width');
  await expect(page.getByRole('option')).toHaveCount(0);
  await page.keyboard.type(' / 1.618 to in');
  await page.keyboard.press('Enter');
  // The example in inches is 4 in wide inside: 3 3/4 and 1/8 on each side. 4 / 1.618 = 2.4722.
  await expect(resultOf(page, 1)).toContainText('2.4722 in, about 2 15/32 in');
  await expect(resultOf(page, 1)).toContainText('62.794 mm');

  await expect(cell(page, 2)).toBeFocused();
  await page.keyboard.type('f(n) = n < 1 ? 1 : f(n - 1) + f(n - 1); f(60)');
  await page.keyboard.press('Enter');
  await expect(cell(page, 3)).toBeFocused();
  await page.keyboard.type('12 in * 0.00274 * 4');
  await page.keyboard.press('Enter');
  await expect(resultOf(page, 2)).toContainText('Stopped');
  await expect(resultOf(page, 3)).toContainText('0.1315 in, about 1/8 in');

  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Shift+Tab');
  for (
    let back = 0;
    back < 8 && !(await cell(page, 2).evaluate((field) => field === document.activeElement));
    back++
  )
    await page.keyboard.press('Shift+Tab');
  await expect(cell(page, 2)).toBeFocused();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('sqrt(16)');
  await page.keyboard.press('Enter');
  await expect(resultOf(page, 2)).toHaveText('= 4');
  expect(troubles).toEqual([]);
});

test('a worker that hangs is ended, and a new one goes on with the other cells', async ({
  page,
  context,
}) => {
  let times = 0;
  await context.route(isWorker, (route) => {
    times++;
    if (times > 1) return route.fallback();
    return route.fulfill({
      contentType: 'text/javascript',
      body: 'onmessage = ({ data }) => { postMessage({ round: data.round, begun: 0 }); for (;;); };',
    });
  });
  await open(page, linkTo(sum('1 + 1'), sum('2 + 2')));
  await expect(resultOf(page, 1)).toContainText('Stopped');
  await expect(resultOf(page, 2)).toHaveText('= 4');
  await cell(page, 1).fill('3 + 3');
  await cell(page, 1).press('Enter');
  await expect(resultOf(page, 1)).toHaveText('= 6');
  expect(times).toBe(2);
});

test('mathjs needs no eval: the worker works under a policy that forbids it', async ({ page, context }) => {
  await context.route(isWorker, async (route) => {
    const response = await route.fetch();
    await route.fulfill({
      response,
      headers: { ...response.headers(), 'content-security-policy': "default-src 'self'; script-src 'self'" },
    });
  });
  await open(page, linkTo(sum('2 3/8 in + 1 mm'), sum('wallShare(3/8 in, 5 in)')));
  await expect(resultOf(page, 1)).toContainText('61.325 mm');
  await expect(resultOf(page, 2)).toHaveText('= 7.5\u00a0%');
});

test('a plot is drawn and read, and says where a relation does not hold', async ({ page }) => {
  await open(page, 'scratch/');
  await page.getByRole('button', { name: 'add a plot' }).click();
  const plot = page.getByRole('combobox', { name: 'plot 2' });
  await plot.fill('wallShare(t, 4 in)');
  await page.getByRole('textbox', { name: 'over' }).fill('t');
  await page.getByRole('textbox', { name: 'from' }).fill('-1/4 in');
  await page.getByRole('textbox', { name: 'to' }).fill('1 in');
  await page.getByRole('textbox', { name: 'to' }).press('Enter');
  const picture = page.getByRole('img', { name: /wallShare/ });
  await expect(picture).toBeVisible();
  await expect(page.getByText(/Where there is no line: .*wall thickness/)).toBeVisible();
  const reader = page.getByRole('slider', { name: 'read at' });
  await reader.focus();
  await reader.press('End');
  // One inch of four.
  await expect(reader).toHaveAttribute('aria-valuetext', /t = 1\sin: 25$/);
});

test.describe('by touch on a phone', () => {
  test.use({ hasTouch: true, viewport: { width: 390, height: 844 } });
  test('a press takes a name from the list, and from the list of all names', async ({ page }) => {
    await open(page, 'scratch/');
    await cell(page, 1).tap();
    await cell(page, 1).pressSequentially('wallsh');
    await page.getByRole('option', { name: /^wallShare/ }).tap();
    await expect(cell(page, 1)).toHaveValue('wallShare(');
    await expect(cell(page, 1)).toBeFocused();
    await expect(page.locator('.call-hint')).toContainText('t wall thickness');
    await page.getByText('Names you can use').tap();
    await page.getByRole('searchbox', { name: 'find a name' }).fill('wall thickness');
    await page.getByRole('button', { name: 'box.wall', exact: true }).tap();
    await expect(cell(page, 1)).toHaveValue('wallShare(box.wall');
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(390);
  });
});

test('with results, an error, a plot, open names and an open list nothing is inaccessible or too wide', async ({
  page,
}) => {
  await open(
    page,
    linkTo(
      sum('box.inside.width / 1.618 to in'),
      sum('wallShare(5, 3 in)'),
      { type: 'note', text: 'A note.' },
      { type: 'plot', text: 'wallShare(t, 4 in)', over: 't', from: '1/8 in', to: '1 in' },
      sum(''),
    ),
  );
  await expect(page.getByRole('slider', { name: 'read at' })).toBeVisible();
  await page.getByText('Names you can use', { exact: true }).click();
  await expect(page.locator('.name-list li')).toHaveCount(25);
  await cell(page, 5).pressSequentially('wall');
  await page.keyboard.press('ArrowDown');
  await expect(page.locator('[role=option][aria-selected=true]')).toHaveCount(1);
  await isAccessible(page);
});

test('cells stay on the device, go by link and by file, and what stood there before comes back', async ({
  page,
}) => {
  await open(page, 'scratch/');
  await cell(page, 1).fill('gap = 1 mm');
  await cell(page, 1).press('Enter');
  await page.getByRole('button', { name: 'add a note' }).click();
  await page.getByRole('textbox', { name: /^note/ }).fill('For the lid.');
  await page.reload();
  await expect(cell(page, 1)).toHaveValue('gap = 1 mm');
  await expect(page.getByRole('textbox', { name: /^note/ })).toHaveValue('For the lid.');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'save as a file' }).click(),
  ]);
  const text = readFileSync((await file.path())!, 'utf8');

  await page.goto('about:blank');
  await open(page, linkTo(sum('2 * 21 mm')));
  await expect(resultOf(page, 1)).toContainText('42 mm');
  await expect.poll(() => new URL(page.url()).hash).toBe('');
  await page.getByRole('button', { name: 'bring back' }).click();
  await expect(cell(page, 1)).toHaveValue('gap = 1 mm');

  await page.getByRole('button', { name: 'take out cell 1' }).click();
  await expect(cell(page, 1)).not.toHaveValue('gap = 1 mm');
  await page.getByRole('button', { name: 'put it back' }).click();
  await expect(cell(page, 1)).toHaveValue('gap = 1 mm');

  await cell(page, 1).fill('7');
  await cell(page, 1).press('Enter');
  await page
    .getByLabel('open a file')
    .setInputFiles({ name: 'mine.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await expect(cell(page, 1)).toHaveValue('gap = 1 mm');
  await page
    .getByLabel('open a file')
    .setInputFiles({ name: 'bad.json', mimeType: 'application/json', buffer: Buffer.from('{') });
  await expect(page.getByRole('alert')).toContainText('Your own cells are as they were');
  await expect(cell(page, 1)).toHaveValue('gap = 1 mm');
});

test.describe('with the service worker', () => {
  test.use({ serviceWorkers: 'allow' });
  test('cells are worked out without a network once the site is kept', async ({ page, context }) => {
    await open(page, 'scratch/');
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.reload();
    await context.setOffline(true);
    await cell(page, 1).fill('1 in to mm');
    await cell(page, 1).press('Enter');
    await expect(resultOf(page, 1)).toContainText('25.4 mm');
  });
});

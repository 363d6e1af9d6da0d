/** Exercises on screen: numbers from a link, answers told which step went wrong, fading, tries; by keyboard, and without JavaScript. */
import { expect, type Page, test } from '@playwright/test';
import { taskFor } from '../../src/exercises/core/task.ts';
import { byId } from '../exercises/seeds.ts';
import { open } from './site.ts';

test.use({ locale: 'en-GB' });

const learner = { className: '7b', number: 12 };
const link = (id: string, u = 'mm') => `exercises/${id}/?class=7b&n=12&u=${u}`;

/** Goes on with the tab key until the focus is on what is wanted. */
async function tabTo(page: Page, wanted: string) {
  for (let pressed = 0; pressed < 60; pressed++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate((selector) => document.activeElement?.matches(selector), wanted)) return;
  }
  throw new Error(`no way to ${wanted} by keyboard`);
}

test('e1 is done by keyboard alone: class, number, a slip, a hint, both answers', async ({ page }) => {
  const { values } = taskFor(byId('e1'), learner, 'mm');
  const [length, width, wall] = [Number(values.length), Number(values.width), Number(values.wall)];
  const troubles = await open(page, 'exercises/e1/');
  await tabTo(page, '[name=class]');
  await page.keyboard.type('7B');
  await tabTo(page, '[name=n]');
  await page.keyboard.type('12');
  await page.keyboard.press('Enter');
  await expect(page.locator('.own-task')).toContainText('number 12');
  await expect(page.locator('.own-task .given')).toContainText(`${length} mm`);
  await tabTo(page, '.own-task input[type=text]');
  // One wall too few.
  await page.keyboard.type(String(length + wall));
  await page.keyboard.press('Enter');
  await expect(page.locator('.own-task .asked').first()).toContainText('You added one wall.');
  await tabTo(page, '.hints button');
  await page.keyboard.press('Enter');
  await expect(page.locator('.hints li')).toHaveText(/Add one wall at each end/);
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.type(`${(width + 2 * wall) / 10} cm`);
  await page.keyboard.press('Enter');
  await expect(page.locator('.own-task .asked').nth(1)).toContainText('Right.');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Control+a');
  await page.keyboard.type(`${length + 2 * wall},0`);
  await page.keyboard.press('Enter');
  await expect(page.locator('.own-task .asked').first()).toContainText('Right.');
  await expect(page.locator('.tries li')).toHaveCount(3);
  await expect(page.locator('.tries li').first()).toContainText(`${length + wall} mm`);
  expect(page.url()).toContain('class=7B&n=12&u=mm');
  expect(troubles).toEqual([]);
});

test('a link gives the numbers in its units, inches as fractions, and a fraction is read', async ({
  page,
}) => {
  const { given, lines } = taskFor(byId('e1'), learner, 'inch');
  await open(page, link('e1', 'inch'));
  for (const { text } of given) await expect(page.locator('.own-task .given')).toContainText(text);
  const key = Number(lines[0]!.gives.key) / 25.4;
  const sixteenths = Math.round((key % 1) * 16);
  const field = page.locator('.own-task .asked').first();
  await field.locator('input').fill(sixteenths ? `${Math.floor(key)} ${sixteenths}/16 in` : `${key}`);
  await field.getByRole('button', { name: 'check' }).click();
  await expect(field).toContainText('Right.');
});

test('points of humidity taken for points of moisture are told so, and the tries stay for the next visit', async ({
  page,
}) => {
  const { values, lines } = taskFor(byId('e4'), learner, 'mm');
  const asked = lines.at(-1)!.gives;
  const slip = asked.type === 'number' && asked.mistakes.find(({ id }) => id === 'humidity-points');
  if (!slip) throw new Error(`no such slip with ${JSON.stringify(values)}`);
  await open(page, link('e4'));
  const field = page.locator('.own-task .asked');
  await field.locator('input').fill(slip.value.toFixed(2));
  await field.getByRole('button', { name: 'check' }).click();
  await expect(field.getByRole('status')).toContainText('points of humidity for points of moisture');
  await open(page, 'exercises/');
  await expect(page.locator('.tries li')).toContainText('points of humidity');
  await expect(page.locator('.tries')).toContainText('Nothing is sent anywhere');
  await page.getByRole('button', { name: 'clear all tries' }).click();
  await expect(page.locator('.tries')).toContainText('None yet');
});

test('nothing leaves the page while an answer is given', async ({ page }) => {
  await open(page, link('e3'));
  const asked: string[] = [];
  page.on('request', (request) => asked.push(`${request.method()} ${request.url()}`));
  const field = page.locator('.own-task .asked').first();
  await field.locator('input').fill('4');
  await field.getByRole('button', { name: 'check' }).click();
  await expect(field.getByRole('status')).not.toBeEmpty();
  // The reader of typed numbers is fetched with the first of them; nothing else is asked for, and nothing is told.
  for (const one of asked) expect(one).toMatch(/^GET .*\/_astro\/[^?]+\.js$/);
});

test('the worked example fades from its last line, with new numbers, and asks which rule a step is', async ({
  page,
}) => {
  await open(page, 'exercises/e5/');
  const worked = page.locator('.worked.mm');
  const given = await worked.locator('.given').textContent();
  await expect(worked.locator('.worked-lines .sum')).toHaveCount(5);
  await worked.getByRole('button', { name: 'fade one more line' }).click();
  await expect(worked.locator('.worked-lines .sum')).toHaveCount(4);
  await expect(worked.locator('.worked-lines > li').last().locator('.asked')).toBeVisible();
  expect(await worked.locator('.given').textContent()).not.toBe(given);
  const rule = worked.locator('.worked-lines > li').nth(2).getByRole('combobox');
  await rule.selectOption({ label: 'the air decides how moist the wood becomes' });
  await expect(worked.locator('.worked-lines > li').nth(2)).toContainText('Not this one');
  await rule.selectOption({ label: 'wood moves across its grain, with its moisture' });
  await expect(
    worked.locator('.worked-lines > li').nth(2).getByRole('link', { name: 'its reason' }),
  ).toBeVisible();
});

test('hints give the steps in order and the answer last', async ({ page }) => {
  const { lines } = taskFor(byId('e2'), learner, 'mm');
  await open(page, link('e2'));
  const hint = page.locator('.hints button');
  for (const [at, { does }] of lines.entries()) {
    await hint.click();
    await expect(page.locator('.hints li')).toHaveCount(at + 1);
    await expect(page.locator('.hints li').nth(at)).toContainText(does);
  }
  await expect(page.locator('.hints')).not.toContainText(`height of the walls: ${lines.at(-1)!.gives.key}`);
  await hint.click();
  await expect(page.locator('.hints')).toContainText(`height of the walls: ${lines.at(-1)!.gives.key}`);
  await expect(page.locator('.tries li')).toContainText('the answer');
});

test('a lesson leads from its new numbers to its exercises, and an exercise back to its lesson', async ({
  page,
}) => {
  await open(page, 'lessons/joint-spacing/');
  const way = page.locator('.own-numbers a');
  await expect(way).toHaveText(['An odd number of fingers', 'Eight cuts of a miter']);
  await way.first().click();
  await expect(page.locator('h1')).toHaveText('An odd number of fingers');
  await page.locator('.of-rules a').first().click();
  await expect(page.locator('h1')).toHaveText('Joint spacing');
});

test('where the question needs it, what is given is drawn, beside the own numbers and in the example', async ({
  page,
}) => {
  for (const id of ['e9', 'e15', 'e18', 'e21']) {
    await open(page, link(id));
    await expect(page.locator('.own-task .given-figure svg')).toBeVisible();
    await expect(page.locator('.worked.mm .given-figure svg')).toBeVisible();
  }
});

test('printed, the page keeps the numbers, the question and the tries, and no field', async ({ page }) => {
  await open(page, link('e1'));
  const field = page.locator('.own-task .asked').first();
  await field.locator('input').fill('1');
  await field.getByRole('button', { name: 'check' }).click();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.own-task .given')).toBeVisible();
  await expect(page.locator('.tries li')).toBeVisible();
  await expect(page.locator('.tries .of-whom')).toContainText('7b');
  for (const hidden of ['.asked', '.learner', '.hints', '.worked.mm'])
    await expect(page.locator(hidden).first()).toBeHidden();
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });
  test('the page says what is missing, and the worked example stays whole', async ({ page }) => {
    await page.goto('exercises/e7/');
    await expect(page.locator('.notice')).toContainText('Without JavaScript');
    await expect(page.locator('.worked.mm .sum')).toHaveCount(3);
    await expect(page.locator('.learner')).toBeHidden();
    await expect(page.locator('.worked.mm select').first()).toBeHidden();
  });
});

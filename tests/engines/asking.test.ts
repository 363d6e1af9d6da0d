/** What a reader asks and answers, in each engine. */
import { taskFor } from '../../src/exercises/core/task.ts';
import { byId } from '../exercises/seeds.ts';
import { expect, path } from './path.ts';

path('a question is asked from the header, and answered with a number and a page', async ({ hand }) => {
  await hand.open('');
  await hand.click({ css: 'header [data-ask], header button', name: /^Ask/ });
  const dialog = { role: 'dialog' } as const;
  await hand.type({ role: 'textbox', in: dialog }, 'how thick should the walls be');
  const first = { css: '.answer-title', in: dialog } as const;
  await expect.poll(() => hand.read({ css: '.answers li', in: dialog })).toMatch(/\d/);
  await expect.poll(() => hand.read(first)).toMatch(/wall/i);
  await hand.click(first);
  await expect.poll(() => hand.inPage(() => location.pathname)).toMatch(/rules|lessons/);
  expect(await hand.count({ css: 'dialog[open]' })).toBe(0);
});

path('an answer is entered: the usual slip is named, and the right one is told so', async ({ hand }) => {
  const { values } = taskFor(byId('e1'), { className: '7b', number: 12 }, 'mm');
  const [length, thickness] = [Number(values.length), Number(values.wall)];
  await hand.open('exercises/e1/?class=7b&n=12&u=mm');
  const asked = { css: '.own-task .asked' } as const;
  const field = { role: 'textbox', in: asked } as const;
  // One wall too few, then both.
  await hand.type(field, String(length + thickness), 'Enter');
  await expect.poll(() => hand.read(asked)).toContain('You added one wall.');
  await hand.type(field, String(length + 2 * thickness));
  await hand.click({ role: 'button', name: 'check', in: asked });
  await expect.poll(() => hand.read(asked)).toContain('Right.');
  await hand.reload();
  await expect.poll(() => hand.count({ css: '.tries li' })).toBe(2);
});

path(
  'a scratch cell is run: a name is completed, units are carried, an endless sum is stopped',
  async ({ hand }) => {
    const cell = (place: number) => ({ role: 'combobox', name: `cell ${place}` }) as const;
    const result = (place: number) => ({ css: `.cells > li:nth-child(${place}) .cell-result` });
    await hand.open('scratch/');
    await hand.type(cell(1), 'box.inside.wi');
    await expect.poll(() => hand.read({ css: '[role=option]' })).toMatch(/^box\.inside\.width/);
    await hand.press(cell(1), 'ArrowDown', 'Enter');
    await expect.poll(() => hand.value(cell(1))).toBe('box.inside.width');
    await hand.type(cell(1), '2 3/8 in + 1 mm', 'Enter');
    // 2.375 × 25.4 + 1.
    await expect.poll(() => hand.read(result(1))).toContain('61.325 mm');
    await hand.type(cell(2), 'f(n) = n < 1 ? 1 : f(n - 1) + f(n - 1); f(60)', 'Enter');
    await expect.poll(() => hand.read(result(2))).toContain('Stopped');
  },
);

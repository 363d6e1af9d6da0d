/** A finger and a mouse on a slider of a lesson, on a device that has both. */
import { expect, type Page, test } from '@playwright/test';
import { open, swipe } from './site.ts';

test.use({ locale: 'en-GB', hasTouch: true, viewport: { width: 390, height: 844 } });

async function ringSlider(page: Page) {
  await open(page, 'lessons/reading-the-board/');
  const skip = page.getByRole('button', { name: 'skip, show me' });
  while ((await skip.count()) > 0) await skip.first().click();
  const slider = page.getByRole('slider', { name: /turn of the board, slider/ }).first();
  await slider.evaluate((element) => {
    for (let fold = element.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
      fold.open = true;
    element.scrollIntoView({ block: 'center' });
  });
  const box = (await slider.boundingBox())!;
  return { slider, box, at: async () => Number(await slider.inputValue()) };
}

test('a finger that goes sideways pulls the number as far as it goes; a tap changes nothing', async ({
  page,
}) => {
  const { box, at } = await ringSlider(page);
  const [x, y] = [box.x + box.width * 0.2, box.y + box.height / 2];
  const before = await at();
  await page.touchscreen.tap(x, y);
  expect(await at()).toBe(before);
  await swipe(await page.context().newCDPSession(page), [x, y], [80, 2]);
  // From −90° to 90° over the slider without its knob of 16 px; the first 8 px take hold.
  await expect.poll(at).toBe(before + Math.round(((80 - 8) / (box.width - 16)) * 180));
});

test('a mouse sets the number it points at, drags it on, and leaves the arrows there', async ({ page }) => {
  const { slider, box, at } = await ringSlider(page);
  await page.mouse.move(box.x + box.width / 2 + 40, box.y + box.height / 2);
  await page.mouse.down();
  const there = Math.round((40 / (box.width - 16)) * 180);
  await expect.poll(async () => Math.abs((await at()) - there)).toBeLessThanOrEqual(1);
  await page.mouse.move(box.x + box.width + 50, box.y + box.height / 2, { steps: 4 });
  await page.mouse.up();
  await expect.poll(at).toBe(90);
  await expect(slider).toBeFocused();
  await page.keyboard.press('ArrowLeft');
  await expect.poll(at).toBe(89);
});

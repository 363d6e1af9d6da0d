/** Labels on a phone: the hole above a lowered front is named clear of every other line, and no number runs off the sheet. */
import { expect, test } from '@playwright/test';
import type { Box } from '../../src/box/subjects/inputs.ts';
import { chooseUnits, linkTo, open } from './site.ts';

test.use({ locale: 'en-GB', viewport: { width: 390, height: 844 } });

/** Fingers of 8 mm, and a front of 45: its sixth finger is cut off 3 mm before its end. */
const boxes: Record<string, Partial<Box>> = {
  'long and low': { headroom: 7 },
  square: { headroom: 7, contentsLength: 90, contentsWidth: 88 },
  'wider than long': { headroom: 7, contentsLength: 60, contentsWidth: 200 },
  high: { contentsHeight: 86 },
  'very short': { headroom: 7, contentsLength: 40, contentsWidth: 200 },
};

for (const [name, changes] of Object.entries(boxes))
  test(`${name}: the label stands in two drawings, with nothing across it`, async ({ page }) => {
    await open(page, linkTo('my-box/', changes));
    await page.locator('#drawings > summary').click();
    const labels = page.locator('.drawings .hole-label');
    await expect(labels).toHaveCount(2);
    for (const system of ['mm', 'inch'] as const) {
      await chooseUnits(page, system);
      for (const label of await labels.all()) {
        const text = label.locator(`text.${system}`);
        await expect(text).toHaveText(system === 'mm' ? 'hole 3\u00a0mm' : 'hole 1/8\u00a0in');
        const across = await text.evaluate((words) => {
          const drawing = words.closest('svg')!;
          const around = words.getBoundingClientRect();
          const sheet = drawing.getBoundingClientRect();
          const isIn = (x: number, y: number) =>
            x > around.left && x < around.right && y > around.top && y < around.bottom;
          const found: string[] = [];
          if (around.left < sheet.left - 1 || around.right > sheet.right + 1 || around.top < sheet.top - 1)
            found.push('the edge of the sheet');
          for (const line of drawing.querySelectorAll<SVGGeometryElement>('path, line, rect, polygon')) {
            if (line.closest('defs, clipPath, marker, .hole-label') || line.getClientRects().length === 0)
              continue;
            const onScreen = line.getScreenCTM()!;
            const long = line.getTotalLength();
            for (let at = 0; at <= long; at += 2) {
              const { x, y } = line.getPointAtLength(at).matrixTransform(onScreen);
              if (isIn(x, y)) {
                found.push(`${line.localName}.${line.getAttribute('class')} ${line.getAttribute('d')}`);
                break;
              }
            }
          }
          for (const other of drawing.querySelectorAll('text')) {
            const { left, right, top, bottom, width } = other.getBoundingClientRect();
            const apart =
              right <= around.left || left >= around.right || bottom <= around.top || top >= around.bottom;
            if (other !== words && width > 0 && !apart && !other.closest('.spoken'))
              found.push(other.textContent);
          }
          return found;
        });
        expect(across).toEqual([]);
      }
    }
  });

test('the example, whose front ends in a finger of the sides, has no such label', async ({ page }) => {
  await open(page, 'my-box/');
  await page.locator('#drawings > summary').click();
  await expect(page.locator('.drawings')).toBeVisible();
  await expect(page.locator('.hole-label')).toHaveCount(0);
});

for (const [name, changes] of Object.entries(boxes))
  test(`${name}: every number of the three views stands on its sheet`, async ({ page }) => {
    await open(page, linkTo('my-box/', changes));
    await page.locator('#drawings > summary').click();
    const views = page.getByRole('img', { name: /^Three views/ });
    await expect(views.locator('.hole-label')).toHaveCount(1);
    for (const system of ['mm', 'inch'] as const) {
      await chooseUnits(page, system);
      const beyond = await views.evaluate((drawing) => {
        const sheet = drawing.getBoundingClientRect();
        return [...drawing.querySelectorAll('text.label')]
          .filter((words) => words.getClientRects().length > 0)
          .filter((words) => {
            const { left, right, top, bottom } = words.getBoundingClientRect();
            // Half a line: a label's box is higher than its signs.
            return (
              left < sheet.left - 7 ||
              right > sheet.right + 1 ||
              top < sheet.top - 7 ||
              bottom > sheet.bottom + 7
            );
          })
          .map((words) => words.textContent);
      });
      expect(beyond, system).toEqual([]);
    }
  });

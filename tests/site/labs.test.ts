/** Every lab of every page is driven: each slider to both its ends and each choice to its last option, by keyboard. */
import { expect, type Locator, test } from '@playwright/test';
import { htmlOf, open, pages } from './site.ts';

const withLabs = pages.filter((path) => /class="lab"/.test(htmlOf(path)));

/** What a lab shows, its drawings' texts included. */
const shown = (lab: Locator) => lab.evaluate((element) => element.textContent ?? '');

test('there are pages with labs', () => expect(withLabs.length).toBeGreaterThan(10));

for (const path of withLabs)
  test(`/${path} keeps its figures, sentences and numbers whole at both ends of every control`, async ({
    page,
  }) => {
    test.setTimeout(180_000);
    const troubles = await open(page, path);
    // What a guess covers is uncovered, and what is folded is opened.
    for (const card of await page.locator('.guess-card').all())
      await card.getByRole('button', { name: 'just show me' }).click();
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll<HTMLDetailsElement>('.more-of-it, .lab details.more'))
        fold.open = true;
    });
    for (const lab of await page.locator('.lab').all()) {
      const title = await lab.locator('h2').first().textContent();
      const before = await shown(lab);
      const sliders = await lab.locator('input[type=range]:visible').all();
      const choices = await lab.locator('select:visible').all();
      let moved = false;
      const look = async (what: string) => {
        const now = await shown(lab);
        expect(now, `${title}: ${what}`).not.toMatch(/NaN|undefined|Infinity|\[object/);
        moved ||= now !== before;
      };
      // A board that was moved out of its log is laid back first.
      const place = lab.locator('.places button').first();
      for (const [at, slider] of sliders.entries()) {
        if ((await place.count()) > 0) await place.click();
        for (const key of ['End', 'Home']) {
          // A control may come and go with another one.
          if (!(await slider.isVisible())) continue;
          await slider.press(key);
          await look(`slider ${at} at its ${key.toLowerCase()}`);
        }
      }
      for (const [at, choice] of choices.entries()) {
        if (!(await choice.isVisible())) continue;
        const count = await choice.locator('option').count();
        await choice.selectOption({ index: count - 1 });
        await look(`choice ${at}`);
      }
      if (sliders.length + choices.length > 0)
        expect(moved, `${title} shows what its controls do`).toBe(true);
    }
    expect(troubles).toEqual([]);
  });

/** Number fields and the units in their names. */
import { expect, type Page } from '@playwright/test';
import { chooseUnits, heardUnits } from '../site.ts';

/** Every number field that is shown, all folds open, ends its name with the unit that stands beside it, in both systems. */
export async function fieldsNameTheirUnits(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  for (const units of ['mm', 'inch'] as const) {
    await chooseUnits(page, units);
    const end = new RegExp(` in (${heardUnits[units]})$`);
    // What is fetched late may still bring or take away a field while they are counted.
    await expect(async () => {
      const fields = page.locator('input[inputmode=decimal]');
      const beside = await fields.evaluateAll((inputs) =>
        inputs.map((input) => {
          if (!input.checkVisibility({ visibilityProperty: true })) return undefined;
          const [unit] = [
            ...input.closest('.control, .entry, p, label')!.querySelectorAll('.unit, .item [aria-hidden]'),
          ].filter((element) => element.checkVisibility());
          return unit?.textContent ?? '';
        }),
      );
      await Promise.all(
        beside.map(async (unit, at) => {
          if (unit === undefined) return;
          if (unit) await expect(fields.nth(at)).toHaveAccessibleName(end, { timeout: 500 });
          else await expect(fields.nth(at)).not.toHaveAccessibleName(end, { timeout: 500 });
        }),
      );
    }).toPass({ timeout: 20_000 });
  }
}

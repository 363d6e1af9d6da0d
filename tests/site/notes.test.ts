/** How a figure was read is said once, in the note at the foot of a page: figures carry a mark. */
import { expect, test } from '@playwright/test';
import { htmlOf, open, pages } from './site.ts';

/** What a page says, without its code, its drawings and the fields that name a kind of evidence or a way of reading. */
const prose = (path: string) =>
  htmlOf(path)
    .replaceAll(/<(script|style|svg)[\s\S]*?<\/\1>/g, ' ')
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .replaceAll(
      /Evidence:? ([a-z]+( practice)?, )*(from memory|published|derived|geometry|common practice)/g,
      '',
    )
    .replaceAll(/Read: (seen )?(second-hand|from memory)/g, '');
const count = (text: string, phrase: string) => text.split(phrase).length - 1;

// Two pages are about nothing else, and lists show every rule's kind of evidence; of a wood its own note tells.
const about = ['sources/', 'rules/', 'what-physics-supports/', 'woods/'];

test('“from memory” and “second-hand” stand once on every page, and once on the build sheet', () => {
  for (const path of pages.filter((one) => !about.includes(one)))
    for (const phrase of ['from memory', 'second-hand'])
      expect(count(prose(path), phrase), `${phrase} on /${path}`).toBe(1);
});

test('the build sheet marks what was remembered and what was read second-hand, and its note is printed with it', async ({
  page,
}) => {
  await open(page, 'build-sheet/');
  await expect(page.locator('.amounts')).toContainText('§');
  await expect(page.locator('.amounts')).toContainText('¶');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('footer .marks')).toBeVisible();
  await expect(page.locator('footer .marks')).toContainText('§ is from memory, ¶ read second-hand');
});

/** Whatever is tagged with a hazard shows it, with the safeguard and what comes before it, on screen and in print. */
import { expect, test } from '@playwright/test';
import { cautions, isCautionName } from '../../src/box/work/cautions.ts';
import { cautionsOf, namedIn } from '../../src/prose/cautions.ts';
import { lessons, rules } from '../content/content.ts';
import { htmlOf, open } from './site.ts';

/** Pages with their cautions of the table. */
const tagged = [
  ...lessons.map(({ id, body }) => [`lessons/${id}/`, namedIn(body)] as const),
  ...rules.map(
    ({ id, body, data }) =>
      [`rules/${id}/`, [...cautionsOf(data.cautions ?? []).named, ...namedIn(body)]] as const,
  ),
].filter(([, names]) => names.length > 0);

/** As both readers have it: a pair of sizes is taken apart in the page. */
const plain = (text: string) =>
  text
    .replaceAll(/<[^>]+>/g, '')
    .replaceAll('&amp;', '&')
    .replaceAll(/[^A-Za-z]+/g, '');
/** The letters of a sentence up to its first size. */
const start = (sentence: string) => plain(sentence.split(/\d/)[0]!);

test('each lesson and rule with a caution says its hazard, its safeguard and what comes before it', () => {
  expect(tagged.length).toBeGreaterThan(30);
  for (const [path, names] of tagged) {
    const html = htmlOf(path);
    const said = plain(html.slice(html.indexOf('<main')));
    for (const name of names.filter(isCautionName)) {
      expect(said, `${path}: ${name}`).toContain(start(cautions[name].hazard));
      expect(said, `${path}: ${name}`).toContain(start(cautions[name].safeguard));
    }
    expect(said, path).toContain(plain('your local rules and a qualified instructor come before this page'));
  }
});

test('a caution can be seen on screen and on paper, in a lesson and in a rule', async ({ page }) => {
  for (const path of ['lessons/air-and-wood/', 'rules/groove-order/'])
    for (const media of ['screen', 'print'] as const) {
      await open(page, path);
      await page.emulateMedia({ media });
      const caution = page.locator('.caution');
      await expect(caution, `${path} ${media}`).toBeVisible();
      await expect(caution).toContainText('Hazard:');
      await expect(caution).toContainText('Safeguard:');
    }
});

test('each step of the build sheet with a caution says its hazard, or in which step it stands', async ({
  page,
}) => {
  await open(page, 'build-sheet/');
  for (const media of ['screen', 'print'] as const) {
    await page.emulateMedia({ media });
    const notes = page.locator('.step-caution');
    expect(await notes.count()).toBeGreaterThan(5);
    for (const note of await notes.all()) {
      await expect(note).toBeVisible();
      const said = (await note.textContent()) ?? '';
      const full = Object.values(cautions).some(
        ({ hazard, safeguard }) => said.includes(hazard) && said.includes(safeguard),
      );
      expect(full || /as in step \d+/.test(said), said).toBe(true);
    }
    await expect(page.locator('.rider')).toBeVisible();
  }
});

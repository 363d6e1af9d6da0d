/**
 * The learner's own notebook in the browser: questions that come back, notes, and everything as a file.
 * Over 150 lines: what one part keeps, another takes along.
 */
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { writeNotebook } from '../../src/notebook/everything/file.ts';
import { writeNotes } from '../../src/notebook/learning/notes.ts';
import { isAccessible } from './every-page/accessible.ts';
import { readPdf } from './pdf.ts';
import { open, openDrawer } from './site.ts';

test.use({ locale: 'en-US', timezoneId: 'America/New_York' });

const lesson = 'lessons/joint-spacing/';
const recall = (page: Page) => page.locator('details.recalls');
const kept = (page: Page): Promise<Record<string, string>> =>
  page.evaluate(() => ({ ...localStorage }) as Record<string, string>);

/** Opens the fold at the head of a lesson by keyboard, and waits for the reader's own questions. */
async function begin(page: Page, path: string) {
  const troubles = await open(page, path);
  await recall(page).locator('> summary').focus();
  await page.keyboard.press('Enter');
  await expect(recall(page).getByRole('button', { name: 'check' })).toBeVisible();
  return troubles;
}
const asks = (page: Page) => recall(page).locator('legend');
/** Answers what is asked by keyboard: the option with this place, from 1. */
async function answer(page: Page, place: number) {
  const option = recall(page)
    .getByRole('radio')
    .nth(place - 1);
  await option.focus();
  await page.keyboard.press('Space');
  await page.keyboard.press('Enter');
  await expect(recall(page).locator('.ask-in-turn [role=status]')).toContainText(/Right\.|No\./);
}

test('three questions stand before a lesson; answered by keyboard, each says when it comes back', async ({
  page,
}) => {
  await page.clock.setFixedTime(new Date('2028-02-27T22:00:00-05:00'));
  const troubles = await begin(page, 'lessons/proportion/');
  await expect(recall(page).locator('.kicker')).toContainText('1 of 3, from lesson 1');
  await recall(page).getByRole('button', { name: 'check' }).focus();
  await page.keyboard.press('Enter');
  await expect(recall(page).locator('.ask-in-turn [role=status]')).toContainText('Choose an answer first');
  for (const turn of [1, 2, 3]) {
    await expect(recall(page).locator('.kicker')).toContainText(`${turn} of 3`);
    await answer(page, 1);
    await expect(
      recall(page).getByRole('button', { name: turn < 3 ? 'next question' : 'done' }),
    ).toBeFocused();
    const isRight = (await recall(page).locator('.ask-in-turn [role=status]').textContent())!.startsWith(
      'Right',
    );
    // A right one after two days, over the leap day; a wrong one tomorrow.
    await expect(recall(page).locator('.recall-when')).toHaveText(
      isRight ? 'It comes again in 2 days, on February 29.' : 'It comes again tomorrow, February 28.',
    );
    if (isRight) {
      await recall(page).getByLabel('it was a guess').press('Space');
      await expect(recall(page).locator('.recall-when')).toHaveText('It comes again tomorrow, February 28.');
    }
    await recall(page)
      .getByRole('button', { name: turn < 3 ? 'next question' : 'done' })
      .press('Enter');
    if (turn < 3) await expect(asks(page)).toBeFocused();
  }
  await expect(recall(page).locator('.recall-end')).toContainText('of 3 known');
  await isAccessible(page);
  expect(troubles).toEqual([]);
});

test('what is due comes before what is new, on its day and not sooner, and a clock that is set back loses nothing', async ({
  page,
}) => {
  await page.clock.setFixedTime(new Date('2027-03-10T12:00:00-05:00'));
  await begin(page, 'lessons/proportion/');
  const first = (await asks(page).textContent())!;
  await answer(page, 1);
  const before = await kept(page);

  await begin(page, 'lessons/proportion/');
  await expect(asks(page), 'the same day another one').not.toHaveText(first);
  await page.clock.setFixedTime(new Date('2027-03-20T00:30:00-04:00'));
  await begin(page, 'lessons/proportion/');
  await expect(asks(page)).toHaveText(first);

  await open(page, 'notebook/');
  await expect(page.locator('.due-says')).toHaveText('One question is due today.');
  await page.clock.setFixedTime(new Date('2020-01-01T12:00:00-05:00'));
  await open(page, 'notebook/');
  await expect(page.locator('.due-says')).toHaveText('One question is due today.');
  expect((await kept(page))['rule-and-reason.recall']).toBe(before['rule-and-reason.recall']);
  await page.getByRole('button', { name: 'answer it' }).press('Enter');
  await expect(page.locator('.due legend')).toBeFocused();
  await expect(page.locator('.due legend')).toHaveText(first);
});

test('the first lesson asks nothing, since none comes before it', async ({ page }) => {
  await open(page, 'lessons/');
  await page.locator('.lesson-list a').first().click();
  await expect(page.locator('.lesson-head .kicker')).toHaveText('Lesson 1');
  await expect(recall(page)).toHaveCount(0);
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });
  test('a lesson asks three questions, each with its answer folded', async ({ page }) => {
    await page.goto(lesson);
    await recall(page).locator('> summary').click();
    const answers = recall(page).locator('details');
    await expect(answers).toHaveCount(3);
    await expect(answers.first()).not.toHaveAttribute('open');
    await expect(page.locator('.my-note').first()).toBeHidden();
  });
});

test('a note is written beside a step, kept, listed with its place, and printed with the lesson', async ({
  page,
}) => {
  await open(page, lesson);
  const step = page.locator('[data-step=edge]');
  await step.getByRole('button', { name: 'my note' }).press('Enter');
  const field = step.getByRole('textbox', { name: /^My note/ });
  await expect(field).toBeFocused();
  await page.keyboard.type('My far edge came out thin.\nNext time eleven fingers.');
  await expect(step.locator('.my-note [role=status]')).toHaveText('Kept on this device.');
  await open(page, lesson);
  await expect(field).toHaveValue('My far edge came out thin.\nNext time eleven fingers.');
  const text = (await readPdf(await page.pdf({ format: 'A4' }))).map((one) => one.text).join(' ');
  expect(text).toContain('Next time eleven fingers.');
  expect(text, 'empty ones are not printed').not.toMatch(/my note(?!book)/);

  await open(page, 'rules/finger-fit/');
  await page.getByRole('button', { name: 'my note' }).click();
  await page.getByRole('textbox', { name: /^My note/ }).fill('Slides at 0.1.');
  await open(page, 'notebook/');
  const notes = page.locator('.all-notes');
  await expect(notes.getByRole('link').first()).toHaveText(
    'Lesson 12: What do the fingers leave at the top edge?',
  );
  await expect(notes.getByRole('link').last()).toContainText('Rule: ');
  await expect(notes.getByRole('textbox').last()).toHaveValue('Slides at 0.1.');
  await isAccessible(page);
});

test('exported, erased and brought in again, everything is back; each step can be undone', async ({
  page,
}, info) => {
  await open(page, 'rules/finger-fit/');
  await page.evaluate(() => {
    const put = (key: string, value: unknown) =>
      localStorage.setItem(
        `rule-and-reason.${key}`,
        typeof value === 'string' ? value : JSON.stringify(value),
      );
    put('notes', { version: 1, notes: { 'rules/finger-fit': 'Slides at 0.1.' } });
    put('progress', { lessons: { proportion: { steps: { pleasing: 'done' } } } });
    put('guesses', { 'lid-august': '3' });
    put('scratch', { version: 1, cells: [{ type: 'sum', text: '1 in to mm' }] });
    put('recall', { version: 1, answers: { 'proportion/1': [[20_000, 'right']] } });
    put('units', 'inch');
  });
  await open(page, 'notebook/');
  const before = await kept(page);
  const all = page.locator('.keep-all');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    all.getByRole('button', { name: 'save everything' }).click(),
  ]);
  expect(file.suggestedFilename()).toMatch(/^my-notebook-\d{4}-\d\d-\d\d\.json$/);
  const path = info.outputPath('notebook.json');
  await file.saveAs(path);

  await all.getByRole('button', { name: 'erase everything' }).press('Enter');
  await expect(all.locator('.erasing h3')).toBeFocused();
  await expect(all.locator('.erasing li')).toContainText([
    'lessons begun: 1',
    'guesses: 1',
    'questions answered: 1',
    'notes: 1',
    'scratch cells: 1',
    'inches or millimeters',
  ]);
  await all.getByRole('button', { name: 'erase it' }).press('Enter');
  await expect(all.getByRole('button', { name: 'undo' })).toBeFocused();
  expect(Object.keys(await kept(page))).toEqual([]);
  await expect(page.locator('.all-notes')).toContainText('None yet');

  await page.keyboard.press('Enter');
  await expect(all.getByRole('status')).toContainText('Undone');
  expect(await kept(page)).toEqual(before);
  await all.getByRole('button', { name: 'erase everything' }).click();
  await all.getByRole('button', { name: 'erase it' }).click();

  const bring = (buffer: Buffer) =>
    all
      .locator('input[type=file]')
      .setInputFiles({ name: 'mine.json', mimeType: 'application/json', buffer });
  const text = readFileSync(path, 'utf8');
  await bring(Buffer.from(text.slice(0, 200)));
  await expect(all.getByRole('status')).toContainText('mine.json: This file is damaged');
  await bring(Buffer.from(text.replace('Slides', 'Sticks')));
  await expect(all.getByRole('status')).toContainText('changed on its way');
  expect(Object.keys(await kept(page))).toEqual([]);

  await bring(Buffer.from(text));
  await expect(all.locator('.preview h3')).toBeFocused();
  await expect(all.getByRole('row', { name: /^notes/ })).toContainText('1');
  await isAccessible(page);
  await all.getByRole('button', { name: 'bring it in' }).click();
  expect(await kept(page)).toEqual(before);
  await expect(page.locator('.all-notes textarea')).toHaveValue('Slides at 0.1.');
});

test('put to mine keeps both notes; in the place of mine can be undone', async ({ page }) => {
  const theirs = writeNotebook({ notes: writeNotes({ 'rules/finger-fit': 'theirs' }) }, '2026-11-28');
  await open(page, 'rules/finger-fit/');
  await page.getByRole('button', { name: 'my note' }).click();
  await page.getByRole('textbox', { name: /^My note/ }).fill('mine');
  await open(page, 'notebook/');
  const all = page.locator('.keep-all');
  const bring = () =>
    all
      .locator('input[type=file]')
      .setInputFiles({ name: 'theirs.json', mimeType: 'application/json', buffer: Buffer.from(theirs) });
  const note = page.locator('.all-notes textarea');
  await bring();
  await all.getByRole('button', { name: 'bring it in' }).click();
  await expect(note).toHaveValue('mine\n\ntheirs');
  await bring();
  await all.getByLabel('in the place of mine').check();
  await all.getByRole('button', { name: 'bring it in' }).click();
  await expect(note).toHaveValue('theirs');
  await all.getByRole('button', { name: 'undo' }).click();
  await expect(note).toHaveValue('mine\n\ntheirs');
});

test('two tabs share notes and answers, and an erased notebook is empty in both', async ({
  page,
  context,
}) => {
  await open(page, 'rules/finger-fit/');
  const other = await context.newPage();
  await open(other, 'rules/finger-fit/');
  for (const tab of [page, other]) await tab.getByRole('button', { name: 'my note' }).click();
  const field = (tab: Page) => tab.getByRole('textbox', { name: /^My note/ });
  await field(page).fill('from one tab');
  await expect(field(other)).toHaveValue('from one tab');
  await open(page, 'notebook/');
  await page.getByRole('button', { name: 'erase everything' }).click();
  await page.getByRole('button', { name: 'erase it' }).click();
  await expect(field(other)).toHaveValue('');
  await field(other).fill('new');
  await page.getByRole('button', { name: 'undo' }).click();
  // What was written since stays beside what comes back.
  await expect(field(other)).toHaveValue('from one tab\n\nnew');
});

test('the file of a box takes the notes along', async ({ page }, info) => {
  await open(page, 'rules/finger-fit/');
  await page.getByRole('button', { name: 'my note' }).click();
  await page.getByRole('textbox', { name: /^My note/ }).fill('Slides at 0.1.');
  await open(page, 'my-box/');
  await openDrawer(page, 'share');
  await expect(page.locator('.drawer')).toContainText('The file takes your note along');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'save as a file' }).click(),
  ]);
  const path = info.outputPath('box.json');
  await file.saveAs(path);
  await page.evaluate(() => localStorage.clear());
  await open(page, 'my-box/');
  await openDrawer(page, 'share');
  await page.locator('.drawer input[type=file]').setInputFiles(path);
  await expect(page.locator('.drawer [role=status]').first()).toContainText('A note came with it');
  await open(page, 'rules/finger-fit/');
  await expect(page.getByRole('textbox', { name: /^My note/ })).toHaveValue('Slides at 0.1.');
});

for (const format of ['A4', 'Letter'] as const)
  test(`the cards print on ${format}: eight questions on a page, their answers on the next, nothing cut off`, async ({
    page,
  }) => {
    await open(page, 'notebook/cards/');
    const sheets = await page.locator('.sheet-of-cards').count();
    const cards = await page.locator('.card:not(.no-card)').count();
    await page.emulateMedia({ media: 'print' });
    const cut = await page
      .locator('.card')
      .evaluateAll((all) =>
        all.filter((one) => one.scrollHeight > one.clientHeight + 1).map((one) => one.textContent),
      );
    expect(cut).toEqual([]);
    const printed = await readPdf(await page.pdf({ format }));
    expect(printed).toHaveLength(sheets);
    const on = (text: string) => text.match(/lesson\s+\d+,\s+card\s+\d+/g) ?? [];
    expect(printed.flatMap(({ text }) => on(text))).toHaveLength(cards);
    for (let at = 0; at < printed.length; at += 2) {
      expect(on(printed[at]!.text).length).toBeLessThanOrEqual(8);
      expect(new Set(on(printed[at + 1]!.text))).toEqual(new Set(on(printed[at]!.text)));
    }
  });

/**
 * What a page fetches late may be gone: the network fails, or a new version has taken its place. Then words beside the
 * field say so, what was typed stays, and when the part is there again the same step works.
 * Over 150 lines: one list of all that is fetched late.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { dist, linkTo, open, openDrawer, takePart } from './site.ts';

test.use({ locale: 'en-GB' });

/** The scripts of the built site, as text. */
const scripts = new Map(
  readdirSync(join(dist, '_astro'))
    .filter((name) => name.endsWith('.js'))
    .map((name) => [name, readFileSync(join(dist, '_astro', name), 'utf8')]),
);
const namesIn = (text: string, asked: RegExp) => [...text.matchAll(asked)].map(([, name]) => name!);
const fetched = [...scripts.values()].flatMap((script) =>
  namesIn(script, /\bimport\([`'"]\.\/([^`'"]+)[`'"]\)/g),
);
/** What a page has from the start is not late, even where somebody asks for it once more: its scripts, and what these are made of. */
const fromTheStart = new Set(
  readdirSync(dist, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.html'))
    .flatMap((name) => namesIn(readFileSync(join(dist, name), 'utf8'), /_astro\/([\w.-]+\.js)/g)),
);
// A set goes on with what is added to it meanwhile.
for (const name of fromTheStart)
  for (const part of namesIn(scripts.get(name) ?? '', /\bfrom\s*[`'"]\.\/([^`'"]+)[`'"]/g))
    fromTheStart.add(part);
/** Every file that some script fetches late. */
const late = [
  ...new Set(fetched.filter((name) => !fromTheStart.has(name))),
  ...readdirSync(dist).filter((name) => /^(relations|ask|rules|notebook)-/.test(name)),
].sort();

/** Keeps the late files from a page until they are given back. @returns their names, as far as they were asked for */
async function keepBack(page: Page, asked: Set<string>): Promise<() => Promise<void>> {
  const isLate = (url: URL) => late.includes(url.pathname.split('/').at(-1)!);
  await page.route(isLate, (route) => {
    asked.add(new URL(route.request().url()).pathname.split('/').at(-1)!);
    return route.abort();
  });
  return () => page.unroute(isLate);
}

const typed = async (field: Locator, text: string) => {
  await field.fill(text);
  await field.press('Enter');
};

test('every file that is fetched late has a step that says so when it is missing, and goes on when it is there', async ({
  page,
}) => {
  test.setTimeout(120_000);
  expect(
    [...scripts.values()].join('').match(/(?<!\.)\bimport\(/g),
    'each late file is fetched under its plain name, and again under another if that fails',
  ).toHaveLength(2 * fetched.length);
  const asked = new Set<string>();
  let giveBack = await keepBack(page, asked);

  await test.step('a number, a reason, and what is folded on my box', async () => {
    await open(page, 'my-box/#walls');
    const wall = page.getByRole('textbox', { name: /^wall thickness/ });
    const wallIs = (value: string) =>
      expect(page.getByRole('slider', { name: /^wall thickness/ })).toHaveAttribute(
        'aria-valuetext',
        `${value} millimeters`,
      );
    await typed(wall, '11');
    await expect(page.getByRole('alert').filter({ hasText: 'Your text stays here' })).toBeVisible();
    await expect(wall).toHaveValue('11');
    await wallIs('8');

    await page.locator('.kept-rules > summary').click();
    const why = page.locator('.kept-rules [data-check=design-from-the-inside] details.why-rules');
    await why.locator('summary').click();
    await expect(why.locator('.reason')).toContainText('could not be fetched');

    const folds = ['#cut-list', '#drawings', '.all-numbers'].map((fold) => page.locator(fold));
    for (const fold of folds) {
      await fold.locator('summary').first().click();
      await expect(fold.getByRole('status')).toContainText('could not be fetched');
    }
    for (const drawer of ['my boxes', 'share'] as const) {
      await openDrawer(page, drawer);
      await expect(page.locator('.drawer').getByRole('status')).toContainText('could not be fetched');
    }

    await giveBack();
    // The same key again, without a change of the text.
    await wall.press('Enter');
    await wallIs('11');
    await why.locator('summary').click();
    await why.locator('summary').click();
    await expect(why.locator('.reason')).toContainText('Evidence');
    for (const fold of folds) {
      await fold.locator('summary').first().click();
      await fold.locator('summary').first().click();
      await expect(fold.locator('table, svg, .result').first()).toBeVisible();
    }
    await expect(page.getByRole('button', { name: 'copy a link' })).toBeVisible();
  });

  giveBack = await keepBack(page, asked);
  await test.step('the files of drawings, a size among the things, and many boxes', async () => {
    const save = page.getByRole('button', { name: 'save the drawings as SVG' }).first();
    await save.click();
    await expect(save.locator('xpath=..').getByRole('status')).toContainText('nothing is saved');
    await takePart(page, 'my accuracy');
    const errors = page.locator('details.accuracy');
    await errors.locator('summary').first().click();
    await expect(errors.getByRole('status')).toContainText('could not be fetched');
    await giveBack();
    const [file] = await Promise.all([page.waitForEvent('download'), save.click()]);
    expect(file.suggestedFilename()).toMatch(/\.svg$/);
    await errors.locator('summary').first().click();
    await errors.locator('summary').first().click();
    await expect(errors.locator('table')).toBeVisible();

    // A page that has not read a number yet.
    await open(page, 'my-box/');
    await takePart(page, 'inside');
    const thing = page.locator('.item').first();
    const length = thing.getByRole('textbox', { name: /^length/ });
    await expect(length).toBeVisible();
    giveBack = await keepBack(page, asked);
    await typed(length, '55');
    await expect(thing.getByRole('alert')).toContainText('Your text stays here');
    await expect(length).toHaveValue('55');
    await giveBack();
    await length.press('Enter');
    await expect(thing.getByRole('alert')).toHaveCount(0);
  });

  giveBack = await keepBack(page, asked);
  await test.step('the code of the build sheet', async () => {
    await open(page, 'build-sheet/');
    await expect(page.getByRole('status').filter({ hasText: 'The code could not be made' })).toBeVisible();
  });

  await test.step('the sheets of a class', async () => {
    await open(page, 'exercises/sheets/');
    await page.getByRole('textbox', { name: 'class' }).fill('7b');
    const make = page.getByRole('button', { name: 'make the sheets' });
    await make.click();
    await expect(page.locator('.sheet-said')).toContainText('could not be fetched');
    await expect(page.getByRole('textbox', { name: 'class' })).toHaveValue('7b');
    await giveBack();
    await make.click();
    await expect(page.locator('.paper-page').first()).toBeVisible();
    giveBack = await keepBack(page, asked);
  });

  await test.step('a guess and new numbers of a lesson', async () => {
    await open(page, 'lessons/groove-margins/');
    const guess = page.locator('.guess-form:has(input[type=text])').first();
    await typed(guess.getByRole('textbox'), '3');
    await expect(guess.locator('.message')).toContainText('Your text stays here');
    await expect(guess.getByRole('textbox')).toHaveValue('3');
    const exercise = page.locator('form.exercise').first();
    await typed(exercise.getByRole('textbox'), '3');
    await expect(exercise.getByRole('status')).toContainText('Your text stays here');
    await expect(exercise.getByRole('textbox')).toHaveValue('3');
    await giveBack();
    await exercise.getByRole('button', { name: 'check' }).click();
    await expect(exercise.getByRole('status')).not.toContainText('could not be fetched');
  });

  await test.step('the tries in a figure', async () => {
    giveBack = await keepBack(page, asked);
    await open(page, 'lessons/thickness-from-thickness/');
    const tries = page.locator('.lab').first().locator('.lab-tries');
    await tries.scrollIntoViewIfNeeded();
    await tries.locator('summary').click();
    await expect(tries.getByRole('status')).toContainText('could not be fetched');
    await giveBack();
    await tries.locator('summary').click();
    await tries.locator('summary').click();
    await expect(tries).toContainText('None yet');
  });

  await test.step('the sound of a tapped bottom', async () => {
    giveBack = await keepBack(page, asked);
    await open(page, 'lessons/the-bottom-you-can-hear/');
    await page.locator('.guess-card').last().getByRole('button', { name: 'just show me' }).click();
    const player = page.locator('.player');
    await player.getByRole('button', { name: 'one after another' }).click();
    await expect(player.getByRole('status')).toContainText('could not be fetched');
    await giveBack();
    await player.getByRole('button', { name: 'one after another' }).click();
    await expect(player.getByRole('status')).toContainText('Hz');
  });

  await test.step('the reader’s own box, at the door to it', async () => {
    const way = page.locator('.doors .way').last();
    giveBack = await keepBack(page, asked);
    await open(page, linkTo('', { name: 'Tea box', wall: 10 }));
    await expect(way).toHaveText(/^Tea box: .* could not be fetched$/);
    await giveBack();
    await page.reload();
    await expect(way).toHaveText(/^Tea box: \w+ things to look at$/);
  });

  await test.step('the reader’s own box and the texts of rules, on the page of all rules', async () => {
    giveBack = await keepBack(page, asked);
    await open(page, 'rules/');
    const walls = page.locator('.named-parts').getByRole('link', { name: 'walls' });
    await walls.click();
    await expect(page.locator('.pointed').getByRole('status')).toContainText('could not be fetched');
    await expect(page.locator('.rules-beside section:visible')).toHaveAttribute('id', 'walls');
    await page.locator('#a-z > summary').click();
    await expect(page.locator('#a-z .message')).toContainText('could not be fetched');
    await giveBack();
    await page.locator('.named-parts').getByRole('link', { name: 'bottom' }).click();
    await expect(page.locator('.pointed').getByRole('status')).toHaveCount(0);
    await expect(page.locator('.pointed .bench-box .spoken')).toContainText('Marked: the bottom');
  });

  await test.step('the answers to a question', async () => {
    giveBack = await keepBack(page, asked);
    await open(page, 'sources/');
    await page.locator('header').getByRole('button', { name: /^Ask/ }).click();
    const field = page.getByRole('dialog', { name: 'Ask' }).getByRole('textbox');
    await field.fill('how wide is my bottom');
    const said = page.getByRole('dialog', { name: 'Ask' }).getByRole('status');
    await expect(said.filter({ hasText: 'could not be fetched' })).toBeVisible();
    await giveBack();
    await field.press('Enter');
    await expect(page.getByRole('dialog', { name: 'Ask' }).getByRole('listitem').first()).toBeVisible();
    await expect(said.filter({ hasText: 'could not be fetched' })).toHaveCount(0);
  });

  await test.step('what works out scratch cells, and the words of relations', async () => {
    giveBack = await keepBack(page, asked);
    const worker = /_astro\/worker-/;
    await page.route(worker, (route) => route.abort());
    await open(page, 'scratch/');
    const field = page.getByRole('combobox', { name: 'cell 1' });
    await typed(field, '1 in to mm');
    await expect(page.getByRole('alert')).toContainText('could not be fetched');
    await expect(field).toHaveValue('1 in to mm');
    await giveBack();
    await page.unroute(worker);
    await field.press('Enter');
    await expect(page.locator('.cell-result').first()).toContainText('25.4');
    await expect(page.getByRole('alert')).toHaveCount(0);

    // The cell at the end of a lesson, which wakes when it is used.
    giveBack = await keepBack(page, asked);
    await page.route(worker, (route) => route.abort());
    await open(page, 'lessons/proportion/');
    await page.locator('.own-sum > summary').click();
    const sum = page.getByRole('combobox', { name: 'a sum of this lesson' });
    await typed(sum, '2 in to mm');
    await expect(page.locator('.own-sum').getByRole('alert')).toContainText('could not be fetched');
    await expect(sum).toHaveValue('2 in to mm');
    await giveBack();
    await page.unroute(worker);
    await sum.press('Enter');
    await expect(page.locator('.own-sum .cell-result')).toContainText('50.8');
    await expect(page.locator('.own-sum').getByRole('alert')).toHaveCount(0);
  });

  await test.step('the questions before a lesson, what writes a note, and what takes the notebook along', async () => {
    giveBack = await keepBack(page, asked);
    await open(page, 'lessons/proportion/');
    const fold = page.locator('details.recalls');
    await fold.locator('> summary').click();
    await expect(fold.getByRole('status')).toContainText('could not be fetched');
    await expect(fold.locator('ol.recall > li')).toHaveCount(3);
    const note = page.locator('.my-note').first();
    await note.getByRole('button').click();
    await expect(note.getByRole('alert')).toContainText('could not be fetched');
    await giveBack();
    await fold.locator('> summary').click();
    await fold.locator('> summary').click();
    await expect(fold.getByRole('button', { name: 'check' })).toBeVisible();
    await note.getByRole('button').click();
    await expect(note.getByRole('textbox')).toBeFocused();
    giveBack = await keepBack(page, asked);
    await open(page, 'notebook/');
    await expect(page.getByText('What takes your notebook along could not be fetched')).toBeVisible();
    await giveBack();
    await page.getByRole('button', { name: 'try again' }).click();
    await expect(page.getByRole('button', { name: 'erase everything' })).toBeVisible();
  });

  await test.step('what shows a figure on the wall', async () => {
    giveBack = await keepBack(page, asked);
    await open(page, 'lessons/proportion/');
    const link = page.locator('a.to-wall').first();
    await link.click();
    await expect(link.getByRole('status')).toContainText('could not be fetched');
    await giveBack();
    await link.click();
    await expect(page.locator('html')).toHaveAttribute('data-wall');
  });

  await test.step('what else moves the lid of the front page’s guess', async () => {
    const card = page.locator('.guess-card');
    giveBack = await keepBack(page, asked);
    await open(page, '');
    await card.getByRole('button', { name: 'just show me' }).click();
    await expect(card.getByRole('status').filter({ hasText: 'could not be fetched' })).toBeVisible();
    await expect(card.locator('.guess-answer')).toContainText('it jams');
    await giveBack();
    await page.reload();
    await expect(card.getByRole('slider')).toBeVisible();
    await expect(page.getByText('could not be fetched')).toHaveCount(0);
  });

  expect([...asked].sort(), 'late files without a step above').toEqual(late);
});

for (const path of [
  '',
  'lessons/proportion/',
  'my-box/',
  'build-sheet/',
  'templates/',
  'woods/',
  'rules/',
  'scratch/',
])
  test(`/${path} whose scripts are gone says so beside every control, and beside the one that is used`, async ({
    page,
  }) => {
    await page.route('**/_astro/*.js*', (route) => route.abort());
    await page.goto(path);
    // What is folded tries once it is opened.
    if (path === 'rules/') await page.locator('#a-z > summary').click();
    const words = page.getByText('could not be fetched');
    // Each part tries twice before it gives up.
    // What wakes when it is touched has not been asked for yet.
    const parts = page.locator('astro-island:not([client=touch]):has(input, select, textarea, button)');
    await expect(words).toHaveCount(await parts.count());
    expect(await parts.count()).toBeGreaterThan(0);
    for (const part of await parts.all()) {
      await expect(part.getByText('could not be fetched')).toHaveCount(1);
      const field = part.locator('input[type=text]:visible').last();
      if ((await field.count()) === 0) continue;
      await field.fill('11');
      const message = part.getByText('could not be fetched');
      await expect(message).toBeVisible();
      const [at, from] = [await message.boundingBox(), await field.boundingBox()];
      expect(Math.abs(at!.y - from!.y), 'the words stand beside the field').toBeLessThan(120);
      await expect(field).toHaveValue('11');
    }
  });

test('what is typed before a part turns out to be gone gets the words beside it, and reloading brings the part', async ({
  page,
}) => {
  let fail = () => {};
  const failed = new Promise<void>((resolve) => {
    fail = resolve;
  });
  await page.route('**/_astro/*.js*', async (route) => {
    await failed;
    await route.abort();
  });
  await page.goto('my-box/', { waitUntil: 'commit' });
  const lid = page.getByRole('textbox', { name: /^lid thickness/ });
  await lid.fill('11');
  fail();
  const row = page.locator('.control').filter({ has: lid });
  await expect(row.getByText('could not be fetched')).toBeVisible({ timeout: 20_000 });
  await expect(lid).toHaveValue('11');
  await page.unroute('**/_astro/*.js*');
  await open(page, 'my-box/');
  await expect(page.getByText('could not be fetched')).toHaveCount(0);
});

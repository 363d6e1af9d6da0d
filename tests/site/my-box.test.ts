/**
 * A first builder's way: a box from nothing by keyboard, kept as a file, opened again, and taken to the bench on paper.
 * Over 150 lines: one page, all its ways.
 */
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { exampleBox } from '../../src/box/subjects/example.ts';
import type { Box } from '../../src/box/subjects/inputs.ts';
import { siteVersion } from '../../src/notebook/site-version.ts';
import { benchParts, linkTo, open, openDrawer } from './site.ts';

test.use({ locale: 'en-GB' });

/** Nothing like the example, and nothing in it. */
const nothing: Partial<Box> = {
  name: 'Nothing yet',
  items: [],
  contentsLength: 60,
  contentsWidth: 50,
  contentsHeight: 30,
  clearance: 5,
  headroom: 4,
  fingerRoom: 10,
  lining: 1,
  kind: 'sawn',
  wall: 12,
  joint: 'butt',
  fingerWidth: 6,
  fingerFit: 0.2,
  stepError: 0.1,
  bottom: 'plywood',
  bottomSeat: 'rabbet',
  bottomThickness: 8,
  bottomTongue: 3,
  bottomLip: 6,
  grooveDepth: 3,
  bottomGap: 1,
  lid: 'plywood',
  pull: 'glued',
  lidThickness: 7,
  lidLip: 5,
  lidGrooveDepth: 3,
  lidPlay: 0.8,
  species: 'black-walnut',
  ringAngle: 45,
  temperature: 25,
  humidityToday: 50,
  humidityDry: 35,
  humidityDamp: 65,
  push: 30,
  boardLength: 1200,
  boardWidth: 200,
  boardThickness: 30,
  kerf: 2,
  planing: 2,
  wallsFrom: 'bookmatched',
  angleError: 0.3,
  lengthError: 0.3,
};

const choices: Readonly<Record<string, string>> = {
  'kind of box': 'sliding lid in grooves',
  'corner joint': 'finger joint (box joint)',
  bottom: 'solid wood',
  'the bottom sits in': 'a groove',
  'lid panel': 'solid wood',
  pull: 'a thumb notch',
  'walls come from': 'one strip, in walk-round order',
};
/** What is typed, by the words before the field. */
const numbers: Readonly<Record<string, number>> = {
  'room on each side': exampleBox.clearance,
  'room above the contents': exampleBox.headroom,
  'room for fingers, in the length': exampleBox.fingerRoom,
  lining: exampleBox.lining,
  'wall thickness': exampleBox.wall,
  'finger width': exampleBox.fingerWidth,
  'slot minus finger': exampleBox.fingerFit,
  'error of each step': exampleBox.stepError,
  'bottom thickness': exampleBox.bottomThickness,
  'edge of the bottom in its groove': exampleBox.bottomTongue,
  'wood below the bottom groove': exampleBox.bottomLip,
  'depth of the bottom groove': exampleBox.grooveDepth,
  'gap at each side of the bottom': exampleBox.bottomGap,
  'lid thickness': exampleBox.lidThickness,
  'wood above the lid groove': exampleBox.lidLip,
  'depth of the lid groove': exampleBox.lidGrooveDepth,
  'play of the lid, both sides together': exampleBox.lidPlay,
  'growth rings to the face': exampleBox.ringAngle,
  temperature: exampleBox.temperature,
  'humidity today': exampleBox.humidityToday,
  'humidity at the driest': exampleBox.humidityDry,
  'humidity at the dampest': exampleBox.humidityDamp,
  'push by hand': exampleBox.push,
  'board length': exampleBox.boardLength,
  'board width': exampleBox.boardWidth,
  'board thickness, rough': exampleBox.boardThickness,
  'kerf: width of the saw cut': exampleBox.kerf,
  'planed off each face': exampleBox.planing,
  'error of the saw’s angle': exampleBox.angleError,
  'error of a part’s length': exampleBox.lengthError,
};

/** What has the focus: kind of element, the words that name it, the sizes it stands beside. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLInputElement | HTMLSelectElement | HTMLElement | null;
    const label = element && 'labels' in element ? element.labels?.[0] : undefined;
    const own = label ? [...label.childNodes].find((node) => node.nodeType === Node.TEXT_NODE) : undefined;
    return {
      tag: element?.localName ?? '',
      type: element?.getAttribute('type') ?? '',
      fold: element?.localName === 'summary' ? (element.closest('details')?.open ? 'open' : 'closed') : '',
      name: (own ?? label ?? element)?.textContent?.trim().replace(/\s+/g, ' ') ?? '',
      sizes: [...(element?.closest('li')?.querySelectorAll('p .mm') ?? [])]
        .map(({ textContent }) => textContent.replace('\u00a0', ' '))
        .join(' by '),
      chosen: element instanceof HTMLSelectElement ? (element.selectedOptions[0]?.textContent ?? '') : '',
    };
  });

async function type(page: Page, text: string) {
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
}

/** Steps through the options of the select that has the focus. */
async function choose(page: Page, wanted: RegExp | string) {
  await page.keyboard.press('Home');
  for (let step = 0; step < 200; step++) {
    const { chosen } = await focused(page);
    if (typeof wanted === 'string' ? chosen === wanted : wanted.test(chosen)) return;
    await page.keyboard.press('ArrowDown');
  }
  throw new Error(`no option ${wanted}`);
}

/** Presses Enter on the button that has the focus and gives the text of the file that is saved. */
async function saved(page: Page): Promise<string> {
  const download = page.waitForEvent('download');
  await page.keyboard.press('Enter');
  return readFileSync(await (await download).path(), 'utf8');
}

test('the example box is designed from nothing with the keyboard alone, and its file holds that box', async ({
  page,
}) => {
  test.setTimeout(240_000);
  await open(page, linkTo('my-box/', nothing));
  const done = new Set<string>();
  /** Parts in the order of their names; then once more the first, whose room above gave way to fingers and lips. */
  const way = [...benchParts, 'inside'];
  let taken = 0;
  let file: string | undefined;
  for (let press = 0; press < 2500 && file === undefined; press++) {
    await page.keyboard.press('Tab');
    const { tag, type: kind, name, fold } = await focused(page);
    if (kind === 'range' || kind === 'file') continue;
    if (tag === 'a' && (benchParts as readonly string[]).includes(name)) {
      // From the name the focus goes to the heading of the part, and on to its controls.
      if (way[taken] !== name) continue;
      taken += 1;
      await page.keyboard.press('Enter');
      continue;
    }
    if (tag === 'summary' && fold === 'closed' && /^(more about|change what goes in)/.test(name)) {
      await page.keyboard.press('Enter');
      // What it holds is drawn when it is open.
      await expect(
        page.locator('details:focus-within').last().locator('input, select').first(),
      ).toBeVisible();
    } else if (tag === 'select' && name === 'add' && !done.has('add')) {
      await page.keyboard.press('d');
      // The new row stands before the select.
      for (let back = 0; back < 10 && (await focused(page)).name !== 'how many'; back++)
        await page.keyboard.press('Shift+Tab');
      await type(page, '28');
      await page.keyboard.press('Tab');
      await expect(page.getByRole('button', { name: 'more ways' })).toBeVisible();
    } else if (name === 'more ways' && !done.has('more ways')) {
      await page.keyboard.press('Enter');
      // The ways stand before the button that shows more of them.
      for (let back = 0; back < 100; back++) {
        await page.keyboard.press('Shift+Tab');
        if ((await focused(page)).sizes === '150 mm by 90 mm by 25 mm') break;
      }
      await page.keyboard.press('Enter');
    } else if (tag === 'select' && name === 'wood') await choose(page, /^(black cherry|cherry, black)/i);
    else if (tag === 'select' && choices[name] && !done.has(name)) await choose(page, choices[name]);
    else if (tag === 'input' && numbers[name] !== undefined) await type(page, String(numbers[name]));
    else if (name === 'name of this box') await type(page, exampleBox.name);
    else if (name === 'share' && taken === way.length) await page.keyboard.press('Enter');
    else if (name === 'save as a file') file = await saved(page);
    else continue;
    done.add(name);
  }
  const missed = [...Object.keys(choices), ...Object.keys(numbers), 'add', 'more ways'].filter(
    (name) => !done.has(name),
  );
  expect(missed, 'every control is reached by Tab').toEqual([]);
  expect(JSON.parse(file!)).toEqual({ version: 1, site: siteVersion, box: exampleBox });
});

test('a saved file opens again as the same box', async ({ page, browser, baseURL }) => {
  const box: Partial<Box> = {
    name: 'Two of a kind',
    wall: 11,
    joint: 'keyed-mitre',
    items: [{ name: 'card', length: 90, width: 60, height: 20, count: 2 }],
    accepted: { 'wall-thickness': 'I like it “so”.' },
  };
  await open(page, linkTo('my-box/', box));
  await openDrawer(page, 'share');
  await page.getByRole('button', { name: 'save as a file' }).focus();
  const file = await saved(page);

  const other = await (await browser.newContext({ locale: 'en-GB' })).newPage();
  await open(other, `${baseURL}my-box/`);
  await openDrawer(other, 'share');
  const picker = other.getByLabel('open a file');
  await picker.setInputFiles({ name: 'box.json', mimeType: 'application/json', buffer: Buffer.from(file) });
  await expect(other.getByText('Two of a kind is open.')).toBeVisible();
  await other.getByRole('button', { name: 'save as a file' }).focus();
  expect(await saved(other)).toBe(file);
  expect(JSON.parse(file).box).toEqual({ ...exampleBox, ...box });
  await other.context().close();
});

test('hostile and damaged files are refused with a message, and the box stays as it was', async ({
  page,
}) => {
  await open(page, 'my-box/');
  await openDrawer(page, 'share');
  const refused: [string, string][] = [
    ['not JSON', 'sawdust'],
    ['empty', ''],
    ['another version', JSON.stringify({ version: 99, box: {} })],
    ['a list', '[1, 2, 3]'],
    ['a word for a number', JSON.stringify({ version: 1, box: { wall: '9.5' } })],
    ['a size beyond any bench', JSON.stringify({ version: 1, box: { wall: 1e9 } })],
    ['something unknown', JSON.stringify({ version: 1, box: { run: 'alert(1)' } })],
    ['a prototype', '{"version":1,"box":{"__proto__":{"wall":1}}}'],
    ['a name as long as a book', JSON.stringify({ version: 1, box: { name: 'x'.repeat(10_000) } })],
    ['far too large', ' '.repeat(300_000)],
    ['a picture', '\u0089PNG\r\n\u001a\n'],
  ];
  const picker = page.getByLabel('open a file');
  const status = page.locator('.designs [role=status]');
  for (const [what, text] of refused) {
    await picker.setInputFiles({
      name: `${what}.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await expect(status, what).toContainText(`${what}.json: `);
    await expect(status, what).toContainText('Your box is as it was.');
  }
  await page.getByRole('button', { name: 'save as a file' }).focus();
  expect(JSON.parse(await saved(page)).box).toEqual(exampleBox);
});

test('words from a file stay words: a name that looks like a page is shown, not run', async ({ page }) => {
  let asked = false;
  page.on('dialog', (dialog) => {
    asked = true;
    void dialog.dismiss();
  });
  const name = '<img src=x onerror=alert(1)>';
  await open(page, linkTo('build-sheet/', { name }));
  await expect(page.locator('h1')).toHaveText(name);
  expect(asked).toBe(false);
});

test('two designs stand side by side with what differs, and the comparison closes', async ({ page }) => {
  await open(page, 'my-box/#walls');
  await openDrawer(page, 'my boxes');
  await page.getByRole('button', { name: 'keep it on this device' }).click();
  await page.getByRole('textbox', { name: 'wall thickness' }).fill('12');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'compare with mine' }).click();
  const table = page.locator('.compare table');
  await expect(table.getByRole('row', { name: /^wall thickness/ })).toHaveText(/12\smm.*8\smm/);
  await expect(table.getByRole('row', { name: /^kind of box/ })).toHaveCount(0);
  await page.getByRole('button', { name: 'close the comparison' }).click();
  await expect(table).toHaveCount(0);
});

test('a drawing is saved as an SVG that needs nothing else and shows one system of units', async ({
  page,
}) => {
  await open(page, 'my-box/');
  const downloads: Promise<string>[] = [];
  page.on('download', (one) => downloads.push(one.path().then((path) => readFileSync(path, 'utf8'))));
  await page.locator('#drawings > summary').click();
  await page.getByRole('button', { name: 'save the drawings as SVG' }).click();
  await expect.poll(() => downloads.length).toBeGreaterThan(1);
  for (const text of await Promise.all(downloads)) {
    const faults = await page.evaluate((svg) => {
      const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml');
      const ids = [...parsed.querySelectorAll('[id]')].map(({ id }) => id);
      const pointed = [...svg.matchAll(/url\(#([^)]+)\)/g)].map((found) => found[1]!);
      return [
        ...[...parsed.querySelectorAll('parsererror')].map(({ textContent }) => textContent),
        ...pointed.filter((id) => !ids.includes(id)).map((id) => `${id} is missing`),
        ...(/var\(|class=|https?:\/\/(?!www\.w3\.org)/.exec(svg) ?? []),
      ];
    }, text);
    expect(faults).toEqual([]);
  }
  const shown = (await Promise.all(downloads)).join('').replace(/<desc.*?<\/desc>/gs, '');
  expect(shown).toContain('172\u00a0mm<');
  expect(shown).not.toMatch(/\d\u00a0in</);
});

test('the reader’s errors are turned into boxes only when asked, always the same ones', async ({ page }) => {
  await open(page, 'my-box/#accuracy');
  const section = page.locator('.accuracy');
  await expect(section.locator('table')).toHaveCount(0);
  await section.locator('summary').first().click();
  await expect(section.getByRole('row', { name: /^gap at the worst corner/ })).toBeVisible();
  const first = await section.locator('table').textContent();
  await page.reload();
  await section.locator('summary').first().click();
  await expect(section.locator('table')).toHaveText(first!);
});

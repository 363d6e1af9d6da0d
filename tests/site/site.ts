/** The built site as the tests see it: which pages there are, and a page opened with its troubles noted. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { CDPSession, Locator, Page } from '@playwright/test';
import type { Box } from '../../src/box/subjects/inputs.ts';

/** Folder of the built site. */
export const dist = fileURLToPath(new URL('../../dist/', import.meta.url));

const files = existsSync(dist)
  ? readdirSync(dist, { recursive: true, encoding: 'utf8' }).map((name) => name.replaceAll('\\', '/'))
  : [];

/** Address of every page, from the site's root: `''`, `'lessons/proportion/'`, `'404.html'`. */
export const pages = files
  .filter((name) => name.endsWith('.html'))
  .map((name) => name.replace(/(^|\/)index\.html$/, '$1'))
  .sort();
if (pages.length === 0) throw new Error('dist holds no page: run `npm run build` first');

/** The pages with a lesson. */
export const lessons = pages.filter((path) => /^lessons\/[^/]+\/$/.test(path));

/** A page that stands among others and is like none of them. */
const sheets = 'exercises/sheets/';

/** Every lesson, and one page of each other kind. */
export const everyKind: readonly string[] = [
  ...new Set([
    ...lessons,
    ...new Map(
      pages.filter((path) => path !== sheets).map((path) => [path.replace(/(?<=\/)[^/]+\/$/, '*/'), path]),
    ).values(),
    sheets,
  ]),
];

/** The words that units are heard as, in the reader's system. */
export const heardUnits = {
  mm: 'millimeters|cubic centimeters|degrees|degrees Celsius|percent|percentage points|newtons|grams|days',
  inch: 'inches|cubic inches|degrees|degrees Fahrenheit|percent|percentage points|pounds-force|ounces|days',
} as const;

/** The text field of a number by the words of its label, whatever unit its name ends with. */
export const numberField = (within: Page | Locator, label: string): Locator =>
  within.getByRole('textbox', { name: new RegExp(`^${label}( in (${heardUnits.mm}|${heardUnits.inch}))?$`) });

/** HTML of a page, as built. */
export const htmlOf = (path: string) =>
  readFileSync(dist + (path === '' || path.endsWith('/') ? `${path}index.html` : path), 'utf8');

/** True if the built site has this page or file. */
export const isBuilt = (path: string) => pages.includes(path) || files.includes(path);

/**
 * Opens a page and waits until it is loaded and each of its islands is awake.
 * @returns a list that also gets every later console error, uncaught exception and failed request
 */
export async function open(page: Page, path: string): Promise<string[]> {
  const troubles: string[] = [];
  page.on('console', (message) => message.type() === 'error' && troubles.push(message.text()));
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('requestfailed', (request) => troubles.push(`${request.url()}: ${request.failure()?.errorText}`));
  page.on(
    'response',
    (answer) => answer.status() >= 400 && troubles.push(`${answer.url()}: ${answer.status()}`),
  );
  await page.goto(path, { waitUntil: 'load' });
  await page.waitForFunction(
    () => !document.querySelector('astro-island[ssr]:not([client=visible], [client=touch])'),
  );
  return troubles;
}

/** A link to a box: what differs from the example, as `src/notebook/codec.ts` writes it. */
export const linkTo = (page: string, changes: Partial<Box>) =>
  `${page}#box=3.${Buffer.from(JSON.stringify(changes)).toString('base64url')}`;

/** The names on the bench of my box, as a reader meets them. */
export const benchParts = [
  'inside',
  'walls',
  'corners',
  'grooves',
  'bottom',
  'lid',
  'wood and air',
  'the board',
  'my accuracy',
] as const;
export type BenchPart = (typeof benchParts)[number];

/** Takes a part on the bench of my box by its name, and unfolds the rest of its controls and of what it holds. */
export async function takePart(page: Page, part: BenchPart): Promise<void> {
  // On a phone the names are in the list of the bar alone; the links lead there all the same.
  const name = page.locator('.part-names a').getByText(part, { exact: true });
  await name.evaluate((link: HTMLAnchorElement) => link.click());
  const folds = page.locator('.part :is(.more-inputs, .change-contents):not([open]) > summary');
  for (let left = await folds.count(); left > 0; left--)
    await folds.first().evaluate((fold: HTMLElement) => fold.click());
}

/** Opens what the top of my box leads to: on a phone behind “more”. */
export async function openDrawer(page: Page, name: 'new box' | 'my boxes' | 'share'): Promise<void> {
  const button = page.getByRole('button', { name, exact: true });
  if (!(await button.isVisible())) await page.getByRole('button', { name: 'more', exact: true }).click();
  if ((await button.getAttribute('aria-expanded')) !== 'true') await button.click();
}

/** Chooses the usual ruler of a reader of these units, in the header of any page. */
export async function chooseUnits(page: Page, system: 'mm' | 'inch'): Promise<void> {
  const choice = page.locator('details.my-ruler');
  await choice.evaluate((fold) => fold.setAttribute('open', ''));
  await choice.getByRole('radio', { name: system === 'mm' ? '0.5 mm' : '1/32 in' }).click();
  await choice.evaluate((fold) => fold.removeAttribute('open'));
}

/** A finger that goes from a place on the screen by so much, px. */
export async function swipe(
  devtools: CDPSession,
  from: readonly [number, number],
  by: readonly [number, number],
) {
  const at = (share: number) => [{ x: from[0] + by[0] * share, y: from[1] + by[1] * share }];
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
  for (let step = 1; step <= 8; step++)
    await devtools.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(step / 8) });
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

/** Lays a reader's own style over a page. */
export const addStyle = (page: Page, css: string): Promise<void> =>
  page.evaluate((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    document.adoptedStyleSheets.push(sheet);
  }, css);

/** The build sheet and the templates as they come out of a printer. */
import { expect, type Page, test } from '@playwright/test';
import type { Box } from '../../src/box/subjects/inputs.ts';
import { readPdf } from './pdf.ts';
import { readCode } from './read-code.ts';
import { linkTo, open } from './site.ts';

const papers = [
  { format: 'A4', width: 210, height: 297 },
  { format: 'Letter', width: 215.9, height: 279.4 },
] as const;

async function printed(page: Page, address: string, format: 'A4' | 'Letter') {
  await open(page, address);
  await page.evaluate(() => document.fonts.ready);
  if (address.startsWith('build-sheet')) await expect(page.locator('.qr')).toBeVisible();
  return readPdf(await page.pdf({ format }));
}

/** The box with the longest sheet we know of, and one that cannot be built. */
const boxes: Record<string, Partial<Box>> = {
  example: {},
  'keyed, sawn, in inches, with exceptions': {
    name: 'Keepsake box',
    kind: 'sawn',
    joint: 'keyed-mitre',
    bottom: 'plywood',
    bottomFit: 'glued',
    wallsFrom: 'bookmatched',
    sizeFrom: 'outside',
    wantedLength: 330,
    wantedWidth: 200,
    wantedHeight: 120,
    wall: 5,
    accepted: { 'wall-thickness': 'Thin walls are the look of it.' },
  },
  'a hole above the front': { headroom: 7 },
  'lift-off with dovetails': { kind: 'lift-off', joint: 'dovetail', lidHeight: 25, headroom: 25 },
  'sawn with keys': { kind: 'sawn', joint: 'keyed-mitre', headroom: 30 },
  'lift-off with splines': { kind: 'lift-off', joint: 'splined-mitre', wantedHeight: 80, sizeFrom: 'inside' },
  'not to be built': { sizeFrom: 'outside', wantedHeight: 15, grooveDepth: 15, fingerWidth: 25 },
};

for (const { format, width, height } of papers) {
  for (const [what, changes] of Object.entries(boxes)) {
    test(`the build sheet of a box (${what}) fills its pages of ${format}, in black, white and gray`, async ({
      page,
    }) => {
      const pages = await printed(page, linkTo('build-sheet/', changes), format);
      expect(pages.length).toBeGreaterThanOrEqual(2);
      // Every step that can hurt says its hazard and its safeguard, which the longest boxes need a fifth page for.
      expect(pages.length).toBeLessThanOrEqual(5);
      // The last page is worth its paper: it takes what is measured on the finished box.
      if (what !== 'not to be built') expect(pages.at(-1)!.text).toContain('As built');
      for (const one of pages) {
        expect(one.width).toBeCloseTo(width, 0);
        expect(one.height).toBeCloseTo(height, 0);
        // A page with next to nothing on it is a page too many.
        expect(one.text.length).toBeGreaterThan(80);
        expect(one.filled).toBeGreaterThan(1 / 5);
        for (const color of one.colors) expect(color).toMatch(/^#(..)\1\1$/);
      }
      const text = pages.map((one) => one.text).join(' ');
      for (const heading of ['Cut list', 'Set-ups', 'Gaps', 'Order of work', 'What the rules say'])
        expect(text).toContain(heading);
      expect(text).toContain('qualified instructor');
      expect(text).not.toMatch(/NaN|undefined|Infinity/);
      // No button, menu or link bar on paper.
      expect(text).not.toMatch(/print this sheet|change the box|lessons\s+rules\s+woods|Rule & Reason/);
    });
  }

  test(`the bars of the templates measure 100 mm and 4 in on ${format}`, async ({ page }) => {
    const [first] = await printed(page, 'templates/', format);
    expect(first!.bar('100 mm')).toBeGreaterThan(99.9);
    expect(first!.bar('100 mm')).toBeLessThan(100.1);
    expect(first!.bar('4 in')).toBeGreaterThan(101.5);
    expect(first!.bar('4 in')).toBeLessThan(101.7);
  });
}

test('a wall longer than the paper comes in pieces that are all there', async ({ page }) => {
  const changes: Partial<Box> = {
    sizeFrom: 'outside',
    wantedLength: 600,
    wantedWidth: 200,
    wantedHeight: 90,
  };
  const pages = await printed(page, linkTo('templates/', changes), 'Letter');
  const text = pages.map((one) => one.text).join(' ');
  // 600 mm in tiles of at most 180 mm that share 12: (600 − 12) / 168 = 3.5, so 4.
  for (const piece of [1, 2, 3, 4]) expect(text).toContain(`left side, inside face, piece ${piece} of 4`);
  expect(text).not.toContain('piece 5');
});

test('the sheet names what the box is for, and asks for a name: on paper by a line, on the screen by a field', async ({
  page,
}) => {
  const [first] = await printed(page, linkTo('build-sheet/', {}), 'A4');
  expect(first!.text).toContain('28 × domino');
  expect(first!.text).toMatch(/Made by/);
  const field = page.getByRole('textbox', { name: 'Name on this sheet' });
  await field.fill('Box for Ada');
  await field.press('Tab');
  await expect(page.locator('h1')).toHaveText('Box for Ada');
});

test('an accepted exception stands on the sheet with its reason, a refusal with what mends it', async ({
  page,
}) => {
  const text = async (changes: Partial<Box>) =>
    (await printed(page, linkTo('build-sheet/', changes), 'A4')).map((one) => one.text).join(' ');
  expect(await text(boxes['keyed, sawn, in inches, with exceptions']!)).toContain(
    'Accepted because: Thin walls are the look of it.',
  );
  expect(await text(boxes['not to be built']!)).toContain('This cannot be built yet');
});

test('the QR code leads to the link that is printed beside it', async ({ page }) => {
  await open(page, linkTo('build-sheet/', { name: 'Tea box', wall: 8 }));
  await expect(page.locator('.qr')).toBeVisible();
  const link = await page.locator('.link-text').textContent();
  expect(link).toContain('/my-box/#box=3.');
  expect(await readCode(page.locator('.qr'))).toBe(link);
});

/** A page stays light enough for a phone in a workshop. The limits are those of the project's first plan. */
import { expect, test } from '@playwright/test';
import { weigh } from './measure.ts';
import { lessons, pages } from './site.ts';

const kB = 1000;

// One of the other pages of each kind stands for its kind; every lesson is weighed.
const oneOfEachKind = [...new Map(pages.map((path) => [path.replace(/[^/]+\/$/, '*/'), path])).values()];

for (const path of new Set([...lessons, ...oneOfEachKind])) {
  test(`/${path} stays within 20 kB of HTML, 8 of CSS, 30 of JS, 50 of fonts and 15 requests, read to its end`, async ({
    browser,
    baseURL,
  }) => {
    const { scrolled } = await weigh(browser, baseURL + path);
    expect.soft(scrolled.html, 'HTML').toBeLessThanOrEqual(20 * kB);
    expect.soft(scrolled.css, 'CSS').toBeLessThanOrEqual(8 * kB);
    expect.soft(scrolled.js, 'JS').toBeLessThanOrEqual(30 * kB);
    expect.soft(scrolled.fonts, 'fonts').toBeLessThanOrEqual(50 * kB);
    expect.soft(scrolled.requests, 'requests').toBeLessThanOrEqual(15);
    expect(scrolled.html, 'a page was loaded at all').toBeGreaterThan(0);
  });
}

/**
 * A page stays light enough for a phone in a workshop: at most 20 requests and 30 kB of fonts, and what it weighs today.
 * The aim of 90 kB for a full lesson is missed by those with many figures; the pages that are tools carry the whole
 * calculation and weigh more.
 */
import { expect, test } from '@playwright/test';
import { weigh } from './measure.ts';
import { everyKind } from './site.ts';

const kB = 1000;
// 0.3 kB of the styles of every page are for those who ask for more space between letters.
const lesson = { html: 22, css: 9.2, js: 56, fonts: 30, requests: 17 };
/** Limits of the pages that weigh more than a lesson. */
const heavier: Record<string, Partial<typeof lesson>> = {
  'lessons/a-lid-that-runs/': { html: 24, js: 68 },
  'lessons/a-year-of-a-panel/': { html: 30, js: 78, requests: 18 },
  // Every step has a place for a note.
  'lessons/air-and-wood/': { html: 25, js: 60 },
  'lessons/flat-smooth-and-kind/': { html: 25, js: 75 },
  // Gluing builds on movement, joints and the year.
  'lessons/glue-up-without-surprises/': { html: 25, js: 83, requests: 19 },
  'lessons/grain-round-the-corner/': { html: 24, js: 74, requests: 18 },
  'lessons/groove-margins/': { js: 63 },
  'lessons/is-it-square/': { js: 58 },
  'lessons/joint-spacing/': { html: 24, js: 58 },
  'lessons/lift-off-and-hinged-lids/': { js: 67 },
  'lessons/reading-the-board/': { html: 30, js: 79, requests: 19 },
  // Four guesses and three labs with figures of their own.
  'lessons/ten-years/': { html: 28, js: 74 },
  // Four guesses with figures of their own; the sound is fetched when it is asked for.
  'lessons/the-bottom-you-can-hear/': { html: 27, js: 66 },
  'lessons/thickness-from-thickness/': { js: 66 },
  'lessons/turn-it-round/': { js: 57 },
  'lessons/wall-thickness/': { js: 57 },
  'lessons/what-a-finish-does/': { html: 23, js: 75 },
  'lessons/where-the-groove-shows/': { js: 63 },
  'lessons/which-corner-joint/': { js: 58 },
  'lessons/wood-movement/': { html: 32, js: 75, requests: 19 },
  // The sheet draws every step, and its own code.
  'build-sheet/': { js: 138, requests: 26 },
  // The corners and the grooves are reckoned, for thirty learners as for one, and drawn.
  'exercises/e9/': { js: 68 },
  // The movement of the box, and tables in and out.
  'measurements/': { js: 71 },
  'my-box/': { css: 10.2, js: 116, requests: 20 },
  // Everything that is kept is read.
  'notebook/': { requests: 19 },
  'rules/': { html: 48, js: 80, requests: 20 },
  // Letters of formulas.
  'rules/write-the-humidity/': { fonts: 31 },
  'templates/': { js: 125, requests: 23 },
  // Every rule is judged; what draws another box than the example, 22 kB, comes when it is asked for.
  'troubles/': { js: 80, requests: 20 },
  // What judges a trouble may be any subject’s.
  'troubles/*/': { js: 58, requests: 18 },
  'woods/': { js: 66 },
  // Every word with its drawing and its places.
  'words/': { html: 28 },
  // A box is laid out on boards.
  'class/materials/': { js: 123, requests: 23 },
};

for (const path of everyKind) {
  const { html, css, js, fonts, requests } = {
    ...lesson,
    ...(heavier[path] ?? heavier[path.replace(/(?<=\/)[^/]+\/$/, '*/')]),
  };
  test(`/${path} stays within ${html} kB of HTML, ${css} of CSS, ${js} of JS, ${fonts} of fonts and ${requests} requests, read to its end`, async ({
    browser,
    baseURL,
  }) => {
    const { scrolled } = await weigh(browser, baseURL + path);
    expect.soft(scrolled.html, 'HTML').toBeLessThanOrEqual(html * kB);
    expect.soft(scrolled.css, 'CSS').toBeLessThanOrEqual(css * kB);
    expect.soft(scrolled.js, 'JS').toBeLessThanOrEqual(js * kB);
    expect.soft(scrolled.fonts, 'fonts').toBeLessThanOrEqual(fonts * kB);
    expect.soft(scrolled.requests, 'requests').toBeLessThanOrEqual(requests);
    expect(scrolled.html, 'a page was loaded at all').toBeGreaterThan(0);
  });
}

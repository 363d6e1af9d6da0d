/**
 * On the narrowest phone, with the text spacing that a reader may set (WCAG 2.2, 1.4.12 and 1.4.10), every page fits: no
 * scrolling sideways, no text cut off in a field or button, nothing on top of a control. The chosen words of a select are
 * left out: browsers cut what is longer than the field, and show it whole in the open list. So are sums in a scratch cell: any
 * may be longer than a phone is wide, and the caret moves it in its field.
 */
import { expect, type Page, test } from '@playwright/test';
import { addStyle, chooseUnits, everyKind, open } from './site.ts';

test.use({ locale: 'en-GB', viewport: { width: 320, height: 700 } });

/** The four spacings of 1.4.12, on everything. */
const spacing = `
  * { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
  p { margin-bottom: 2em !important; }`;

/** What does not fit, in a line each. */
const faults = (page: Page) =>
  page.evaluate(() => {
    const root = document.documentElement;
    const nameOf = (element: Element) =>
      `${element.localName}.${element.className} “${((element as HTMLInputElement).value || element.textContent).trim().slice(0, 30)}”`;
    const isSeen = (element: Element) =>
      element.checkVisibility({ visibilityProperty: true }) && !element.closest('.heard, .skip');
    const overlap = (one: DOMRect, other: DOMRect) =>
      Math.min(one.right, other.right) - Math.max(one.left, other.left) > 1 &&
      Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 2;

    const wide =
      root.scrollWidth > root.clientWidth
        ? [...document.body.querySelectorAll('*')]
            .filter((element) => element.getBoundingClientRect().right > root.clientWidth + 0.5)
            .filter((element) => !element.closest('.scroll > *, .equation > *'))
            .map((element) => `too wide: ${nameOf(element)}`)
        : [];

    const cut = [...document.querySelectorAll('button, input[type=text], input[type=search]')]
      .filter((field) => isSeen(field) && !field.matches('.cell input'))
      .filter(
        ({ scrollWidth, clientWidth, scrollHeight, clientHeight }) =>
          scrollWidth > clientWidth + 1 || scrollHeight > clientHeight + 1,
      )
      .map((element) => `cut off: ${nameOf(element)}`);

    const texts: { node: Text; rect: DOMRect }[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode() as Text | null; node; node = walker.nextNode() as Text | null) {
      const parent = node.parentElement!;
      // The word beside a handle belongs to it.
      const isPart = parent.closest('svg, option, math, script, style, .mark-hint');
      if (!node.data.trim() || isPart || !isSeen(parent)) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const rect of range.getClientRects()) texts.push({ node, rect });
    }
    const controls = [...document.querySelectorAll('button, input, select, textarea')].filter(isSeen);
    /** What stays in sight while the page scrolls below it covers nothing for good. */
    const layerOf = (element: Element) =>
      [...document.querySelectorAll('.plate, .part-bar, .place-bar')].find((layer) =>
        layer.contains(element),
      );
    const covered = controls.flatMap((control) => {
      const rect = control.getBoundingClientRect();
      return [
        ...texts
          .filter(({ node, rect: other }) => !control.contains(node) && overlap(rect, other))
          .filter(({ node }) => layerOf(node.parentElement!) === layerOf(control))
          .map(({ node }) => `“${node.data.trim().slice(0, 30)}” lies on ${nameOf(control)}`),
        ...controls
          .filter((other) => other !== control && overlap(rect, other.getBoundingClientRect()))
          .filter((other) => layerOf(other) === layerOf(control))
          .map((other) => `${nameOf(other)} lies on ${nameOf(control)}`),
      ];
    });
    return [...wide, ...cut, ...covered];
  });

/** The parts of the bench, one at a time. */
const parts = ['inside', 'walls', 'corners', 'grooves', 'bottom', 'air', 'board', 'accuracy'];

for (const path of [...everyKind, ...parts.map((part) => `my-box/#${part}`)])
  test(`/${path} fits 320 px with wide text spacing, in both units`, async ({ page }) => {
    await open(page, path);
    await addStyle(page, spacing);
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
      for (const card of document.querySelectorAll<HTMLElement>('.guess-card')) card.dataset.state = 'open';
    });
    for (const units of ['mm', 'inch'] as const) {
      await chooseUnits(page, units);
      expect(await faults(page), units).toEqual([]);
    }
  });

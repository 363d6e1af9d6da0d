/** What is wrong with a figure on the wall: too small, cut off, one over the other. Runs in the page. */
import type { Page } from '@playwright/test';

export const wrongOnWall = (page: Page, least: number): Promise<string[]> =>
  page.evaluate((least) => {
    const figure = document.querySelector<HTMLElement>('.on-wall');
    if (!figure) return ['nothing is on the wall'];
    const found: string[] = [];
    const isSeen = (element: Element) => element.getClientRects().length > 0;
    type Box = { text: string; left: number; right: number; top: number; bottom: number };
    const [labels, words]: [Box[], Box[]] = [[], []];
    for (const drawing of figure.querySelectorAll<SVGSVGElement>('svg.drawing')) {
      if (!isSeen(drawing)) continue;
      const scale = drawing.getScreenCTM()!.a;
      for (const label of drawing.querySelectorAll('text')) {
        if (label.closest('.spoken') || !isSeen(label)) continue;
        const size = Number.parseFloat(getComputedStyle(label).fontSize) * scale;
        if (size < least - 0.1) found.push(`“${label.textContent}” is ${size.toFixed(1)} px high`);
        const { left, right, top, bottom, height } = label.getBoundingClientRect();
        // A label's box is higher than its signs.
        labels.push({
          text: label.textContent,
          left,
          right,
          top: top + height * 0.2,
          bottom: bottom - height * 0.2,
        });
      }
    }
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const around = node.parentElement!;
      if (!node.textContent?.trim() || around.closest('svg, .heard, script, style') || !isSeen(around))
        continue;
      // What is only heard.
      if (getComputedStyle(around).clipPath !== 'none') continue;
      const size = Number.parseFloat(getComputedStyle(around).fontSize);
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const { left, right, top, bottom, width } of range.getClientRects())
        if (width > 0) words.push({ text: node.textContent, left, right, top, bottom });
      if (size < least - 0.1) found.push(`“${node.textContent}” is ${size.toFixed(1)} px high`);
    }
    for (const { text, left, right, top, bottom } of [...labels, ...words])
      if (left < -1 || top < -1 || right > innerWidth + 1 || bottom > innerHeight + 1)
        found.push(`“${text}” is cut off`);
    const overlap = (a: Box, b: Box) =>
      Math.min(a.right, b.right) - Math.max(a.left, b.left) > 2 &&
      // The box of a line is higher than the line.
      Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > least * 0.3;
    const all = [...labels, ...words];
    // The handle's hint may lie over the scale it is dragged along, as on the page.
    for (const [at, a] of all.entries())
      for (const b of all.slice(at + 1))
        if (a.text !== b.text && b.text !== 'drag' && overlap(a, b))
          found.push(`“${a.text}” and “${b.text}”`);
    const { scrollWidth, scrollHeight } = document.documentElement;
    if (scrollWidth > innerWidth || scrollHeight > innerHeight)
      found.push(`the page is ${scrollWidth} x ${scrollHeight}`);
    if (figure.scrollHeight > figure.clientHeight + 1) found.push('the words do not fit beside the drawing');
    return found;
  }, least);

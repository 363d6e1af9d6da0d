/** Which faces draw the text of a page: the subset fonts hold every character that the site shows. */
import type { Page } from '@playwright/test';
import { addStyle } from '../site.ts';

/** Brings everything into view that can come into view: both units, covered results, closed answers. */
async function showAll(page: Page): Promise<void> {
  // Here the faces may be waited for: what counts is what they hold, not how fast they come.
  await page.evaluate(() => {
    for (const { cssRules } of document.styleSheets)
      for (const rule of cssRules)
        if (rule instanceof CSSFontFaceRule) rule.style.setProperty('font-display', 'block');
  });
  await addStyle(page, '.mm, .inch { display: inline !important } [hidden] { display: revert !important }');
  await page.evaluate(async () => {
    for (const details of document.querySelectorAll('details')) details.open = true;
    await document.fonts.ready;
    // What is fetched or counted only when it is opened takes its time; a page without islands has nothing to fetch.
    if (!document.querySelector('astro-island')) return;
    await new Promise<void>((quiet) => {
      let later = setTimeout(quiet, 600);
      new MutationObserver(() => {
        clearTimeout(later);
        later = setTimeout(quiet, 600);
      }).observe(document.body, { childList: true, subtree: true });
    });
  });
}

/**
 * Marks every element that draws a sign which no element before it draws in the same face: what Chromium chooses for a
 * sign depends on nothing else, and each element that it is asked about takes milliseconds.
 * @returns the texts of the marked elements, in the order of the page
 */
const markNewSigns = (page: Page) =>
  page.evaluate(() => {
    const signs = new Intl.Segmenter('en');
    const seen = new Set<string>();
    const texts: string[] = [];
    for (const element of document.body.querySelectorAll('*')) {
      const own = [...element.childNodes].map((node) => (node instanceof Text ? node.data : '')).join('');
      if (own.trim() === '' || element.matches('script, style') || !element.checkVisibility()) continue;
      const { fontFamily, fontWeight, fontStyle, fontVariant, textTransform } = getComputedStyle(element);
      const around = ['::before', '::after'].map((part) => getComputedStyle(element, part).content);
      const face = [fontFamily, fontWeight, fontStyle, fontVariant, textTransform, ...around].join();
      const before = seen.size;
      for (const { segment } of signs.segment(own)) seen.add(face + segment);
      if (seen.size === before) continue;
      element.setAttribute('data-new-sign', '');
      texts.push(`<${element.localName}>: ${own.slice(0, 80)}`);
    }
    return texts;
  });

/** Family names of the faces that draw the page: the site's own, and others with the text they draw. */
export async function faces(page: Page): Promise<{ own: string[]; strange: string[] }> {
  await showAll(page);
  const texts = await markNewSigns(page);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('DOM.enable');
  await devtools.send('CSS.enable');
  const { root } = await devtools.send('DOM.getDocument', { depth: 0 });
  const { nodeIds } = await devtools.send('DOM.querySelectorAll', {
    nodeId: root.nodeId,
    selector: '[data-new-sign]',
  });
  if (nodeIds.length !== texts.length) throw new Error('the page has changed while its faces were looked at');
  const own = new Set<string>();
  const strange: string[] = [];
  for (const [at, nodeId] of nodeIds.entries()) {
    // Chromium answers for the texts right below the element.
    const { fonts } = await devtools.send('CSS.getPlatformFontsForNode', { nodeId });
    for (const { familyName, isCustomFont } of fonts) {
      if (isCustomFont) own.add(familyName);
      else strange.push(`${familyName} in ${texts[at]}`);
    }
  }
  await devtools.detach();
  return { own: [...own], strange };
}

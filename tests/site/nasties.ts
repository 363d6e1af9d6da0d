/** Texts that have broken programs before, and what a page must never show because of one. */
import type { Page } from '@playwright/test';

/** What may be typed, pasted or stand in a link. */
export const nasties: Readonly<Record<string, string>> = {
  nothing: '',
  spaces: ' \t\u00a0\u2003 ',
  huge: '99999999999999999999',
  'beyond a number': '1e999',
  'below nothing': '-1e999',
  negative: '-5',
  'minus zero': '-0',
  'no number': 'NaN',
  endless: 'Infinity',
  'a fraction of nothing': '1/0',
  'nothing of nothing': '0/0',
  'half a fraction': '3/',
  'two points': '1.2.3',
  'point and comma': '1.234,5',
  'comma and point': '1,234.5',
  'full width': '１２．５',
  arabic: '١٢٫٥',
  devanagari: '१२',
  'right to left': '\u202e12.5\u202c',
  'no width': '1\u200b2\ufeff',
  emoji: '📦👩‍👩‍👧‍👦',
  'half a letter': '\ud83d',
  'no sign': 'a\u0000b\u0007',
  tags: '"><img src=x onerror="window.run=1"><script>window.run=1</script>',
  template: '{{constructor}}#{window.run=1}',
  prototype: '__proto__',
  constructor: 'constructor',
  'a line': 'one\r\ntwo',
  hexadecimal: '0x1F',
  long: '9'.repeat(5000),
};

/** Words that show a slip of the program, wherever they are read or heard; what the reader wrote may hold them. */
export const slips = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const bad = /\bNaN\b|\bundefined\b|\bInfinity\b|\[object |∞/;
    const see = (text: string | null, where: string) => {
      const at = text?.search(bad) ?? -1;
      if (at >= 0) found.push(`${where}: …${text!.slice(Math.max(0, at - 40), at + 40)}…`);
    };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode())
      if (!node.parentElement?.closest('script, style, template, .notice, .theirs'))
        see(node.textContent, node.parentElement?.className || node.parentElement?.localName || '');
    for (const element of document.querySelectorAll('[aria-valuetext], [aria-label], svg *'))
      for (const { name, value } of element.attributes)
        if (!name.startsWith('data-')) see(value, `${element.localName} ${name}`);
    if ('run' in window) found.push('a text was run');
    return found;
  });

/** Goes down the page, so that all of it wakes. */
export async function wakeAll(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (let at = 0; at < document.body.scrollHeight; at += 600) {
      scrollTo(0, at);
      await new Promise(requestAnimationFrame);
    }
  });
  await page.waitForFunction(
    () => ![...document.querySelectorAll('astro-island[ssr]')].some((one) => one.getClientRects().length > 0),
    undefined,
    { timeout: 10_000 },
  );
}

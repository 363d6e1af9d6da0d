/** The words of a page, and where its links lead. */
import type { Page } from '@playwright/test';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { htmlOf, isBuilt } from '../site.ts';

/** Every text of the page, hidden or not, also the attributes that are read aloud. */
export const words = (page: Page) =>
  page.evaluate(() => {
    const body = document.body.cloneNode(true) as HTMLElement;
    for (const code of body.querySelectorAll('script, style, template')) code.remove();
    const spoken = ['aria-label', 'aria-valuetext', 'title', 'alt', 'value', 'placeholder'];
    const attributes = [...body.querySelectorAll('*')].flatMap((element) =>
      spoken.map((name) => element.getAttribute(name) ?? ''),
    );
    return [document.title, body.textContent, ...attributes].join('\n');
  });

/** Links of the page to a page, place or file that does not exist. */
export async function deadLinks(page: Page, baseURL: string): Promise<string[]> {
  const targets = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('[href], [src]')].map(
      (element) =>
        new URL(element.getAttribute('href') ?? element.getAttribute('src') ?? '', document.baseURI).href,
    ),
  );
  return [...new Set(targets)].filter((target) => {
    if (!target.startsWith(baseURL)) return !/^(https?|mailto|data|blob):/.test(target);
    const { pathname, hash } = new URL(target);
    const to = decodeURI(pathname.slice(1));
    if (!isBuilt(to)) return true;
    // My box leads to the control of an input.
    if (to === 'my-box/' && hash.slice(1) in fields) return false;
    // "#main" must be there; a longer fragment, as in "#box=…", is read by the page itself.
    return hash.length > 1 && !hash.includes('=') && !htmlOf(to).includes(`id="${decodeURI(hash.slice(1))}"`);
  });
}

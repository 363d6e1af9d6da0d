/** Weighs a page by really loading it in the browser, before and after scrolling to its end. */
import { gzipSync } from 'node:zlib';
import type { Browser, Request } from '@playwright/test';

/** Bytes as they travel: HTML, CSS, JS and the rest gzipped, fonts and pictures as they are (they are packed already). */
export interface Weight {
  readonly html: number;
  readonly css: number;
  readonly js: number;
  readonly fonts: number;
  /** Pictures, data, manifest and whatever else. */
  readonly other: number;
  /** Number of requests, the page itself included. */
  readonly requests: number;
}

const kinds = { document: 'html', stylesheet: 'css', script: 'js', font: 'fonts' } as const;

/**
 * Weight of the page at an absolute address in a new browser profile without a service worker.
 * @returns `opened` once the network is quiet, `scrolled` after the end of the page has been on screen
 */
export async function weigh(browser: Browser, url: string): Promise<{ opened: Weight; scrolled: Weight }> {
  const context = await browser.newContext({
    serviceWorkers: 'block',
    viewport: { width: 390, height: 844 },
  });
  const page = await context.newPage();
  const weight = { html: 0, css: 0, js: 0, fonts: 0, other: 0, requests: 0 };
  const pending: Promise<void>[] = [];
  const note = (request: Request) => {
    const take = async () => {
      const kind = kinds[request.resourceType() as keyof typeof kinds] ?? 'other';
      const body = (await (await request.response())?.body()) ?? Buffer.alloc(0);
      const packed = kind === 'fonts' || /\.(png|webp|jpe?g|avif)$/.test(new URL(request.url()).pathname);
      weight[kind] += packed ? body.length : gzipSync(body, { level: 9 }).length;
      weight.requests += 1;
    };
    if (!request.url().startsWith('data:')) pending.push(take());
  };
  page.on('requestfinished', note);

  await page.goto(url, { waitUntil: 'networkidle' });
  await Promise.all(pending);
  const opened = { ...weight };
  // Step by step, as a reader does, so that everything that waits to be seen is seen.
  await page.evaluate(async () => {
    for (let top = 0; top < document.documentElement.scrollHeight; top += 400) {
      scrollTo(0, top);
      await new Promise(requestAnimationFrame);
    }
  });
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(300);
  // Nothing new is weighed from here on: a body cannot be read once its page is closed.
  page.off('requestfinished', note);
  await Promise.all(pending);
  await context.close();
  return { opened, scrolled: { ...weight } };
}

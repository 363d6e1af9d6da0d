/** What the pages may do: their own files and nothing else. Every other test would see a page that breaks its policy as an error. */
import { expect, test } from '@playwright/test';
import { open, pages } from './site.ts';

declare global {
  interface Window {
    reported?: string[];
  }
}

test('every page keeps its policy, with everything in it awake, and asks no other host', async ({
  page,
  baseURL,
}) => {
  test.setTimeout(20_000 + pages.length * 4_000);
  await page.addInitScript(() => {
    window.reported = [];
    addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      window.reported!.push(`${violatedDirective}: ${blockedURI}`),
    );
  });
  const outside: string[] = [];
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(baseURL!) && !url.startsWith('data:')) outside.push(url);
  });
  for (const path of pages) {
    await open(page, path);
    // What wakes when it is near wakes as well.
    const sleeping = page.locator('astro-island[ssr]:not([client=touch])');
    for (let left = await sleeping.count(); left > 0; left--)
      await sleeping.first().evaluate((island) => island.scrollIntoView());
    // And what wakes when it is used.
    const untouched = page.locator('astro-island[ssr][client=touch]');
    for (const island of await untouched.all()) {
      await island.dispatchEvent('click');
      await expect(untouched).toHaveCount(0);
    }
    expect(await page.evaluate(() => window.reported), path).toEqual([]);
  }
  expect(outside).toEqual([]);
});

test.describe('a page', () => {
  const tried = async (page: import('@playwright/test').Page, code: string) =>
    page.evaluate((text) => {
      const script = document.createElement('script');
      script.textContent = `window.ran = 'yes'; ${text}`;
      document.head.append(script);
      return 'ran' in window;
    }, code);

  test('runs no script that is put into it later, and no text as code', async ({ page }) => {
    await open(page, '');
    expect(await tried(page, '')).toBe(false);
    // Asked by a script of the page, for what a tool puts in from outside stands above the policy.
    const evaluated = await page.evaluate(
      () =>
        new Promise((resolve) => {
          addEventListener('securitypolicyviolation', ({ blockedURI }) => resolve(blockedURI), {
            once: true,
          });
          setTimeout("document.title = 'run'", 0);
          setTimeout(() => resolve('allowed'), 2000);
        }),
    );
    expect(evaluated).toBe('eval');
    expect(await page.title()).not.toBe('run');
  });

  test('fetches nothing from another host, be it data, a picture or a script', async ({ page }) => {
    await open(page, 'my-box/');
    const blocked = await page.evaluate(async () => {
      const found: string[] = [];
      addEventListener('securitypolicyviolation', ({ effectiveDirective }) => found.push(effectiveDirective));
      await fetch('https://example.org/').catch(() => undefined);
      new Image().src = 'https://example.org/a.png';
      const script = document.createElement('script');
      script.src = 'https://example.org/a.js';
      document.head.append(script);
      await new Promise((resolve) => setTimeout(resolve, 300));
      return found.sort();
    });
    expect(blocked).toEqual(['connect-src', 'img-src', 'script-src-elem']);
  });
});

/** A browser that Playwright drives: Chromium, and the Firefox or WebKit that Playwright itself installed. */
import type { BrowserType } from '@playwright/test';
import { flags } from '../../.ci/find-browser.mjs';
import { type Driver, windowSize } from './driver.ts';

/** @param site address of the served site */
export async function drivenByPlaywright(
  type: BrowserType,
  executablePath: string,
  site: string,
): Promise<Driver> {
  const { host } = new URL(site);
  const browser = await type.launch({ executablePath, args: type.name() === 'chromium' ? flags : [] });
  const page = await browser.newPage({
    viewport: windowSize,
    locale: 'en-GB',
    // Pages are tested as they come from the server; offline use has tests of its own.
    serviceWorkers: 'block',
  });
  const troubles: string[] = [];
  page.on('console', (message) => {
    // What could not be loaded is told below with its address.
    if (message.type() === 'error' && !message.text().startsWith('Failed to load resource'))
      troubles.push(message.text());
  });
  page.on('pageerror', (error) => troubles.push(`${error.message} ${error.stack}`));
  page.on(
    'response',
    (answer) => answer.status() >= 400 && troubles.push(`${answer.status()}: ${answer.url()}`),
  );
  page.on('requestfailed', (request) => {
    const reason = request.failure()?.errorText ?? '';
    // Left for another page before it was there.
    if (!/ABORTED/i.test(reason)) troubles.push(`${reason}: ${request.url()}`);
  });
  page.context().on('request', (request) => {
    const url = new URL(request.url());
    if (/^(http|ws)/.test(url.protocol) && url.host !== host)
      troubles.push(`request to another host: ${url}`);
  });
  return {
    troubles,
    open: async (url) => void (await page.goto(url)),
    reload: async () => void (await page.reload()),
    evaluate: async (expression) => {
      try {
        return await page.evaluate(expression);
      } catch (error) {
        // The page was just being left for another one: then that is meant.
        if (!/context was destroyed/.test(String(error))) throw error;
        await page.waitForLoadState();
        return await page.evaluate(expression);
      }
    },
    clickAt: (x, y) => page.mouse.click(x, y),
    keys: async (keys) => {
      for (const key of keys) await page.keyboard.press(key === ' ' ? 'Space' : key);
    },
    end: () => browser.close(),
  };
}

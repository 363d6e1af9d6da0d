/**
 * One load of a page for all checks that look at it without using it. To load a page costs more than most checks do;
 * checks of one page run one after the other in one worker, and a failed check starts the next with a new load.
 */
import { type Browser, type Page, test as plain } from '@playwright/test';
import { open } from '../site.ts';

/** A page that is loaded and awake. */
export interface Visit {
  readonly page: Page;
  /** What went wrong so far, in a line each; later troubles come to it. */
  readonly troubles: readonly string[];
}

interface Visits {
  /** The page at this path, in a browser profile of its own; the same one again while it is asked for the same path. */
  readonly visit: (path: string) => Promise<Visit>;
  /** A page without JavaScript. */
  readonly quiet: Page;
}

const context = (browser: Browser, baseURL: string | undefined, javaScriptEnabled: boolean) =>
  browser.newContext({ baseURL, javaScriptEnabled, serviceWorkers: 'block' });

export const test = plain.extend<object, Visits>({
  visit: [
    async ({ browser }, use, { project }) => {
      let last: (Visit & { path: string }) | undefined;
      await use(async (path) => {
        if (last?.path === path) return last;
        await last?.page.context().close();
        last = undefined;
        const page = await (await context(browser, project.use.baseURL, true)).newPage();
        const troubles = await open(page, path);
        last = { path, page, troubles };
        return last;
      });
      await last?.page.context().close();
    },
    { scope: 'worker' },
  ],
  quiet: [
    async ({ browser }, use, { project }) => {
      const own = await context(browser, project.use.baseURL, false);
      await use(await own.newPage());
      await own.close();
    },
    { scope: 'worker' },
  ],
});

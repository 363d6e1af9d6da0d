/** A path through the site in the engine of the project: with a hand, and with no trouble noted when it ends. */
import {
  test as base,
  chromium,
  expect,
  firefox as firefoxOfPlaywright,
  webkit as webkitOfPlaywright,
} from '@playwright/test';
import { drivenByPlaywright } from './by-playwright.ts';
import type { Driver } from './driver.ts';
import { firefox } from './firefox.ts';
import { Hand } from './hand.ts';
import { webkit } from './webkit.ts';

export type Engine = 'chromium' | 'firefox' | 'webkit';

export interface EngineOptions {
  engine: Engine;
  /** Path of what is started for it. */
  program: string;
}

const site = () => `http://127.0.0.1:${process.env.SITE_PORT}/`;

function started({ engine, program }: EngineOptions): Promise<Driver> {
  const type = { chromium, firefox: firefoxOfPlaywright, webkit: webkitOfPlaywright }[engine];
  if (engine === 'chromium' || program === type.executablePath())
    return drivenByPlaywright(type, program, site());
  return engine === 'firefox' ? firefox(program, site()) : webkit(program, site());
}

/** One browser for all paths of an engine: to start one takes longer than to walk a path. */
export const path = base.extend<{ hand: Hand }, EngineOptions & { driver: Driver }>({
  engine: ['chromium', { option: true, scope: 'worker' }],
  program: ['', { option: true, scope: 'worker' }],
  driver: [
    async ({ engine, program }, use) => {
      const driver = await started({ engine, program });
      await use(driver);
      await driver.end();
    },
    { scope: 'worker', timeout: 120_000 },
  ],
  hand: async ({ driver }, use) => {
    // A reader who has never been here; a file without scripts lets the store be cleared.
    await driver.open(`${site()}robots.txt`);
    await driver.evaluate('(localStorage.clear(), sessionStorage.clear())');
    driver.troubles.length = 0;
    await use(new Hand(driver, site()));
    expect(driver.troubles, 'errors in the page, and requests to other hosts').toEqual([]);
  },
});

export { expect };

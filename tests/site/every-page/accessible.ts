/** What axe-core finds on a page: in light and dark, on a desk and on a phone. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, type Page } from '@playwright/test';
import type axe from 'axe-core';

const axeScript = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const phone = { width: 390, height: 844 };
/** The rules of axe-core that look at colors. */
const byColor = ['color-contrast', 'link-in-text-block'];

/** Everything that axe-core finds on the page, by all rules or by some, in one line each. */
export async function findings(page: Page, rules?: string[]): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeScript);
  const { violations } = await page.evaluate(
    (only) =>
      (window as unknown as { axe: typeof axe }).axe.run(document, {
        resultTypes: ['violations'],
        ...(only && { runOnly: { type: 'rule', values: only } }),
      }),
    rules,
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.html}`),
  );
}

/** Elements that stick out of the window to the right, unless an own scroll area holds them. */
const tooWide = (page: Page) =>
  page.evaluate(() => {
    const root = document.documentElement;
    if (root.scrollWidth <= root.clientWidth) return [];
    return [...document.body.querySelectorAll('*')]
      .filter((element) => element.getBoundingClientRect().right > root.clientWidth + 0.5)
      .map((element) => `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`);
  });

/** Every element of the page, with a sign for those that are not shown. */
const shown = (page: Page) =>
  page.evaluate(() =>
    [...document.body.querySelectorAll('*')].map(
      (element) =>
        `${element.localName}.${element.getAttribute('class') ?? ''}${element.checkVisibility({ visibilityProperty: true }) ? '' : ' not shown'}`,
    ),
  );

/**
 * All rules at both widths, each in another color scheme, and the rules for colors in the other scheme as well. That the
 * scheme changes nothing but colors, so that no other rule can find more in it, is looked at too.
 */
export async function isAccessible(page: Page): Promise<void> {
  expect(await findings(page), 'light').toEqual([]);
  const inLight = await shown(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await shown(page), 'what is shown in dark is what is shown in light').toEqual(inLight);
  expect(await findings(page, byColor), 'dark').toEqual([]);
  await page.setViewportSize(phone);
  expect(await findings(page), 'dark, phone').toEqual([]);
  await page.emulateMedia({ colorScheme: 'light' });
  expect(await findings(page, byColor), 'light, phone').toEqual([]);
  expect(await tooWide(page), 'wider than 390 px').toEqual([]);
}

/** The subset fonts hold every character that the site shows. */
import { type CDPSession, expect, test } from '@playwright/test';
import { open, pages } from './site.ts';

interface Node {
  nodeId: number;
  nodeName: string;
  nodeValue: string;
  children?: Node[];
}

/** A node and everything below it. */
const all = (node: Node): Node[] => [node, ...(node.children ?? []).flatMap(all)];

/** Family names of the faces that draw each element's own text: [site's own, others with the text they draw]. */
async function faces(devtools: CDPSession, body: Node): Promise<[Set<string>, string[]]> {
  const own = new Set<string>();
  const strange: string[] = [];
  for (const { nodeId, nodeName, children } of all(body)) {
    const text = children?.map(({ nodeValue }) => nodeValue).join('') ?? '';
    if (text.trim() === '' || ['SCRIPT', 'STYLE'].includes(nodeName)) continue;
    // Chromium answers for the texts right below the element.
    const { fonts } = await devtools.send('CSS.getPlatformFontsForNode', { nodeId });
    for (const { familyName, isCustomFont } of fonts) {
      if (isCustomFont) own.add(familyName);
      else strange.push(`${familyName} in <${nodeName.toLowerCase()}>: ${text.slice(0, 80)}`);
    }
  }
  return [own, strange];
}

for (const path of pages) {
  test(`/${path} is drawn with the faces of the site alone, down to the last sign`, async ({ page }) => {
    // Here the faces may be waited for: what counts is what they hold, not how fast they come.
    await page.route('**/*.css', async (route) => {
      const answer = await route.fetch();
      await route.fulfill({ response: answer, body: (await answer.text()).replaceAll('optional', 'block') });
    });
    await open(page, path);
    // Everything that can come into view is in view: both units, covered results, closed answers.
    await page.addStyleTag({
      content: '.mm, .inch { display: inline !important } [hidden] { display: revert !important }',
    });
    await page.evaluate(async () => {
      for (const details of document.querySelectorAll('details')) details.open = true;
      await document.fonts.ready;
      // What is fetched or counted only when it is opened takes its time.
      await new Promise<void>((quiet) => {
        let later = setTimeout(quiet, 600);
        new MutationObserver(() => {
          clearTimeout(later);
          later = setTimeout(quiet, 600);
        }).observe(document.body, { childList: true, subtree: true });
      });
    });
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('DOM.enable');
    await devtools.send('CSS.enable');
    const { root } = (await devtools.send('DOM.getDocument', { depth: -1 })) as { root: Node };
    const html = root.children!.find(({ nodeName }) => nodeName === 'HTML')!;
    const body = html.children!.find(({ nodeName }) => nodeName === 'BODY')!;
    const [own, strange] = await faces(devtools, body);
    expect([...own]).toContain('Literata');
    expect(strange).toEqual([]);
  });
}

/**
 * Nothing lost: the page is killed at two hundred moments of a long edit, in the midst of typing and moving, as a phone that
 * runs out of memory does it: no event tells the page. At most the last change is gone. The moments come from a seed, which
 * is printed: KILL_SEED=… brings the same ones again.
 */
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { open } from './site.ts';

test.use({ locale: 'en-GB', viewport: { width: 1000, height: 900 }, reducedMotion: 'reduce' });

const seed = Number(process.env.KILL_SEED ?? Date.now() % 1_000_000);
/** Whole numbers below a limit, the same ones for a seed. */
function numbersOf(start: number) {
  const from = xoroshiro128plus(start);
  return (below: number) => (from.next() >>> 0) % below;
}

interface Edit {
  /** Opens the page where it goes on. */
  readonly start: (page: Page) => Promise<void>;
  /** One change. @returns what is then there, as a text */
  readonly change: (page: Page, at: number) => Promise<string>;
  /** What the reader sees that is kept, as a text. */
  readonly seen: (page: Page) => Promise<string>;
  /** Whether that is what was there after the last change that was over, the one before it, or the one that was going on. */
  readonly isNear: (now: string, after: readonly string[]) => boolean;
}

const letters = 'the far edge came out thin; eleven fingers next time, and a slower glue. ';
const typing = (
  path: string,
  field: (page: Page) => Promise<ReturnType<Page['locator']>>,
  first = '',
): Edit => {
  let text = first;
  return {
    start: async (page) => {
      await open(page, path);
      const one = await field(page);
      await one.focus();
      text = await one.inputValue();
      // A new line of thought where the field gets full.
      if (text.length > 300) await one.fill(first);
      text = await one.inputValue();
      await page.keyboard.press('End');
    },
    change: async (page, at) => {
      const letter = letters[at % letters.length]!;
      text += letter;
      const now = text;
      await page.keyboard.type(letter);
      return now;
    },
    seen: async (page) => (await field(page)).inputValue(),
    isNear: (now, after) => now.startsWith(after.at(-2) ?? now) && now.length <= after.at(-1)!.length + 1,
  };
};

const edits: Record<string, Edit> = {
  'a note': typing('rules/finger-fit/', async (page) => {
    const field = page.getByRole('textbox', { name: /^My note/ });
    const button = page.getByRole('button', { name: 'my note' });
    await expect(field.or(button).first()).toBeVisible();
    if (!(await field.isVisible())) await button.click();
    await field.waitFor();
    return field;
  }),
  'a scratch cell': typing(
    'scratch/',
    async (page) => page.getByRole('combobox', { name: 'cell 1', exact: true }),
    '1 +',
  ),
  'a slider of the box': {
    start: async (page) => {
      await open(page, 'my-box/#walls');
      await page.getByRole('slider', { name: 'wall thickness, slider' }).focus();
    },
    change: async (page, at) => {
      await page.keyboard.press(at % 14 < 7 ? 'ArrowRight' : 'ArrowLeft');
      return page.getByRole('slider', { name: 'wall thickness, slider' }).inputValue();
    },
    seen: (page) => page.getByRole('slider', { name: 'wall thickness, slider' }).inputValue(),
    isNear: (now, after) => Math.abs(Number(now) - Number(after.at(-1))) <= 1,
  },
  'a number typed and entered': {
    start: async (page) => {
      await open(page, 'my-box/#walls');
    },
    change: async (page, at) => {
      const value = String(6 + (at % 8));
      const field = page.getByRole('textbox', { name: /^wall thickness/ });
      await field.fill(value);
      await field.press('Enter');
      return value;
    },
    seen: (page) => page.getByRole('textbox', { name: /^wall thickness/ }).inputValue(),
    isNear: (now, after) =>
      after.length < 2 || [...after.slice(-2), String(6 + ((Number(after.at(-1)) - 5) % 8))].includes(now),
  },
};

/** Ends the page's process without a word to the page. */
async function kill(context: BrowserContext, page: Page): Promise<void> {
  const devtools = await context.newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  void devtools.send('Page.crash').catch(() => undefined);
  await crashed;
}

const kills = 50;
for (const [at, [what, edit]] of Object.entries(edits).entries())
  test(`${what}: killed at ${kills} moments, at most the last change is gone`, async ({ context }) => {
    test.setTimeout(150_000);
    console.log(`KILL_SEED=${seed}`);
    const number = numbersOf(seed + at);
    const lost: string[] = [];
    let page = await context.newPage();
    await edit.start(page);
    for (let round = 0; round < kills; round++) {
      const begun: string[] = [await edit.seen(page)];
      let isOver = false;
      const writing = (async () => {
        for (let step = 0; !isOver; step++) begun.push(await edit.change(page, round + step));
      })().catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, 20 + number(230)));
      isOver = number(2) === 0;
      // Half of the time in the midst of a change, half of the time after one.
      if (isOver) await writing;
      await kill(context, page);
      isOver = true;
      await writing;
      await page.close();
      page = await context.newPage();
      await edit.start(page);
      const now = await edit.seen(page);
      if (!edit.isNear(now, begun))
        lost.push(`round ${round}: “${now}” after “${begun.slice(-3).join('”, “')}”`);
    }
    expect(lost).toEqual([]);
  });

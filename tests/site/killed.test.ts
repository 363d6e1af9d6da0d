/**
 * Nothing lost: a long edit is cut at two hundred moments, in the midst of typing and moving, as by a phone that runs out of
 * memory: no event tells the page. At every fourth moment the page's process is ended for real and the page opened again; at
 * the others what the store holds then is read, for that is what would be left. At most the last change is gone.
 * The moments come from a seed, which is printed: KILL_SEED=… brings the same ones again.
 */
import { type BrowserContext, expect, type Locator, type Page, test } from '@playwright/test';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { open } from './site.ts';

test.use({ locale: 'en-GB', viewport: { width: 1000, height: 900 }, reducedMotion: 'reduce' });

const seed = Number(process.env.KILL_SEED ?? Date.now() % 1_000_000);
const moments = 50;
const killAt = 4;

interface Edit {
  readonly path: string;
  /** Where it is edited; it shows what is kept when the page is opened again. */
  readonly field: (page: Page) => Promise<Locator>;
  /** One change. @returns what stands there then */
  readonly change: (page: Page, at: number, before: string) => Promise<string>;
  /** Key of the store, and what of it the field shows. */
  readonly key: string;
  readonly of: (kept: never) => string;
  /** Whether this may be kept: what was there before the last change that was over, after it, or with the one going on. */
  readonly isNear: (kept: string, before: string, last: string) => boolean;
}

const letters = 'the far edge came out thin; eleven fingers next time, and a slower glue. ';
const typing = {
  change: async (page: Page, at: number, before: string) => {
    const letter = letters[at % letters.length]!;
    await page.keyboard.type(letter);
    return before + letter;
  },
  isNear: (kept: string, before: string, last: string) =>
    kept.startsWith(before) && kept.length <= last.length + 1,
};
const wallField = async (page: Page) => page.getByRole('textbox', { name: /^wall thickness/ });
const wallOf = (kept: { box: { wall: number } }) => String(kept.box.wall);

const edits: Record<string, Edit> = {
  'a note': {
    ...typing,
    path: 'rules/finger-fit/',
    field: async (page) => {
      const field = page.getByRole('textbox', { name: /^My note/ });
      const button = page.getByRole('button', { name: 'my note' });
      await field.or(button).first().waitFor();
      if (!(await field.isVisible())) await button.click();
      return field;
    },
    key: 'notes',
    of: (kept: { notes: Record<string, string> }) => kept.notes['rules/finger-fit'] ?? '',
  },
  'a scratch cell': {
    ...typing,
    path: 'scratch/',
    field: async (page) => page.getByRole('combobox', { name: 'cell 1', exact: true }),
    key: 'scratch',
    of: (kept: { cells: { text: string }[] }) => kept.cells[0]!.text,
  },
  'a slider of the box': {
    path: 'my-box/#walls',
    field: wallField,
    change: async (page, at) => {
      const slider = page.getByRole('slider', { name: 'wall thickness, slider' });
      await slider.press(at % 8 < 4 ? 'ArrowRight' : 'ArrowLeft');
      return (await wallField(page)).inputValue();
    },
    key: 'box',
    of: wallOf,
    // One mark of the ruler.
    isNear: (kept, before, last) =>
      [before, last].some((value) => Math.abs(Number(kept) - Number(value)) <= 0.5),
  },
  'a number typed and entered': {
    path: 'my-box/#walls',
    field: wallField,
    change: async (page, at) => {
      const field = await wallField(page);
      await field.fill(String(6 + (at % 8)));
      await field.press('Enter');
      return field.inputValue();
    },
    key: 'box',
    of: wallOf,
    isNear: (kept, before, last) => [before, last, String(6 + ((Number(last) - 5) % 8))].includes(kept),
  },
};

/** Ends the page's process without a word to the page. */
async function kill(context: BrowserContext, page: Page): Promise<void> {
  const devtools = await context.newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  void devtools.send('Page.crash').catch(() => undefined);
  await crashed;
}

for (const [at, [what, edit]] of Object.entries(edits).entries())
  test(`${what}: cut off at ${moments} moments, at most the last change is gone`, async ({ context }) => {
    test.setTimeout(150_000);
    console.log(`KILL_SEED=${seed}`);
    const from = xoroshiro128plus(seed + at);
    const number = (below: number) => (from.next() >>> 0) % below;
    const lost: string[] = [];
    let [step, compared] = [0, 0];
    let page = await context.newPage();
    await open(page, edit.path);
    for (let round = 0; round < moments; round += killAt) {
      const field = await edit.field(page);
      // A cell holds five hundred letters.
      if ((await field.inputValue()).length > 300) await field.fill('Again: ');
      await field.focus();
      await page.keyboard.press('End');
      /** What stood there after each change that is over, the last at the end. */
      const stood = [await field.inputValue()];
      let isOver = false;
      const writing = (async () => {
        while (!isOver) stood.push(await edit.change(page, step++, stood.at(-1)!));
      })().catch(() => undefined);
      const judge = (kept: string, before: string) => {
        compared++;
        if (!edit.isNear(kept, before, stood.at(-1)!))
          lost.push(`step ${step}: “${kept}” is kept of “${stood.slice(-3).join('”, “')}”`);
      };
      const wait = (least: number) => new Promise((resolve) => setTimeout(resolve, least + number(200)));
      await wait(200);
      for (let look = 1; look < killAt; look++) {
        await wait(20);
        const before = stood.at(-2) ?? stood[0]!;
        const kept = await page.evaluate((key) => localStorage.getItem(`rule-and-reason.${key}`), edit.key);
        if (stood.length > 2 && kept === null) lost.push(`step ${step}: nothing is kept`);
        if (kept !== null) judge(edit.of(JSON.parse(kept) as never), before);
      }
      // Half of the time in the midst of a change, half of the time after one.
      isOver = number(2) === 0;
      if (isOver) await writing;
      await wait(0);
      await kill(context, page);
      isOver = true;
      await writing;
      await page.close();
      page = await context.newPage();
      await open(page, edit.path);
      await expect.poll(async () => (await edit.field(page)).inputValue()).not.toBe('');
      judge(await (await edit.field(page)).inputValue(), stood.at(-2) ?? stood[0]!);
    }
    expect(lost).toEqual([]);
    expect(compared).toBeGreaterThan(moments - killAt);
  });

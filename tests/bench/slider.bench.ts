/**
 * What one slider event costs on a slow phone: every lesson's first slider dragged with the processor slowed down 4
 * times. Aims: 8 ms of the main thread, 2 ms of it script, and no late frame in a drag of 300.
 * The numbers are those of a machine with nothing else to do; on a busy one they say little.
 */
import type { Browser, CDPSession, Page } from '@playwright/test';
import { lessons } from '../site/site.ts';
import { withSite } from './browser.ts';

const moves = 300;
const frame = 1000 / 60;

/** Seconds that the page has spent, by kind, since it was opened; as Chromium counts them. */
const spent = async (devtools: CDPSession) =>
  new Map((await devtools.send('Performance.getMetrics')).metrics.map(({ name, value }) => [name, value]));

/** Moves the pressed pointer to and fro, one move a frame, as a finger would. */
async function drag(page: Page, { x, width, y }: { x: number; width: number; y: number }): Promise<void> {
  const at = (index: number) => {
    // 16 moves from end to end, so that each is at least one step of the slider.
    const phase = (index / 16) % 2;
    return x + width * (0.1 + 0.8 * (phase < 1 ? phase : 2 - phase));
  };
  await page.mouse.move(at(0), y);
  await page.mouse.down();
  for (let index = 1; index <= moves; index++) {
    const start = performance.now();
    await page.mouse.move(at(index), y);
    await new Promise((resolve) => setTimeout(resolve, Math.max(0, start + frame - performance.now())));
  }
  await page.mouse.up();
}

/** Drags the first slider of a page as a reader meets it who skips the guess. */
async function measure(browser: Browser, url: string) {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
  await page.goto(url);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]:not([client=touch])'));
  const skip = page.getByRole('button', { name: 'just show me' }).first();
  while ((await skip.count()) > 0) await skip.click();
  const slider = page.locator('input[type=range]:visible').first();
  if ((await slider.count()) === 0) return { 'slider events': 0 };
  await slider.scrollIntoViewIfNeeded();
  const { x, width, y, height } = (await slider.boundingBox())!;
  await page.evaluate(() => {
    const seen = { inputs: 0, late: 0 };
    let last = performance.now();
    const note = (time: number) => {
      if (time - last > 25) seen.late += 1;
      last = time;
      requestAnimationFrame(note);
    };
    requestAnimationFrame(note);
    document.addEventListener('input', () => seen.inputs++, { capture: true });
    Object.assign(window, { seen });
  });
  const seen = () =>
    page.evaluate(() => ({ ...(window as unknown as { seen: { inputs: number; late: number } }).seen }));
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Performance.enable');
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await page.waitForTimeout(500);

  const [before, seenBefore] = [await spent(devtools), await seen()];
  await drag(page, { x, width, y: y + height / 2 });
  const [after, seenAfter] = [await spent(devtools), await seen()];
  // The same moves over bare paper: what moving a pointer costs by itself.
  await drag(page, { x, width, y: y - 2 });
  const still = await spent(devtools);
  await page.close();

  const events = seenAfter.inputs - seenBefore.inputs;
  const ms = (kind: string, from: Map<string, number>, to: Map<string, number>) =>
    Number((((to.get(kind)! - from.get(kind)!) * 1000) / events).toFixed(2));
  return {
    'slider events': events,
    'main thread ms': ms('TaskDuration', before, after),
    'without slider': ms('TaskDuration', after, still),
    'script ms': ms('ScriptDuration', before, after),
    'layout ms': ms('LayoutDuration', before, after),
    'style ms': ms('RecalcStyleDuration', before, after),
    'late frames': seenAfter.late - seenBefore.late,
  };
}

export default async function () {
  await withSite(async (browser, base) => {
    const rows: Record<string, object> = {};
    for (const path of lessons) rows[`/${path}`] = await measure(browser, base + path);
    console.log('Milliseconds for each slider event, at a quarter of the speed');
    console.table(rows);
  });
}

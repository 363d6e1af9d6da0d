/** The lesson that can be heard: silent and unfetched until a button is pressed, said in words, and stopped when asked. */
import { expect, type Page, test } from '@playwright/test';
import { open } from './site.ts';

test.use({ locale: 'en-GB' });

interface Heard {
  contexts: number;
  /** Greatest sample of every sound that was made. */
  peaks: number[];
  started: number;
  stopped: number;
}

/** Counts what the page does with the loudspeaker. */
async function listen(page: Page): Promise<() => Promise<Heard>> {
  await page.addInitScript(() => {
    const heard = { contexts: 0, peaks: [] as number[], started: 0, stopped: 0 };
    Object.assign(window, { heard });
    const Context = window.AudioContext;
    window.AudioContext = class extends Context {
      constructor() {
        super();
        heard.contexts++;
      }
    };
    const { copyToChannel } = AudioBuffer.prototype;
    AudioBuffer.prototype.copyToChannel = function (samples, channel) {
      heard.peaks.push(samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0));
      copyToChannel.call(this, samples, channel);
    };
    const { start, stop } = AudioBufferSourceNode.prototype;
    AudioBufferSourceNode.prototype.start = function (...when) {
      heard.started++;
      start.apply(this, when);
    };
    AudioBufferSourceNode.prototype.stop = function (...when) {
      heard.stopped++;
      stop.apply(this, when);
    };
  });
  return () => page.evaluate(() => (window as unknown as { heard: Heard }).heard);
}

test('a tap is played only when it is asked for, never too loud, said in words, and stopped', async ({
  page,
}) => {
  const heard = await listen(page);
  const late: string[] = [];
  page.on('request', (request) => {
    if (/play-taps/.test(request.url())) late.push(request.url());
  });
  await open(page, 'lessons/the-bottom-you-can-hear/');
  await page.locator('.guess-card').last().getByRole('button', { name: 'just show me' }).click();
  const player = page.locator('.player');
  await expect(player).toBeVisible();
  expect(await heard()).toEqual({ contexts: 0, peaks: [], started: 0, stopped: 0 });
  expect(late).toEqual([]);

  await player.getByRole('button', { name: /6 mm/ }).click();
  // Walnut 200 × 120 × 6 mm: 475 Hz and 0.23 s by a separate calculation.
  await expect(player.getByRole('status')).toContainText(/a tap at 47\d Hz that takes 0\.23 s/);
  expect(late).toHaveLength(1);

  await player.getByRole('button', { name: 'one after another' }).click();
  const stop = player.getByRole('button', { name: 'stop' });
  await expect(stop).not.toHaveAttribute('aria-disabled', 'true');
  await stop.click();
  await expect(stop).toHaveAttribute('aria-disabled', 'true');
  const { contexts, peaks, started, stopped } = await heard();
  expect(contexts).toBe(1);
  expect(started).toBe(5);
  expect(stopped).toBeGreaterThanOrEqual(4);
  for (const peak of peaks) expect(peak).toBeLessThanOrEqual(1);
  // Of four bottoms the thin one is the loudest, and each thicker one quieter.
  const four = peaks.slice(-4);
  expect(four).toEqual([...four].sort((one, other) => other - one));
});

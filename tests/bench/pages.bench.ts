/** What every lesson page weighs, opened and read to its end. Aims: 20 / 8 / 30 / 50 kB and 15 requests. */
import { type Weight, weigh } from '../site/measure.ts';
import { lessons } from '../site/site.ts';
import { withSite } from './browser.ts';

const kB = (bytes: number) => (bytes / 1000).toFixed(1);
const row = ({ html, css, js, fonts, other, requests }: Weight) => ({
  'HTML kB': kB(html),
  'CSS kB': kB(css),
  'JS kB': kB(js),
  'fonts kB': kB(fonts),
  'other kB': kB(other),
  requests,
});

export default async function () {
  await withSite(async (browser, base) => {
    const rows: Record<string, ReturnType<typeof row>> = {};
    for (const path of lessons) {
      const { opened, scrolled } = await weigh(browser, base + path);
      rows[`/${path} opened`] = row(opened);
      rows[`/${path} read`] = row(scrolled);
    }
    console.table(rows);
  });
}

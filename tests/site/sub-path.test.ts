/** The site works below a sub-path of a host as it does at the root. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';

const root = fileURLToPath(new URL('../..', import.meta.url));

test('built with BASE_PATH, every address on a page leads below that path and is there, offline use included', async ({
  browser,
}) => {
  test.setTimeout(240_000);
  const folder = 'tests/results/sub-path';
  const env = { ...process.env, BASE_PATH: '/boxes/', ASTRO_TELEMETRY_DISABLED: '1' };
  const built = spawnSync(`astro build --outDir ${folder}`, {
    cwd: root,
    env,
    shell: true,
    encoding: 'utf8',
  });
  expect(built.status, built.stderr).toBe(0);

  const port = Number(process.env.SITE_PORT) + 1;
  const server = spawn(process.execPath, ['.ci/serve.mjs', String(port), folder, '/boxes/'], { cwd: root });
  try {
    await once(server.stdout, 'data');
    const base = `http://127.0.0.1:${port}/boxes/`;
    const context = await browser.newContext({ serviceWorkers: 'allow' });
    const page = await context.newPage();
    const failed: string[] = [];
    page.on('response', (answer) => answer.status() >= 400 && failed.push(answer.url()));

    const seen = new Set<string>();
    const toVisit = [base];
    for (let path = toVisit.pop(); path; path = toVisit.pop()) {
      if (seen.has(path)) continue;
      seen.add(path);
      if (!(await page.goto(path).catch(() => undefined))?.ok()) continue;
      const links = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLAnchorElement>('a[href]')].map(({ href }) =>
          href.replace(/#.*/, ''),
        ),
      );
      const inside = links.filter((link) => new URL(link).origin === new URL(base).origin);
      expect(
        inside.filter((link) => !link.startsWith(base)),
        path,
      ).toEqual([]);
      toVisit.push(...inside);
    }
    expect(seen.size).toBeGreaterThan(3);
    expect(failed).toEqual([]);

    const scope = await page.evaluate(async () => (await navigator.serviceWorker.ready).scope);
    expect(scope).toBe(base);
    await context.close();
  } finally {
    server.kill();
  }
});

/**
 * Runs every check and every test, and ends with a line "N passed, N failed" that counts all of them.
 * Lint, types and build count as one test each. A step that crashes counts as failed, and so does a skipped test:
 * neither has shown anything. An engine that cannot be had is named before the last line, and fails the run only where it
 * could have been installed.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { engines, findBrowser, mustHaveAll } from './find-browser.mjs';

const root = fileURLToPath(new URL('../', import.meta.url));
const results = join(root, 'tests/results');
/** @type {Record<string, string | undefined>} */
const env = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' };
const total = { passed: 0, failed: 0 };

/** Runs one command, which counts as one test itself unless `count` reads its tests from the report it wrote. */
const step = (/** @type {string} */ title, /** @type {string} */ command, count = (_ok = true) => [0, 0]) => {
  console.log(`\n— ${title}: ${command}`);
  const ok = spawnSync(command, { cwd: root, env, stdio: 'inherit', shell: true }).status === 0;
  let [passed = 0, failed = 0] = [0, 1];
  try {
    [passed = 0, failed = 0] = count(ok);
    // A command that fails without one failed test has crashed; a report without a test has tested nothing.
    if ((!ok || passed === 0) && failed === 0) failed = 1;
  } catch (error) {
    console.error(`No report of ${title}: ${error}`);
  }
  total.passed += passed;
  total.failed += failed;
  console.log(`— ${title}: ${passed} passed, ${failed} failed`);
};

const report = (/** @type {string} */ file) => JSON.parse(readFileSync(join(results, file), 'utf8'));
const single = (ok = true) => (ok ? [1, 0] : [0, 1]);

/** Vitest: a file that does not even load has no tests in the report, and counts as one that failed. */
const unit = () => {
  const { numTotalTests, numPassedTests, testResults } = report('unit.json');
  const unloaded = testResults.filter(
    (/** @type {{ status: string, assertionResults: unknown[] }} */ file) =>
      file.status === 'failed' && file.assertionResults.length === 0,
  ).length;
  return [numPassedTests, numTotalTests - numPassedTests + unloaded];
};

/** @typedef {{ title: string, file: string, specs?: Suite[], suites?: Suite[], tests?: { status: string, projectName: string }[] }} Suite */

/** The tests that passed at their second try only. */
const flakyOf = (/** @type {Suite} */ { specs = [], suites = [] }) =>
  /** @type {string[]} */ ([
    ...specs.flatMap(({ file, title, tests = [] }) =>
      tests
        .filter(({ status }) => status === 'flaky')
        .map(({ projectName }) => `${file}: ${title}${projectName && ` (${projectName})`}`),
    ),
    ...suites.flatMap(flakyOf),
  ]);

/** @type {string[]} */
const secondTry = [];

/** Playwright, by the file of its report. */
const browser = (/** @type {string} */ file) => () => {
  const { stats, errors, suites } = report(file);
  secondTry.push(...flakyOf({ title: '', file: '', suites }));
  return [stats.expected + stats.flaky, stats.unexpected + stats.skipped + errors.length];
};

rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });
step('lint and format', 'biome check --error-on-warnings .', single);
step('types', 'astro check', single);
step('nothing unused', 'knip', single);
step(
  'unit tests',
  'vitest run --config tests/vitest.config.ts --reporter=default --reporter=json --outputFile.json=tests/results/unit.json',
  unit,
);
step('build', 'astro build', single);
step('browser tests', 'playwright test --config tests/playwright.config.ts', browser('site.json'));

/** What gets each engine that cannot be had. @type {string[]} */
const absent = [];
for (const engine of /** @type {const} */ (['firefox', 'webkit'])) {
  const { variable } = engines[engine];
  try {
    env[variable] = await findBrowser({ engine });
  } catch (error) {
    // So that the tests need not look for it again.
    env[variable] = '';
    absent.push(/** @type {Error} */ (error).message);
  }
}
step(
  'main paths in each engine',
  'playwright test --config tests/engines/playwright.config.ts',
  browser('engines.json'),
);

if (secondTry.length)
  console.log(
    `\nPassed at the second try only, so look at them:\n${secondTry.map((one) => `  ${one}`).join('\n')}`,
  );
if (absent.length) {
  console.log(`\nNOT TRIED, and not counted as passed:\n${absent.map((one) => `  ${one}`).join('\n')}`);
  if (mustHaveAll()) {
    console.log('As root on Debian it can be installed, so under CI it counts as failed.');
    total.failed += absent.length;
  }
}
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed > 0 ? 1 : 0;

/**
 * Finds the browsers for the tests, or says how to get one. `node .ci/find-browser.mjs [firefox|webkit]` prints the path of
 * one, by itself that of a Chromium.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** @typedef {'chromium' | 'firefox' | 'webkit'} Engine */
/** @typedef {Record<string, string | undefined>} Environment */

/**
 * The places where systems keep a browser of the Chromium family, best first.
 * @param {string} platform as in process.platform
 * @param {Environment} env
 */
const chromiumPlaces = (platform, env) => {
  if (platform === 'darwin')
    return ['Chromium', 'Google Chrome', 'Microsoft Edge'].map(
      (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
    );
  if (platform === 'win32')
    return [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].flatMap((folder) =>
      folder
        ? ['Chromium', 'Google\\Chrome', 'Microsoft\\Edge'].map(
            (name) => `${folder}\\${name}\\Application\\${name.endsWith('Edge') ? 'msedge' : 'chrome'}.exe`,
          )
        : [],
    );
  return ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'].map((name) =>
    join('/usr/bin', name),
  );
};

const onLinux = (/** @type {string} */ path) => (/** @type {string} */ platform) =>
  platform === 'linux' ? [path] : [];

/**
 * Each engine: its name, the variable that names its program, where systems keep it, what else must be there beside that,
 * and Debian's packages for it. Of WebKit the system's program is the one that drives it, and it needs a screen.
 * @type {Readonly<Record<Engine, { name: string, variable: string,
 *   places: (platform: string, env: Environment) => string[], beside?: string, packages: string[] }>>}
 */
export const engines = {
  chromium: {
    name: 'Chromium',
    variable: 'CHROMIUM_PATH',
    places: chromiumPlaces,
    packages: ['chromium', 'fonts-liberation'],
  },
  firefox: {
    name: 'Firefox',
    variable: 'FIREFOX_PATH',
    places: onLinux('/usr/bin/firefox-esr'),
    packages: ['firefox-esr', 'fonts-liberation'],
  },
  webkit: {
    name: 'WebKit',
    variable: 'WEBKIT_PATH',
    places: onLinux('/usr/bin/WebKitWebDriver'),
    beside: '/usr/bin/Xvfb',
    packages: ['webkit2gtk-driver', 'xvfb', 'fonts-liberation'],
  },
};

/** What gets an engine: on any system where its maker's files can be had, and on Debian. */
export const hint = (/** @type {Engine} */ engine) =>
  `No ${engines[engine].name} was found. Get one with: npx playwright install ${engine}` +
  ` (on Debian, as root: apt-get install ${engines[engine].packages.join(' ')})`;

/** Debian's packages by apt-get; needs root. */
const installDebian = (/** @type {string[]} */ packages) => {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const run = (/** @type {string[]} */ ...args) =>
    spawnSync('apt-get', args, { env, stdio: ['ignore', 2, 2] }).status === 0;
  return run('update') && run('install', '-y', '--no-install-recommends', ...packages);
};

/** Where Playwright keeps the browser it installed, if it is installed at all. */
const fromPlaywright = async (/** @type {Engine} */ engine) => {
  try {
    return (await import('@playwright/test'))[engine].executablePath();
  } catch {
    return '';
  }
};

/** Whether every engine can be installed here, so that one which cannot be had is a fault. */
export const mustHaveAll = () => {
  if (process.env.CI !== 'true' || process.getuid?.() !== 0 || !existsSync('/etc/os-release')) return false;
  return /^ID="?debian"?$/m.test(readFileSync('/etc/os-release', 'utf8'));
};

/**
 * Path of an engine's program: what its variable names, then the system's, then Playwright's, then (as root, with apt-get)
 * Debian's. The other parameters exist so that a test can stand in for the machine.
 * @returns {Promise<string>}
 * @throws with what gets the engine, or if its variable names no file
 */
export const findBrowser = async ({
  engine = /** @type {Engine} */ ('chromium'),
  env = /** @type {Environment} */ (process.env),
  platform = /** @type {string} */ (process.platform),
  exists = existsSync,
  playwright = fromPlaywright,
  isRoot = process.getuid?.() === 0,
  install = installDebian,
} = {}) => {
  const { variable, places, beside, packages } = engines[engine];
  const named = env[variable];
  if (named) {
    if (exists(named)) return named;
    throw new Error(`${variable} names no file: ${named}`);
  }
  const ofSystem = () =>
    beside && !exists(beside) ? undefined : places(platform, env).find((path) => exists(path));
  const found = ofSystem();
  if (found) return found;
  const own = await playwright(engine);
  if (own && exists(own)) return own;
  if (isRoot && exists('/usr/bin/apt-get') && install(packages)) {
    const installed = ofSystem();
    if (installed) return installed;
  }
  throw new Error(hint(engine));
};

/** Flags that Chromium needs when root starts it, and that keep it from talking to anybody. */
export const flags = [
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const engine = /** @type {Engine} */ (process.argv[2] ?? 'chromium');
  findBrowser({ engine }).then(console.log, (/** @type {Error} */ { message }) => {
    console.error(message);
    process.exit(1);
  });
}

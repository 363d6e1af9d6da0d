/** Finds a Chromium for the browser tests, or says how to get one. `node .ci/find-browser.mjs` prints its path. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The one command that gets a Chromium on any system. */
export const hint = 'No Chromium was found. Get one with: npx playwright install chromium';

/**
 * The places where systems keep a browser of the Chromium family, best first.
 * @param {string} platform as in process.platform
 * @param {Record<string, string | undefined>} env
 */
export const usualPlaces = (platform, env) => {
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

/** Debian's Chromium and a text font that covers what the pages use, by apt-get; needs root. */
const installDebian = () => {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const run = (/** @type {string[]} */ ...args) =>
    spawnSync('apt-get', args, { env, stdio: ['ignore', 2, 2] }).status === 0;
  return run('update') && run('install', '-y', '--no-install-recommends', 'chromium', 'fonts-liberation');
};

/** Where Playwright keeps the browser it installed, if it is installed at all. */
const fromPlaywright = async () => {
  try {
    return (await import('@playwright/test')).chromium.executablePath();
  } catch {
    return '';
  }
};

/**
 * Path of a Chromium: CHROMIUM_PATH, then the system's, then Playwright's, then (as root, with apt-get) Debian's.
 * The parameters exist so that a test can stand in for the machine.
 * @returns {Promise<string>}
 * @throws with the command that gets a browser, or if CHROMIUM_PATH names no file
 */
export const findBrowser = async ({
  env = /** @type {Record<string, string | undefined>} */ (process.env),
  platform = /** @type {string} */ (process.platform),
  exists = existsSync,
  playwright = fromPlaywright,
  isRoot = process.getuid?.() === 0,
  install = installDebian,
} = {}) => {
  if (env.CHROMIUM_PATH) {
    if (exists(env.CHROMIUM_PATH)) return env.CHROMIUM_PATH;
    throw new Error(`CHROMIUM_PATH names no file: ${env.CHROMIUM_PATH}`);
  }
  const places = usualPlaces(platform, env);
  const found = places.find((path) => exists(path));
  if (found) return found;
  const own = await playwright();
  if (own && exists(own)) return own;
  if (isRoot && exists('/usr/bin/apt-get') && install()) {
    const installed = places.find((path) => exists(path));
    if (installed) return installed;
  }
  throw new Error(hint);
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
  findBrowser().then(console.log, (/** @type {Error} */ { message }) => {
    console.error(message);
    process.exit(1);
  });
}

/** The browsers for the tests are found on any machine, or their absence is told with the command that mends it. */
import { expect, test } from 'vitest';
import { findBrowser, hint } from '../../.ci/find-browser.mjs';

/** A made-up machine on which only the given files exist. */
const machine = (...files: string[]) => ({
  env: {} as Record<string, string | undefined>,
  platform: 'linux',
  exists: (path: unknown) => files.includes(String(path)),
  playwright: async () => '',
  isRoot: false,
  install: (): boolean => {
    throw new Error('nothing may be installed here');
  },
});

test('the environment variable CHROMIUM_PATH comes before everything else', async () => {
  const of = machine('/opt/mine/chrome', '/usr/bin/chromium');
  expect(await findBrowser({ ...of, env: { CHROMIUM_PATH: '/opt/mine/chrome' } })).toBe('/opt/mine/chrome');
});

test('a CHROMIUM_PATH that names no file is an error, not a reason to take another browser', async () => {
  const of = machine('/usr/bin/chromium');
  await expect(findBrowser({ ...of, env: { CHROMIUM_PATH: '/opt/none' } })).rejects.toThrow('/opt/none');
});

test('Debian’s Chromium is used where it is installed', async () => {
  expect(await findBrowser(machine('/usr/bin/chromium', '/usr/bin/google-chrome'))).toBe('/usr/bin/chromium');
});

test('a browser is found where macOS and Windows keep it', async () => {
  const mac = '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome';
  expect(await findBrowser({ ...machine(mac), platform: 'darwin' })).toBe(mac);
  const windows = 'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe';
  // Windows names its program folder in the environment; the file is called after the program.
  const of = { ...machine(windows), platform: 'win32', env: { PROGRAMFILES: 'C:\\Program Files' } };
  expect(await findBrowser(of)).toBe(windows);
});

test('else the one that Playwright installed', async () => {
  const of = machine('/home/me/chrome');
  expect(await findBrowser({ ...of, playwright: async () => '/home/me/chrome' })).toBe('/home/me/chrome');
});

test('as root, with apt-get, Debian’s Chromium is installed', async () => {
  const files = ['/usr/bin/apt-get'];
  const install = () => files.push('/usr/bin/chromium') > 0;
  const exists = (path: unknown) => files.includes(String(path));
  expect(await findBrowser({ ...machine(), exists, isRoot: true, install })).toBe('/usr/bin/chromium');
});

test.each([
  ['not root', machine('/usr/bin/apt-get')],
  ['no apt-get', { ...machine(), isRoot: true }],
  ['an installation that fails', { ...machine('/usr/bin/apt-get'), isRoot: true, install: () => false }],
])('otherwise it stops with the one command that gets a browser: %s', async (_why, of) => {
  await expect(findBrowser(of)).rejects.toThrow(hint('chromium'));
});

test('each engine has its own variable, its own place and its own packages', async () => {
  const of = machine('/usr/bin/chromium', '/usr/bin/firefox-esr', '/opt/mine/firefox');
  expect(await findBrowser({ ...of, engine: 'firefox' })).toBe('/usr/bin/firefox-esr');
  const env = { FIREFOX_PATH: '/opt/mine/firefox', CHROMIUM_PATH: '/opt/none' };
  expect(await findBrowser({ ...of, engine: 'firefox', env })).toBe('/opt/mine/firefox');
  const files = ['/usr/bin/apt-get'];
  const asked: string[] = [];
  const install = (packages: string[]) => {
    asked.push(...packages);
    return files.push('/usr/bin/firefox-esr') > 0;
  };
  const exists = (path: unknown) => files.includes(String(path));
  await findBrowser({ ...machine(), engine: 'firefox', exists, isRoot: true, install });
  expect(asked).toContain('firefox-esr');
  expect(asked).not.toContain('chromium');
});

test('the system’s WebKit counts only with the screen that it needs', async () => {
  const driver = '/usr/bin/WebKitWebDriver';
  expect(await findBrowser({ ...machine(driver, '/usr/bin/Xvfb'), engine: 'webkit' })).toBe(driver);
  await expect(findBrowser({ ...machine(driver), engine: 'webkit' })).rejects.toThrow('xvfb');
});

test('on a system without packages of it, an engine is the one that Playwright installed', async () => {
  const of = { ...machine('/home/me/webkit'), platform: 'darwin', engine: 'webkit' as const };
  await expect(findBrowser(of)).rejects.toThrow('npx playwright install webkit');
  expect(await findBrowser({ ...of, playwright: async () => '/home/me/webkit' })).toBe('/home/me/webkit');
});

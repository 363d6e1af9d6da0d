/**
 * The system's Firefox by Marionette, the WebDriver that is built into it. No driver program is needed, and every version
 * of Firefox speaks it; Playwright wants one that is newer than Debian's.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { commands, drivenByWebDriver } from './by-webdriver.ts';
import { type Driver, windowSize } from './driver.ts';
import { ended, started, until } from './process.ts';
import { watchingProxy } from './watching-proxy.ts';

const preferences = (proxy: number): Record<string, string | number | boolean> => ({
  'marionette.port': 0,
  'intl.accept_languages': 'en-GB',
  'network.proxy.type': 1,
  'network.proxy.http': '127.0.0.1',
  'network.proxy.http_port': proxy,
  'network.proxy.ssl': '127.0.0.1',
  'network.proxy.ssl_port': proxy,
  'network.proxy.no_proxies_on': '',
  'network.proxy.allow_hijacking_localhost': true,
});

/** Firefox asks its maker for settings and updates, however it is told not to; a page that did would be told by the others. */
const maker = /(^|\.)(mozilla\.(org|com|net)|firefox\.com)$/;

/** The wire of Marionette: each message as JSON after its length in bytes and a colon. */
async function marionette(port: number) {
  const socket = connect(port, '127.0.0.1');
  const waiting = new Map<number, { resolve: (value: unknown) => void; reject: (reason: Error) => void }>();
  let last = 0;
  let rest = Buffer.alloc(0);
  await new Promise<void>((resolve, reject) => {
    const fail = (reason: Error) => {
      reject(reason);
      for (const one of waiting.values()) one.reject(reason);
    };
    socket.on('error', fail);
    socket.on('close', () => fail(new Error('Firefox has ended')));
    socket.on('data', (data) => {
      rest = Buffer.concat([rest, data]);
      for (let colon = rest.indexOf(':'); colon > 0; colon = rest.indexOf(':')) {
        const end = colon + 1 + Number(rest.toString('latin1', 0, colon));
        if (rest.length < end) return;
        const message = JSON.parse(rest.toString('utf8', colon + 1, end));
        rest = rest.subarray(end);
        // The first message is a greeting; answers are [1, number, error, value].
        if (!Array.isArray(message)) resolve();
        else if (message[2]) waiting.get(message[1])?.reject(new Error(message[2].message));
        else waiting.get(message[1])?.resolve(message[3]);
      }
    });
  });
  return {
    call: (name: string, parameters: object) =>
      new Promise<unknown>((resolve, reject) => {
        const number = ++last;
        waiting.set(number, { resolve, reject });
        const text = JSON.stringify([0, number, name, parameters]);
        socket.write(`${Buffer.byteLength(text)}:${text}`);
      }),
    close: () => socket.destroy(),
  };
}

/**
 * @param path of Firefox
 * @param site address of the served site
 */
export async function firefox(path: string, site: string): Promise<Driver> {
  const proxy = await watchingProxy(site, maker);
  const profile = mkdtempSync(join(tmpdir(), 'firefox-of-a-test-'));
  const lines = Object.entries(preferences(proxy.port)).map(
    ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});`,
  );
  writeFileSync(join(profile, 'user.js'), lines.join('\n'));
  const program = started(path, ['--headless', '--marionette', '--no-remote', '--profile', profile]);
  const wire = await until('Firefox', () =>
    marionette(Number(readFileSync(join(profile, 'MarionetteActivePort'), 'utf8'))),
  );
  await wire.call('WebDriver:NewSession', {});
  await wire.call(commands.resize[1], windowSize);
  return drivenByWebDriver(
    async (command, parameters) => {
      const answer = (await wire.call(commands[command][1], parameters)) as { value?: unknown } | null;
      return answer?.value;
    },
    proxy.troubles,
    async () => {
      wire.close();
      await ended(program);
      proxy.close();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  );
}

/** Debian's WebKit (WebKitGTK, a relative of Safari's engine) on a screen that nobody sees, by its own WebDriver. */
import { freePort } from '../free-port.ts';
import { commands, drivenByWebDriver } from './by-webdriver.ts';
import { type Driver, windowSize } from './driver.ts';
import { ended, started, until } from './process.ts';
import { watchingProxy } from './watching-proxy.ts';

/**
 * @param path of WebKitWebDriver
 * @param site address of the served site
 */
export async function webkit(path: string, site: string): Promise<Driver> {
  const proxy = await watchingProxy(site);
  const screen = started('Xvfb', ['-displayfd', '3', '-screen', '0', '1400x1000x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const display = await new Promise<string>((resolve, reject) => {
    screen.once('error', reject);
    screen.once('exit', (code) => reject(new Error(`Xvfb ended with ${code}`)));
    screen.stdio[3]!.once('data', (number) => resolve(`:${String(number).trim()}`));
  });
  const port = await freePort();
  const program = started(path, [`--port=${port}`, '--host=127.0.0.1'], {
    env: { ...process.env, DISPLAY: display, LANG: 'C.UTF-8', LANGUAGE: 'en_GB' },
  });
  const call = async (way: string, method: string, body?: object): Promise<unknown> => {
    const answer = await fetch(`http://127.0.0.1:${port}${way}`, {
      method,
      ...(body && { body: JSON.stringify(body) }),
    });
    const { value } = (await answer.json()) as { value: unknown };
    if (answer.ok) return value;
    const { error, message } = value as { error: string; message: string };
    throw new Error(`${error}: ${message}`);
  };
  await until('WebKitWebDriver', () => call('/status', 'GET'));
  const throughProxy = {
    proxyType: 'manual',
    httpProxy: `127.0.0.1:${proxy.port}`,
    sslProxy: `127.0.0.1:${proxy.port}`,
  };
  const { sessionId } = (await call('/session', 'POST', {
    capabilities: { alwaysMatch: { proxy: throughProxy } },
  })) as { sessionId: string };
  const session = `/session/${sessionId}`;
  await call(session + commands.resize[0], 'POST', windowSize);
  return drivenByWebDriver(
    (command, parameters) => call(session + commands[command][0], 'POST', parameters),
    proxy.troubles,
    async () => {
      await call(session, 'DELETE').catch(() => {});
      await ended(program);
      await ended(screen);
      proxy.close();
    },
  );
}

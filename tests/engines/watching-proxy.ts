/**
 * Stands between everything else and a browser that does not tell what happens in its pages: it lets through what the
 * site's own server answers, refuses and notes every request to another host, and puts a script before all others into
 * each page that tells it of errors.
 */
import { createServer, type IncomingMessage, request, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { text } from 'node:stream/consumers';

const ways = {
  blank: '/blank-for-a-test',
  hook: '/hook-of-a-test.js',
  trouble: '/trouble-in-a-test',
} as const;

/** Runs in the page. Errors are told at once and in order, so that none is on its way when a test ends. */
function hook(way: string) {
  const tell = (...words: unknown[]) => {
    const line = new XMLHttpRequest();
    line.open('POST', way, false);
    line.send(words.join(' '));
  };
  const { error } = console;
  console.error = (...words) => {
    tell('console:', ...words);
    error.apply(console, words);
  };
  addEventListener(
    'error',
    ({ message, error, target }) => {
      if (message) tell('error:', message, error?.stack);
      else tell('not loaded:', target instanceof Element ? target.outerHTML : target);
    },
    true,
  );
  addEventListener('unhandledrejection', ({ reason }) => tell('rejected:', reason, reason?.stack));
  document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
    tell('refused by the policy:', violatedDirective, blockedURI),
  );
  // Pages are tested as they come from the server; offline use has tests of its own.
  if (navigator.serviceWorker)
    navigator.serviceWorker.register = () => new Promise<ServiceWorkerRegistration>(() => {});
}

export interface WatchingProxy {
  readonly port: number;
  /** Errors in pages, answers that are errors, and requests to other hosts, as they come. */
  readonly troubles: string[];
  close(): void;
}

/**
 * @param site address of the served site
 * @param ofBrowser hosts that the browser asks by itself, which are refused without a note
 */
export async function watchingProxy(site: string, ofBrowser?: RegExp): Promise<WatchingProxy> {
  const { host, origin } = new URL(site);
  const troubles: string[] = [];

  const refused = (name: string) => {
    if (!ofBrowser?.test(name)) troubles.push(`request to another host: ${name}`);
  };

  /** Fetches from the site's server and hands it on, pages with the script in them. */
  const pass = (asked: IncomingMessage, answer: ServerResponse, url: URL) => {
    // Nothing packed, so that a page can be added to.
    const headers = { ...asked.headers, 'accept-encoding': 'identity' };
    const onward = request(url, { method: asked.method, headers }, async (given) => {
      const status = given.statusCode ?? 502;
      // A browser asks for this icon by itself where a file names none.
      if (status >= 400 && url.pathname !== '/favicon.ico') troubles.push(`${status}: ${url}`);
      if (!/^text\/html/.test(given.headers['content-type'] ?? '')) {
        answer.writeHead(status, given.headers);
        given.pipe(answer);
        return;
      }
      const page = await text(given);
      const { 'content-length': _length, ...others } = given.headers;
      answer.writeHead(status, others);
      answer.end(page.replace(/<head[^>]*>/, (head) => `${head}<script src="${ways.hook}"></script>`));
    });
    onward.on('error', () => answer.destroy());
    asked.pipe(onward);
  };

  const server = createServer(async (asked, answer) => {
    const url = new URL(asked.url ?? '/', origin);
    if (url.host !== host) {
      refused(url.hostname);
      answer.writeHead(403).end();
    } else if (url.pathname === ways.hook)
      answer
        .writeHead(200, { 'content-type': 'text/javascript' })
        .end(`(${hook})(${JSON.stringify(ways.trouble)})`);
    else if (url.pathname === ways.trouble) {
      troubles.push(await text(asked));
      answer.writeHead(204).end();
    } else pass(asked, answer, url);
  });
  // A tunnel, for https or for a socket: the site needs none.
  server.on('connect', (asked, socket) => {
    refused((asked.url ?? '').split(':')[0]!);
    socket.destroy();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    port: (server.address() as AddressInfo).port,
    troubles,
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}

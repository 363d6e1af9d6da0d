/** Shows the notebook in this folder to this computer's browser: `node serve.mjs`, then open the address it prints. */
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { dirname, extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const folder = dirname(fileURLToPath(import.meta.url));
const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.csv': 'text/csv; charset=utf-8',
};
const port = Number(process.argv[2] ?? 4321);

const server = createServer((request, response) => {
  let path = '';
  try {
    path = normalize(join(folder, decodeURIComponent(new URL(request.url, 'http://host').pathname)));
  } catch {}
  if (path.endsWith(sep)) path += 'index.html';
  if (!path.startsWith(folder + sep) || !existsSync(path) || !statSync(path).isFile()) {
    response.writeHead(404).end('There is no such page.');
    return;
  }
  response.writeHead(200, { 'content-type': types[extname(path)] ?? 'application/octet-stream' });
  createReadStream(path).pipe(response);
});
server.on('error', ({ code }) => {
  console.log(code === 'EADDRINUSE' ? `Another program uses ${port}: try  node serve.mjs ${port + 1}` : code);
});
// This computer alone: nobody else on the network.
server.listen(port, '127.0.0.1', () => console.log(`Open http://localhost:${port}/`));

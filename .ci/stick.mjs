/**
 * `npm run stick`: the whole site as one zip for a USB stick, `stick/rule-and-reason.zip` or where its argument says. Unpacked, it opens by a
 * double click on `index.html`; where a browser refuses, `node serve.mjs` beside it serves it.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { writeServiceWorker } from '../src/build/offline.ts';
import {
  importsOf,
  mark,
  pageOf,
  ringOf,
  scriptOf,
  styleOf,
  textOf,
  textTwinOf,
  twinOf,
  workerTwinOf,
} from './stick/relative.mjs';
import { zipOf } from './stick/zip.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const own = (name) => readFileSync(new URL(`stick/${name}`, import.meta.url), 'utf8');
const target = process.argv[2] ?? join(root, 'stick/rule-and-reason.zip');
const folder = mkdtempSync(join(tmpdir(), 'stick-'));

/** Twins of scripts and words, for pages opened from a file: no part of what a browser keeps of the served site. */
const twins = [];

/** Puts one file of the built site in its place on the stick. */
function convert(path, loader) {
  const file = join(folder, path);
  if (!/\.(html|css|js|json|webmanifest)$/.test(path)) return;
  const text = readFileSync(file, 'utf8');
  const name = path.split('/').at(-1);
  const isScript = path.startsWith('_astro/') && path.endsWith('.js');
  const now = path.endsWith('.html')
    ? pageOf(path, text, loader)
    : path.endsWith('.css')
      ? textOf(
          path,
          styleOf(text, (font) => readFileSync(join(folder, font))),
        )
      : isScript
        ? scriptOf(text)
        : textOf(path, text);
  if (now.includes(mark)) throw new Error(`${path} still knows where the site was built for`);
  writeFileSync(file, now);
  const isWorker = isScript && name.startsWith('worker-');
  if (isWorker) twins.push([path, workerTwinOf(path, now)]);
  else if (isScript) twins.push([path, twinOf(path, now)]);
  else if (path.endsWith('.json')) twins.push([path, textTwinOf(path, now)]);
}

const list = () =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => statSync(join(folder, name)).isFile())
    .sort();

try {
  const built = spawnSync('astro', ['build', '--outDir', folder], {
    cwd: root,
    env: { ...process.env, BASE_PATH: mark, PATH: `${join(root, 'node_modules/.bin')}:${process.env.PATH}` },
    shell: process.platform === 'win32',
    stdio: 'inherit',
  });
  if (built.status !== 0) throw new Error('the site could not be built');
  for (const name of ['service-worker.js', 'kept.json', 'robots.txt', 'screenshot.png'])
    rmSync(join(folder, name), { force: true });
  const files = list();
  const scripts = files.filter((name) => /^_astro\/.*\.js$/.test(name));
  const imports = new Map(
    scripts.map((name) => [
      name.slice('_astro/'.length),
      importsOf(readFileSync(join(folder, name), 'utf8')),
    ]),
  );
  const ring = ringOf(imports);
  if (ring) throw new Error(`scripts import one another, which no stick can load: ${ring.join(', ')}`);
  // Without its comments, on each page.
  const loader = own('from-file.js')
    .replace(/^\s*(\/\*\*[\s\S]*?\*\/|\/\/.*)$/gm, '')
    .replace(/\n\s*/g, '\n');
  for (const path of files) convert(path, loader);
  // The style sheets hold the faces now.
  for (const path of files.filter((name) => name.endsWith('.woff2'))) rmSync(join(folder, path));
  // Served, the stick works without its server too, once it has been read.
  await writeServiceWorker(`${folder}/`);
  writeFileSync(join(folder, 'serve.mjs'), own('serve.js'));
  writeFileSync(join(folder, 'READ-ME.txt'), own('READ-ME.txt'));
  for (const [path, text] of twins) writeFileSync(join(folder, `${path}.twin.js`), text);
  const zip = zipOf(list().map((name) => [`rule-and-reason/${name}`, readFileSync(join(folder, name))]));
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, zip);
  console.log(`${target}: ${(zip.length / 1e6).toFixed(1)} MB`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}

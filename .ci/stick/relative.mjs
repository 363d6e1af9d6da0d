/**
 * Makes a built site work from any folder: addresses become relative, links name the file they lead to, and each script
 * gets a twin that a page opened from a file can load. Pure: text in, text out.
 */
import { parseAst } from 'vite';

/** The base that the site is built with, so that each of its addresses can be found again. */
export const mark = '/stick-root-of-the-site/';
const anywhere = new RegExp(mark, 'g');

/** `../../` for a file two folders deep. */
const upFrom = (path) => '../'.repeat(path.split('/').length - 1) || './';

/** A page's address with the file it means: `rules/#lid` is `rules/index.html#lid`. */
const withFile = (address) =>
  address.replace(/^([^?#]*?)(?=$|[?#])/, (path) => (/(^|\/)$/.test(path) ? `${path}index.html` : path));

/**
 * A page. @param loader the script of `from-file.js`
 */
export function pageOf(path, html, loader) {
  const up = upFrom(path);
  return (
    html
      .replace(/(<a\b[^>]*?\bhref=")([^"]*)"/g, (_, start, address) =>
        address.startsWith(mark)
          ? `${start}${up}${withFile(address.slice(mark.length))}"`
          : `${start}${address}"`,
      )
      .replace(
        /<script type="module" src="([^"]*)"><\/script>/g,
        (_, address) => `<script>stickImport(${JSON.stringify(address)})</script>`,
      )
      // The policy names the host that a page is from; a page from a file is from none.
      .replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, '')
      // The faces stand in the style sheet.
      .replace(/<link rel="preload"[^>]*as="font"[^>]*>/g, '')
      // What wakes a part of the page asks the browser for a module.
      .replace(/\bimport\((?=e\)|this\.)/g, 'stickImport(')
      .replace(
        '<head>',
        `<head><script>globalThis.stickRoot=new URL(${JSON.stringify(up)},location.href).href;${loader}</script>`,
      )
      .replace(anywhere, up)
  );
}

/** A style sheet, with the faces in it: from a file a browser reads no other. @param bytesOf a file of the site by its path */
export const styleOf = (css, bytesOf) =>
  css.replace(
    new RegExp(`url\\(${mark}([^)]+\\.woff2)\\)`, 'g'),
    (_, path) => `url(data:font/woff2;base64,${bytesOf(path).toString('base64')})`,
  );

/** Anything else that knows addresses. */
export const textOf = (path, text) => text.replace(anywhere, upFrom(path));

/** A script: where the site is, it learns from the page it is on. */
export const scriptOf = (code) =>
  code.replace(
    new RegExp(`([\`"'])${mark}([^\`"'$]*)\\1`, 'g'),
    (_, quote, rest) => `(globalThis.stickRoot+${quote}${rest}${quote})`,
  );

const fixed = /((?:\bfrom|\bimport)\s*)(["'`])\.\/([^"'`]+\.js)\2/g;
const late = /\bimport\(\s*([`"'])\.\/([^`"']+)\1/g;

/** What a script imports from the start, by name. */
export const importsOf = (code) => [...code.matchAll(fixed)].map(([, , , name]) => name);

/** The twin of a script, for a page opened from a file: its text, to be made a module there. */
export function twinOf(name, code) {
  const text = code
    .replace(fixed, (_, start, quote, to) => `${start}${quote}stick:${to}${quote}`)
    .replace(late, (_, quote, to) => `stickImport(${quote}_astro/${to}${quote}`);
  return `stickModule(${JSON.stringify(name)},${JSON.stringify([...new Set(importsOf(code))])},${JSON.stringify(text)})`;
}

/** Whether a script has an import or export anywhere; by its syntax, since a text may hold the words. */
function importsSomething(code) {
  const isOne = ({ type }) => /^(Import|Export)/.test(type ?? '');
  const walk = (node) =>
    Array.isArray(node)
      ? node.some(walk)
      : node !== null && typeof node === 'object' && (isOne(node) || Object.values(node).some(walk));
  return walk(parseAst(code).body);
}

/** The twin of a worker: it must be whole, since a plain script imports nothing. */
export function workerTwinOf(name, code) {
  if (importsSomething(code))
    throw new Error(`the worker ${name} imports something, which it cannot from a file`);
  return textTwinOf(name, code);
}

/** The twin of a file of words: its text. */
export const textTwinOf = (name, text) => `stickText(${JSON.stringify(name)},${JSON.stringify(text)})`;

/** A ring of scripts that import one another, or undefined: the twins could wait for each other for ever. */
export function ringOf(imports) {
  const done = new Set();
  const walk = (name, path) => {
    if (path.includes(name)) return [...path, name];
    if (done.has(name)) return undefined;
    for (const next of imports.get(name) ?? []) {
      const found = walk(next, [...path, name]);
      if (found) return found;
    }
    done.add(name);
    return undefined;
  };
  for (const name of imports.keys()) {
    const found = walk(name, []);
    if (found) return found;
  }
  return undefined;
}

/**
 * What a page of the site may do, written into it once it is built: it runs the site's own files, and of the scripts and
 * styles that stand in the page only those it was built with. Nothing else is run, nothing is fetched from elsewhere, no
 * text is run as code.
 */
import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { ELEMENT_NODE, parse, walkSync } from 'ultrahtml';

/** A script of these types is data: it does not run, so the policy has no say in it. */
const isCode = (type: string | undefined) =>
  type === undefined || type === '' || /^(module|text\/javascript)$/.test(type);

/** Hash of a text as a policy names it. */
const hashOf = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** Hashes of the scripts and of the styles that stand in a page. */
function hashesIn(html: string) {
  const scripts = new Set<string>();
  const styles = new Set<string>();
  walkSync(parse(html), (node) => {
    if (node.type !== ELEMENT_NODE) return;
    const text = (node.children as readonly { value?: string }[]).map(({ value = '' }) => value).join('');
    if (node.name === 'script' && !('src' in node.attributes) && isCode(node.attributes.type))
      scripts.add(hashOf(text));
    if (node.name === 'style') styles.add(hashOf(text));
  });
  return { scripts, styles };
}

/**
 * The content security policy of a page (W3C, Content Security Policy Level 3).
 * Drawings carry measures and shades in attributes of style, thousands of them: these are allowed as attributes, which
 * can color and place but not run or fetch. A worker that a page starts is a file of the site and has no eval either.
 */
function policyOf(html: string): string {
  const { scripts, styles } = hashesIn(html);
  return [
    "default-src 'none'",
    `script-src ${["'self'", ...scripts].join(' ')}`,
    `style-src-elem ${["'self'", ...styles].join(' ')}`,
    "style-src-attr 'unsafe-inline'",
    ...['img', 'font', 'connect', 'worker', 'manifest'].map((of) => `${of}-src 'self'`),
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

/** The policy stands before everything that it is about. */
const head = /<meta charset="?utf-8"?\s*\/?>/i;

function withPolicy(html: string): string {
  if (!head.test(html))
    throw new Error('A page without its character set first has no place for its policy.');
  return html.replace(
    head,
    (charset) =>
      `${charset}<meta http-equiv="Content-Security-Policy" content="${policyOf(html)}"><meta name="referrer" content="no-referrer">`,
  );
}

/** What only a host can say. In the form that several static hosts read; others take the same lines in their settings. */
const headers = `/*
  Content-Security-Policy: frame-ancestors 'self'
  Permissions-Policy: camera=(), geolocation=(), microphone=(), payment=(), usb=()
  Referrer-Policy: no-referrer
  X-Content-Type-Options: nosniff
`;

/** Gives each page of a built site its policy, and writes `_headers` beside them. Comes before whatever takes checksums. */
export const policy = (): AstroIntegration => ({
  name: 'policy',
  hooks: {
    'astro:build:done': async ({ dir, logger }) => {
      const folder = fileURLToPath(dir);
      const names = (await readdir(folder, { recursive: true })).filter((name) => name.endsWith('.html'));
      for (const name of names) {
        const file = join(folder, name);
        await writeFile(file, withPolicy(await readFile(file, 'utf8')));
      }
      await writeFile(join(folder, '_headers'), headers);
      logger.info(`${names.length} pages have their policy`);
    },
  },
});

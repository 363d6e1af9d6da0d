/** How a built site becomes one that works from any folder. */
import { crc32 } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import {
  importsOf,
  mark,
  pageOf,
  ringOf,
  scriptOf,
  styleOf,
  textOf,
  twinOf,
  workerTwinOf,
} from '../../.ci/stick/relative.mjs';
import { zipOf } from '../../.ci/stick/zip.mjs';

const page = (path: string, body: string) => pageOf(path, `<html><head></head>${body}</html>`, '');

describe('a page', () => {
  test('links to the files of other pages, counted from where it stands', () => {
    expect(page('rules/twist/index.html', `<a href="${mark}lessons/#a">x</a>`)).toContain(
      '<a href="../../lessons/index.html#a">',
    );
    expect(page('index.html', `<a class="b" href="${mark}">x</a>`)).toContain('href="./index.html"');
    expect(page('index.html', `<a href="${mark}woods.csv">x</a>`)).toContain('href="./woods.csv"');
  });
  test('keeps links that lead elsewhere', () => {
    expect(page('index.html', '<a href="https://host/a/">x</a><a href="#b">y</a>')).toContain(
      '<a href="https://host/a/">x</a><a href="#b">',
    );
  });
  test('asks for its scripts in a way that a file can answer', () => {
    const html = page('a/index.html', `<script type="module" src="${mark}_astro/x.js"></script>`);
    expect(html).toContain('<script>stickImport("../_astro/x.js")</script>');
    expect(html).not.toContain('type="module"');
  });
});

test('a style sheet holds the faces, and finds other files from its own folder', () => {
  const css = `@font-face{src:url(${mark}_astro/f.woff2)}b{background:url(${mark}g.svg)}`;
  expect(
    textOf(
      '_astro/a.css',
      styleOf(css, () => Buffer.from('abc')),
    ),
  ).toBe('@font-face{src:url(data:font/woff2;base64,YWJj)}b{background:url(../g.svg)}');
});

describe('a script', () => {
  test('learns where the site is from its page', () => {
    expect(scriptOf(`let a=\`${mark}\`,b="${mark}x.js"`)).toBe(
      'let a=(globalThis.stickRoot+``),b=(globalThis.stickRoot+"x.js")',
    );
  });
  test('has a twin that says what it imports, at once and late', () => {
    const code = 'import{a}from"./a.js";import"./b.js";import(`./c.js`)';
    expect(importsOf(code)).toEqual(['a.js', 'b.js']);
    expect(twinOf('_astro/x.js', code)).toBe(
      `stickModule("_astro/x.js",["a.js","b.js"],${JSON.stringify(
        'import{a}from"stick:a.js";import"stick:b.js";stickImport(`_astro/c.js`)',
      )})`,
    );
  });
  test('of a worker may import nothing', () => {
    expect(() => workerTwinOf('w.js', 'import{a}from"./a.js"')).toThrow(/w\.js imports/);
    expect(workerTwinOf('w.js', 'let imported=1')).toBe('stickText("w.js","let imported=1")');
  });
  test('in a ring of scripts is found', () => {
    expect(
      ringOf(
        new Map([
          ['a', ['b']],
          ['b', ['c']],
          ['c', ['a']],
        ]),
      ),
    ).toEqual(['a', 'b', 'c', 'a']);
    expect(
      ringOf(
        new Map([
          ['a', ['b', 'c']],
          ['b', ['c']],
          ['c', []],
        ]),
      ),
    ).toBeUndefined();
  });
});

test('a zip begins and ends with its signatures, and carries the checksum of a file', () => {
  const zip = zipOf([['a/b.txt', Buffer.from('box box box')]]);
  expect(zip.subarray(0, 4).toString('latin1')).toBe('PK\x03\x04');
  expect(zip.readUInt32LE(14)).toBe(crc32(Buffer.from('box box box')));
  expect(zip.readUInt32LE(22)).toBe(11);
  expect(zip.subarray(30, 37).toString()).toBe('a/b.txt');
  expect(zip.subarray(-22, -18).toString('latin1')).toBe('PK\x05\x06');
});

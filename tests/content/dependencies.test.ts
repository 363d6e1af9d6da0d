/** Every package that the project takes in is listed, with the license that it states itself. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const root = new URL('../../', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, root), 'utf8');
const rows = read('DEPENDENCIES.md')
  .split('\n')
  .filter((line) => line.startsWith('| ') && !/^\| (package|---)/.test(line))
  .map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
const manifest = JSON.parse(read('package.json'));

test('the list names every dependency, and none that is gone', () => {
  expect(manifest.dependencies).toBeUndefined();
  expect(rows.map(([name]) => name)).toEqual(Object.keys(manifest.devDependencies).sort());
});

test.each(rows)(
  '%s states the license in the list, one that lets the site be passed on',
  (name, license, where, why) => {
    expect(JSON.parse(read(`node_modules/${name}/package.json`)).license).toBe(license);
    expect(license).toMatch(/\b(MIT|ISC|Apache-2\.0|BSD-3-Clause|MPL-2\.0|OFL-1\.1)\b/);
    expect(where).not.toBe('');
    expect(why).not.toBe('');
  },
);

/**
 * `npm run bench` runs every *.bench.ts of this folder, `npm run bench -- pages` only those with that in their name.
 * A benchmark measures and prints when it is loaded, or in the default function it exports; nothing here passes or fails.
 */
import { readdirSync } from 'node:fs';

const wanted = process.argv[2] ?? '';
const files = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith('.bench.ts') && name.includes(wanted))
  .sort();

for (const file of files) {
  console.log(`\n== ${file.replace('.bench.ts', '')}`);
  const { default: measure } = (await import(`./${file}`)) as { default?: () => Promise<void> | void };
  await measure?.();
}

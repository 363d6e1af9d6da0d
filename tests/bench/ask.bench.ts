/**
 * Sixty questions of learners, asked blind: what each finds among the first three answers, whether a number stands in the
 * first line, and the reason and the limit one tap away. A dot is what a question does not ask for.
 */
import { type InlineConfig, runnerImport } from 'vite';
import { woodsPlugin } from '../../src/build/woods-plugin.ts';

const path = new URL('../widgets/ask/walk.ts', import.meta.url).pathname;
const config: InlineConfig = { configFile: false, logLevel: 'error', plugins: [woodsPlugin()] };
/** Drawings stand behind some answers, which Node alone cannot read. */
const { walks } = (await runnerImport<typeof import('../widgets/ask/walk.ts')>(path, config)).module;

const scores = ['found', 'number', 'reason', 'limit'] as const;
const sign = (holds: boolean | undefined) => (holds === undefined ? '.' : holds ? 'yes' : 'NO');

for (const system of ['inch', 'mm'] as const) {
  const rows = walks(system);
  console.log(`\nfor a reader in ${system}`);
  for (const row of rows) {
    const text = `${row.question} (${row.who})`.padEnd(74);
    const signs = scores.map((score) => sign(row[score]).padEnd(4)).join('');
    console.log(`${text}${signs}${row.answer}${row.line && `: ${row.line}`}`);
  }
  for (const score of scores) {
    const asked = rows.filter((row) => row[score] !== undefined);
    console.log(`${score}: ${asked.filter((row) => row[score]).length} of ${asked.length}`);
  }
}

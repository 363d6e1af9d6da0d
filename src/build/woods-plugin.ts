/**
 * Vite plugin: `virtual:woods` and `virtual:all-woods` are the joined tables, packed. Used by the site and the tests,
 * so that nothing but `content/data` holds a figure.
 */
import { pack } from '../box/wood/packed-woods.ts';
import type { Wood } from '../calc/core/wood.ts';
import { tableFiles } from './tables.ts';
import { movingWoods, woodsTable } from './woods-table.ts';

/** What a box is calculated from; the rest stands on the woods page alone, and need not reach every other page. */
const forBoxes = (wood: Wood): Wood => ({
  ...wood,
  tableName: '',
  botanicalName: undefined,
  volumetricShrinkage: undefined,
  shearParallel: undefined,
  sideHardness: undefined,
});

const modules = {
  'virtual:woods': () => pack(movingWoods(woodsTable()).map(forBoxes)),
  'virtual:all-woods': () => pack(woodsTable()),
};

/** Serves the two modules and rebuilds them when a table changes. */
export function woodsPlugin() {
  return {
    name: 'woods',
    resolveId: (id: string) => (id in modules ? `\0${id}` : undefined),
    load(this: { addWatchFile: (file: string) => void }, id: string) {
      const make = modules[id.slice(1) as keyof typeof modules];
      if (id[0] !== '\0' || !make) return undefined;
      for (const file of tableFiles()) this.addWatchFile(file);
      return `export default ${JSON.stringify(make())};`;
    },
  };
}

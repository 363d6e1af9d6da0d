/** Lets a benchmark load the box outside the build: the tables are packed by the same plugin. Import it first. */
import { registerHooks } from 'node:module';
import { woodsPlugin } from '../../src/build/woods-plugin.ts';

const plugin = woodsPlugin();
const virtual = 'virtual:';
registerHooks({
  resolve: (name, context, next) =>
    name.startsWith(virtual) ? { url: name, shortCircuit: true } : next(name, context),
  load: (url, context, next) =>
    url.startsWith(virtual)
      ? {
          format: 'module',
          shortCircuit: true,
          source: plugin.load.call({ addWatchFile: () => {} }, `\0${url}`) ?? '',
        }
      : next(url, context),
});

/** Microseconds of one call in the fastest of many rounds: other programs only add. Every call gets another wall, as a slider would. */
export function microseconds(work: (wall: number) => void): number {
  const calls = 40;
  const rounds = Array.from({ length: 100 }, () => {
    const start = performance.now();
    for (let call = 0; call < calls; call++) work(9 + call / calls);
    return ((performance.now() - start) * 1000) / calls;
  });
  return Math.min(...rounds);
}

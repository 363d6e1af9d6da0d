/** Lets Node alone, without Vite, load the box: the tables are packed by the same plugin. Import it first. */
import { registerHooks } from 'node:module';
import { woodsPlugin } from '../src/build/woods-plugin.ts';

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

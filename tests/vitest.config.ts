import { defineConfig } from 'vitest/config';
import { woodsPlugin } from '../src/build/woods-plugin.ts';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  plugins: [woodsPlugin()],
  test: {
    testTimeout: 30_000,
    include: [
      'tests/{units,calc,geometry,box,notebook,widgets,content,tools,figures,exercises}/**/*.test.{ts,tsx}',
    ],
  },
});

import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { bundles } from './src/build/bundles.ts';
import { fetchedAgain } from './src/build/fetched-again.ts';
import { numbersOnly } from './src/build/numbers-only.ts';
import { offline } from './src/build/offline.ts';
import { policy } from './src/build/policy.ts';
import { withoutReasons } from './src/build/without-reasons.ts';
import { woodsPlugin } from './src/build/woods-plugin.ts';

/** @type {import('astro').AstroIntegration} */
const onTouch = {
  name: 'on-touch',
  hooks: {
    'astro:config:setup': ({ addClientDirective }) =>
      addClientDirective({ name: 'touch', entrypoint: './src/layouts/on-touch.js' }),
  },
};

// BASE_PATH hosts the site below a sub-path, SITE_URL makes its links absolute where the web asks for it.
export default defineConfig({
  site: process.env.SITE_URL || undefined,
  base: process.env.BASE_PATH || '/',
  trailingSlash: 'always',
  integrations: [mdx(), preact(), onTouch, policy(), offline()],
  vite: {
    plugins: [woodsPlugin(), withoutReasons(), numbersOnly(), fetchedAgain()],
    // What a page works out beside itself gets the same code as the page.
    worker: { format: 'es', plugins: () => [woodsPlugin(), withoutReasons()] },
    build: {
      rolldownOptions: { output: { codeSplitting: { groups: bundles } } },
    },
  },
});

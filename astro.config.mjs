import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { offline } from './src/build/offline.ts';
import { woodsPlugin } from './src/build/woods-plugin.ts';

// BASE_PATH hosts the site below a sub-path, SITE_URL makes its links absolute where the web asks for it.
export default defineConfig({
  site: process.env.SITE_URL || undefined,
  base: process.env.BASE_PATH || '/',
  trailingSlash: 'always',
  integrations: [mdx(), preact(), offline()],
  vite: {
    plugins: [woodsPlugin()],
    build: {
      rolldownOptions: {
        output: {
          // What nearly every page needs comes in one file instead of many small ones.
          codeSplitting: {
            groups: [
              {
                name: 'notebook',
                test: /preact|[\\/]src[\\/](units|notebook)[\\/]|Control|Quantity|VerdictLine|widgets[\\/]Lab\./,
              },
            ],
          },
        },
      },
    },
  },
});

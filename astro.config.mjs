import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { woodsPlugin } from './src/build/woods-plugin.ts';

// BASE_PATH hosts the site below a sub-path, SITE_URL makes its links absolute where the web asks for it.
export default defineConfig({
  site: process.env.SITE_URL || undefined,
  base: process.env.BASE_PATH || '/',
  trailingSlash: 'always',
  integrations: [mdx(), preact()],
  vite: { plugins: [woodsPlugin()] },
});

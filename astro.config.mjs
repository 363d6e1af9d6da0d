import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { numbersOnly } from './src/build/numbers-only.ts';
import { offline } from './src/build/offline.ts';
import { withoutWords } from './src/build/without-words.ts';
import { woodsPlugin } from './src/build/woods-plugin.ts';

// BASE_PATH hosts the site below a sub-path, SITE_URL makes its links absolute where the web asks for it.
export default defineConfig({
  site: process.env.SITE_URL || undefined,
  base: process.env.BASE_PATH || '/',
  trailingSlash: 'always',
  integrations: [mdx(), preact(), offline()],
  vite: {
    plugins: [woodsPlugin(), withoutWords(), numbersOnly()],
    build: {
      rolldownOptions: {
        output: {
          // Few files instead of many small ones: what every page needs, then what several lessons compute with.
          // A group takes along what its files import, so what many import comes first.
          codeSplitting: {
            groups: [
              {
                name: 'notebook',
                test: /preact|[\\/]src[\\/](units(?!.*parse)|notebook(?!.*(files|designs|year|svg-file)))[\\/]|[\\/]widgets[\\/](Lab|Control|VerdictLine|ResultLine|OwnNumber|subject|Exercise|GuessForm|PutInMyBox|RecallQuestion|RuleForMyBox)\.tsx|[\\/]calc[\\/]re(fusal|lation)\.ts|[\\/]figures[\\/]parts[\\/](Quantity|Label|Dimension|Drawing)/,
              },
              { name: 'plot', test: /d3-(scale|array)|numbers-only|[\\/]figures[\\/]parts[\\/](Plot|Axis)/ },
              { name: 'sizes', test: /[\\/](calc|results)[\\/]sizes\.ts/ },
              { name: 'moisture', test: /[\\/]calc[\\/]moisture\.ts|[\\/]results[\\/]air\.ts/ },
              {
                name: 'soaking',
                test: /[\\/]src[\\/](calc[\\/](diffusion(-series|-coefficient)?|slab|film-times|finish(-film)?)|box[\\/](results[\\/]wait|checks[\\/]finish))\.tsx?/,
              },
              {
                name: 'movement',
                test: /[\\/]calc[\\/](movement|panel|lengthwise|panel-play)\.ts|[\\/]results[\\/]movement\.ts/,
              },
              {
                name: 'panels',
                test: /[\\/]box[\\/]((checks|models)[\\/]movement|panel-state)\.ts|[\\/]GapSayings\.tsx/,
              },
            ],
          },
        },
      },
    },
  },
});

/** Offline use: after the build, a service worker that keeps every page and file of the site on the device. */
import { createHash } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { type GetManifestOptions, generateSW, getManifest, type ManifestTransform } from 'workbox-build';

/**
 * Adds the checksum of each file whose name stays when its content changes. While a server or a network between still
 * gives some pages of the version before, the new worker then refuses to be installed and is tried again later: it
 * never keeps a page together with scripts of another version.
 */
const withChecksums =
  (folder: string): ManifestTransform =>
  async (entries) => ({
    manifest: await Promise.all(
      entries.map(async (entry) => {
        if (entry.revision === null) return entry;
        const content = await readFile(folder + decodeURI(entry.url));
        return { ...entry, integrity: `sha256-${createHash('sha256').update(content).digest('base64')}` };
      }),
    ),
  });

/** Which files are kept. */
const filesOf = (folder: string) =>
  ({
    globDirectory: folder,
    globPatterns: ['**/*.{html,css,js,woff2,svg,png,webp,csv,json,webmanifest}'],
    // What the preview of the site is for is the project's front page elsewhere.
    globIgnores: ['screenshot.*'],
    // Names with a hash never change their content.
    dontCacheBustURLsMatching: /^(_astro\/|relations-|ask-)/,
  }) satisfies GetManifestOptions;

/**
 * Writes `kept.json`, the list of all that is kept: address and revision, as in the names of the cache, and checksum. With it a page can
 * say whether everything is on the device (`src/widgets/class/kept-here.ts`). It is kept too, but does not list itself.
 */
async function writeList(folder: string): Promise<void> {
  const files = filesOf(folder);
  const { manifestEntries } = await getManifest({
    ...files,
    globIgnores: [...files.globIgnores, 'kept.json'],
    manifestTransforms: [withChecksums(folder)],
  });
  const list = manifestEntries.map(({ url, revision, integrity }) => [url, revision, integrity]);
  await writeFile(`${folder}kept.json`, JSON.stringify(list));
}

/**
 * Writes `service-worker.js` beside the pages of a built site. Its addresses are relative, so that it also works below a
 * sub-path.
 * @param folder of the built site, with a slash at its end.
 */
export async function writeServiceWorker(folder: string) {
  await writeList(folder);
  return generateSW({
    ...filesOf(folder),
    swDest: `${folder}service-worker.js`,
    inlineWorkboxRuntime: true,
    sourcemap: false,
    manifestTransforms: [withChecksums(folder)],
    // A question mark in an address changes nothing in a site of files.
    ignoreURLParametersMatching: [/.*/],
    // A new version is fetched in the background and waits until the pages that are open are closed: they go on with
    // the files they were built with, also with parts that they fetch late.
    skipWaiting: false,
    clientsClaim: true,
    // An address that is not kept and cannot be reached gets the page for that, not the browser's error.
    runtimeCaching: [
      {
        urlPattern: ({ request }) => request.mode === 'navigate',
        handler: 'NetworkOnly',
        options: { precacheFallback: { fallbackURL: '404.html' } },
      },
    ],
    cleanupOutdatedCaches: true,
  });
}

/** Makes the service worker once the site is built, and says how much it keeps. */
export const offline = (): AstroIntegration => ({
  name: 'offline',
  hooks: {
    'astro:build:done': async ({ dir, logger }) => {
      const { count, size, warnings } = await writeServiceWorker(fileURLToPath(dir));
      for (const warning of warnings) logger.warn(warning);
      logger.info(`${count} files, ${Math.round(size / 1000)} kB kept for use without a network`);
    },
  },
});

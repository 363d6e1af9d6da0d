/**
 * What of the site is kept on this device, and fetching the rest. The service worker (`src/build/offline.ts`) keeps every
 * file in one cache; a page may look into that cache, and put into it what is missing, under the names the worker uses.
 */

/** Address from the root of the site, revision and checksum; none where the name of a file tells its content already. */
export type Listed = readonly [url: string, revision: string | null, integrity?: string | null];

/** The name of a file in the cache, as the worker's library makes it. @param root of the site, with a slash at its end */
export function keyOf([url, revision]: Listed, root: string): string {
  const key = new URL(url, root);
  if (revision !== null) key.searchParams.set('__WB_REVISION__', revision);
  return key.href;
}

/** Files of the list that no kept name answers to. */
export const missingOf = (
  list: readonly Listed[],
  kept: ReadonlySet<string>,
  root: string,
): readonly Listed[] => list.filter((one) => !kept.has(keyOf(one, root)));

const cacheName = (root: string) => `workbox-precache-v2-${root}`;

/** Whether this browser keeps anything for a page at this address. */
export const canKeep = () =>
  location.protocol.startsWith('http') && 'serviceWorker' in navigator && 'caches' in globalThis;

export interface Kept {
  readonly all: number;
  readonly missing: readonly Listed[];
  /** Whether the worker that answers without a network is there. */
  readonly worker: boolean;
}

/** @throws where neither network nor device has the list of files */
export async function keptHere(root: string): Promise<Kept> {
  const answer = await fetch(`${root}kept.json`);
  if (!answer.ok) throw new Error(String(answer.status));
  const list = (await answer.json()) as Listed[];
  const cache = await caches.open(cacheName(root));
  const kept = new Set((await cache.keys()).map(({ url }) => url));
  const registration = await navigator.serviceWorker.getRegistration(root);
  return { all: list.length, missing: missingOf(list, kept, root), worker: Boolean(registration?.active) };
}

/** Files asked for at once: a room of devices shares one network. */
const atOnce = 4;

/**
 * Fetches what is missing, and the worker.
 * @param tell told of each file that has come
 * @throws with the first file that does not come
 */
export async function fetchRest(missing: readonly Listed[], root: string, tell: () => void): Promise<void> {
  // Asked to, a browser keeps them also when it runs out of room.
  await navigator.storage?.persist?.();
  const cache = await caches.open(cacheName(root));
  const waiting = [...missing];
  const take = async () => {
    for (let one = waiting.pop(); one; one = waiting.pop()) {
      // A page of another version, from a server or a network between, is refused: it would not fit its scripts.
      const answer = await fetch(new URL(one[0], root), { cache: 'reload', integrity: one[2] ?? '' });
      if (!answer.ok) throw new Error(one[0]);
      await cache.put(keyOf(one, root), answer);
      tell();
    }
  };
  await Promise.all(Array.from({ length: atOnce }, take));
  await navigator.serviceWorker.register(`${root}service-worker.js`, { scope: root });
  await navigator.serviceWorker.ready;
}

/** Many keys of the store changed at once: all of them, or none. */
import { load, prefix, save } from '../storage.ts';

export type Texts = Readonly<Record<string, string | undefined>>;

/** Forgets what is kept under this key; tells whether it worked. */
function forget(key: string): boolean {
  try {
    localStorage.removeItem(prefix + key);
    return true;
  } catch {
    return false;
  }
}

function put(texts: Texts): boolean {
  const all = Object.entries(texts);
  // What goes makes room for what comes.
  return (
    all.every(([key, text]) => text !== undefined || forget(key)) &&
    all.every(([key, text]) => text === undefined || save(key, text))
  );
}

/**
 * Puts these texts in the place of what is kept, `undefined` forgetting it; this page is told as of a change in another tab.
 * Where the store refuses one, all is as before.
 */
export function replace(texts: Texts): boolean {
  const before = Object.fromEntries(Object.keys(texts).map((key) => [key, load(key)]));
  if (!put(texts)) {
    put(before);
    return false;
  }
  for (const [key, text] of Object.entries(texts))
    if (before[key] !== text)
      dispatchEvent(new StorageEvent('storage', { key: prefix + key, newValue: text ?? null }));
  return true;
}

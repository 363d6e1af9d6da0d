/**
 * The device's store under one prefix. Private windows and full disks refuse it: then `isSaving` turns false, the page says
 * so, and the box travels to the next page in its address.
 */
import { signal } from '@preact/signals';

/** Before every key in the store of this site. */
export const prefix = 'rule-and-reason.';

/** Whether the last attempt to keep something worked. */
export const isSaving = signal(true);

/** Saves a text; tells whether it worked. */
export function save(key: string, text: string): boolean {
  try {
    localStorage.setItem(prefix + key, text);
    isSaving.value = true;
    return true;
  } catch {
    isSaving.value = false;
    return false;
  }
}

/** The text kept under this key, if any. */
export function load(key: string): string | undefined {
  try {
    return localStorage.getItem(prefix + key) ?? undefined;
  } catch {
    return undefined;
  }
}

/**
 * Calls back when another tab has kept something under this key, or when all was brought in or erased on this page. What
 * was erased is an empty text.
 */
export function onOtherTab(key: string, follow: (text: string) => void): void {
  addEventListener('storage', (event) => {
    if (event.key === prefix + key) follow(event.newValue ?? '');
  });
}

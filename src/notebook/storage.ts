/**
 * The device's store under one prefix. Private windows and full disks refuse it: then `keeps` turns false, the page says
 * so, and the box travels to the next page in its address.
 */
import { signal } from '@preact/signals';

const prefix = 'rule-and-reason.';

/** Whether the last attempt to keep something worked. */
export const keeps = signal(true);

/** Keeps a text; tells whether it worked. */
export function keep(key: string, text: string): boolean {
  try {
    localStorage.setItem(prefix + key, text);
    keeps.value = true;
    return true;
  } catch {
    keeps.value = false;
    return false;
  }
}

/** The text kept under this key, if any. */
export function recall(key: string): string | undefined {
  try {
    return localStorage.getItem(prefix + key) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Calls back when another tab has kept something under this key. */
export function onOtherTab(key: string, follow: (text: string) => void): void {
  addEventListener('storage', (event) => {
    if (event.key === prefix + key && event.newValue !== null) follow(event.newValue);
  });
}

/** The device's store under one prefix. Private windows and full disks refuse it: then the notebook forgets, and works. */
const prefix = 'rule-and-reason.';

/** Keeps a text; tells whether it worked. */
export function keep(key: string, text: string): boolean {
  try {
    localStorage.setItem(prefix + key, text);
    return true;
  } catch {
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

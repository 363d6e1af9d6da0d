/** What a link carries behind its version: JSON as base64url. */

/** A link longer than this is not one of ours; what would be longer is not made. */
export const longestLink = 8000;

export function toTail(value: unknown): string {
  const bytes = new TextEncoder().encode(JSON.stringify(value));
  const text = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  return text.replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** Reads what `toTail` wrote; undefined where it is text but no JSON. @throws where it is no text at all */
export function fromTail(tail: string): unknown {
  const text = atob(tail.replaceAll('-', '+').replaceAll('_', '/'));
  const bytes = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  const json = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}

/**
 * What this version cannot read whole is set aside before anything is written over it: a damaged text, or one of a newer
 * version, which may have written it a moment ago in another tab. It stays under a key of its own, goes along in the file
 * of everything, and is shown on the page.
 *
 *   { version: 1, texts: [{ key: "notes", text: "…" }] }, the latest last
 *
 * A text whose top is no record with a number under `version` is of version 1; one of a later version is never read by halves.
 */
import { signal } from '@preact/signals';
import { load, save } from './storage.ts';

const key = 'set-aside';
const version = 1;
/** Texts that are remembered; the oldest go first. */
const most = 20;

export interface Aside {
  /** Where it stood. */
  readonly key: string;
  readonly text: string;
}

/** Something the reader should know about what could not be read, or not in full, with the text that was found. */
export const damaged = signal<{ message: string; text: string } | undefined>(undefined);

const parse = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};
const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;

/** The texts in one that claims to hold them. */
export function readAsides(text: string | undefined): readonly Aside[] {
  const { texts } = (parse(text ?? '') ?? {}) as { texts?: unknown };
  return Array.isArray(texts)
    ? texts.flatMap((one: Partial<Aside> | null) =>
        typeof one?.key === 'string' && typeof one.text === 'string'
          ? [{ key: one.key, text: one.text }]
          : [],
      )
    : [];
}

export const writeAsides = (texts: readonly Aside[]): string =>
  JSON.stringify({ version, texts: texts.slice(-most) });

/** Sets a text aside, once. */
export function keepAside(from: string, text: string): void {
  const known = readAsides(load(key));
  if (!known.some((one) => one.key === from && one.text === text))
    save(key, writeAsides([...known, { key: from, text }]));
}

/** A number under `version` that is higher than one: what a later version wrote. */
const isLater = (claimed: unknown) =>
  isObject(claimed) && 'version' in claimed && Number(claimed.version) > version;

/** Whether this version can make nothing of a text that should be JSON. */
export const isUnread = (text: string): boolean => {
  const claimed = parse(text);
  return claimed === undefined || isLater(claimed);
};

/** Whether everything in one value stands in the other too. */
const holds = (has: unknown, wanted: unknown): boolean =>
  has === wanted ||
  (isObject(has) &&
    isObject(wanted) &&
    Object.entries(wanted).every(
      ([name, value]) => Object.hasOwn(has, name) && holds((has as Record<string, unknown>)[name], value),
    ));

/**
 * Reads what is kept under a key; what of it this version cannot read is set aside and told.
 * @param name what a reader calls it: "notes"
 * @param read takes a text, and drops what it cannot use
 * @param write what this version would write for what was read
 */
export function readKept<Value>(
  from: string,
  name: string,
  read: (text: string | undefined) => Value,
  write: (value: Value) => string = JSON.stringify,
): Value {
  const text = load(from);
  // Emptied by hand or never written: there is nothing to lose.
  if (!text) return read(undefined);
  const claimed = parse(text);
  const later = isLater(claimed);
  const value = read(later ? undefined : text);
  if (!later && claimed !== undefined && holds(parse(write(value) ?? ''), claimed)) return value;
  keepAside(from, text);
  damaged.value ??= {
    message: `Not all of your ${name} could be read here: ${later ? 'a newer version of this page wrote them' : 'they are damaged'}. The text is set aside, and goes along when you save everything as a file.`,
    text,
  };
  return value;
}

/**
 * Everything a reader keeps: as one file, back from it, and erased. The texts under every key of `keys.ts` stand in the file
 * as they stand in the store, with a checksum; each part of the site reads its own field by field when it is used next.
 *
 *   { notebook: 1, made: "2026-11-28", check: "1x2y3z", kept: { box: "…", notes: "…", … } }
 */
import { exampleBox, isExample } from '../../box/subjects/example.ts';
import { decodeStore } from '../codec.ts';
import { readDesigns, writeDesigns } from '../designs.ts';
import { load } from '../storage.ts';
import { keys } from './keys.ts';
import { addDesigns } from './merges.ts';
import { replace, type Texts } from './replace.ts';

const version = 1;
/** More than a browser's store holds. */
const longestFile = 12_000_000;

/** Texts by their key; a key without one is not kept. */
export type Notebook = Readonly<Record<string, string>>;

/** What the device keeps now. */
export function notebookNow(): Notebook {
  return Object.fromEntries(
    Object.keys(keys).flatMap((key) => {
      const text = load(key);
      return text === undefined ? [] : [[key, text]];
    }),
  );
}

/** Whether a text was changed on its way: FNV-1a, 32 bits, over the code units. */
function checkOf(kept: Notebook): string {
  let mixed = 0x811c9dc5;
  for (const pair of Object.entries(kept).sort(([one], [other]) => (one < other ? -1 : 1)))
    for (const part of pair)
      for (let at = 0; at <= part.length; at++)
        mixed = Math.imul(mixed ^ (at < part.length ? part.charCodeAt(at) : 0x10000), 0x01000193);
  return (mixed >>> 0).toString(36);
}

/** The text of a notebook's file. @param made the day, "2026-11-28" */
export const writeNotebook = (kept: Notebook, made: string): string =>
  `${JSON.stringify({ notebook: version, made, check: checkOf(kept), kept }, undefined, 1)}\n`;

export type ReadNotebook =
  | {
      readonly ok: true;
      readonly made: string;
      readonly kept: Notebook;
      /** How many things in it are not known here. */
      readonly unknown: number;
    }
  | { readonly ok: false; readonly message: string };

const refuse = (message: string): ReadNotebook => ({ ok: false, message: `${message} Nothing was changed.` });

/** Reads what `writeNotebook` wrote; anything else is refused with a message. */
export function readNotebook(text: string): ReadNotebook {
  if (text.length > longestFile) return refuse('This file is too large to be a notebook.');
  let claimed: Record<string, unknown> | null;
  try {
    claimed = JSON.parse(text);
  } catch {
    return refuse('This file is damaged, or it is no notebook: its end or a part of it is missing.');
  }
  const found = claimed?.notebook;
  if (found === undefined && claimed?.box)
    return refuse('This file holds one box. Open it on the page “My box”, under “share”.');
  if (found === undefined && claimed?.cells)
    return refuse('This file holds scratch cells. Open it on the page “Scratch cells”.');
  if (typeof found === 'number' && found > version)
    return refuse(
      'This file is from a newer version of the notebook. Open this page with a network, so that it renews itself, and try again.',
    );
  if (found !== version) return refuse('This file is no notebook.');
  const { kept, check, made } = claimed!;
  if (
    typeof kept !== 'object' ||
    kept === null ||
    !Object.values(kept).every((one) => typeof one === 'string')
  )
    return refuse('This file is damaged.');
  if (checkOf(kept as Notebook) !== check)
    return refuse('This file was damaged or changed on its way. Save it anew where it comes from.');
  const own = Object.entries(kept as Notebook).filter(([key]) => Object.hasOwn(keys, key));
  return {
    ok: true,
    made: typeof made === 'string' ? made.slice(0, 10) : '',
    kept: Object.fromEntries(own),
    unknown: Object.keys(kept).length - own.length,
  };
}

export interface Merged {
  readonly kept: Notebook;
  /** By key: how many things find no room. */
  readonly leftOut: Readonly<Record<string, number>>;
}

const boxIn = (text: string | undefined) => {
  const decoded = text === undefined ? undefined : decodeStore(text);
  return decoded?.ok && !isExample(decoded.box) ? decoded.box : undefined;
};

/** Two notebooks together: nothing of the own one goes. A box that is no longer the current one stands among the designs. */
export function mergeNotebooks(own: Notebook, other: Notebook): Merged {
  const kept: Record<string, string> = { ...other, ...own };
  const leftOut: Record<string, number> = {};
  for (const [key, { merge }] of Object.entries(keys)) {
    const [mine, theirs] = [own[key], other[key]];
    if (mine === undefined || theirs === undefined || mine === theirs) continue;
    const merged = merge(mine, theirs);
    kept[key] = merged.text;
    if (merged.leftOut) leftOut[key] = merged.leftOut;
  }
  const [mine, theirs] = [boxIn(own.box), boxIn(other.box)];
  if (theirs && !mine) kept.box = other.box!;
  if (theirs && mine && JSON.stringify(mine) !== JSON.stringify(theirs)) {
    const before = kept.designs === undefined ? [] : readDesigns(kept.designs).good;
    const { designs, leftOut: none } = addDesigns(before, [
      { name: theirs.name || exampleBox.name, box: theirs },
    ]);
    kept.designs = writeDesigns(designs);
    if (none > 0) leftOut.designs = (leftOut.designs ?? 0) + none;
  }
  return { kept, leftOut };
}

/** A line of what will happen: what a key holds now, in the file and afterwards. */
export interface PlanLine {
  readonly key: string;
  readonly name: string;
  /** How many things; 0 where nothing is kept. */
  readonly now: number;
  readonly file: number;
  readonly after: number;
  /** There is one thing at most: it is there or not. */
  readonly single: boolean;
}

/** What will happen, for every key that holds something before or after. */
export function planOf(now: Notebook, file: Notebook, after: Notebook): readonly PlanLine[] {
  return Object.entries(keys).flatMap(([key, { name, count }]) => {
    const many = (text: string | undefined) => (text === undefined ? 0 : count ? count(text) : 1);
    const line = { key, name, now: many(now[key]), file: many(file[key]), after: many(after[key]) };
    return line.now + line.file + line.after > 0 ? [{ ...line, single: !count }] : [];
  });
}

/** Makes a notebook the one that is kept: every key has its text or none. @returns whether the device took all of it */
export function becomes(notebook: Notebook): boolean {
  const all: Texts = Object.fromEntries(Object.keys(keys).map((key) => [key, notebook[key]]));
  return replace(all);
}

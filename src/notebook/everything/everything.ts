/**
 * Everything a reader keeps: what it is now, put to what comes from a file, and erased. Each part of the site reads its own
 * text field by field when it is used next, so nothing of them is judged here.
 */
import { exampleBox, isExample } from '../../box/subjects/example.ts';
import { type Aside, isUnread, readAsides, writeAsides } from '../aside.ts';
import { decodeStore } from '../codec.ts';
import { readDesigns, writeDesigns } from '../designs.ts';
import { load } from '../storage.ts';
import { keys } from './keys.ts';
import { addDesigns, type Merge } from './merges.ts';
import { replace, type Texts } from './replace.ts';

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

export interface Merged {
  readonly kept: Notebook;
  /** By key: how many things find no room. */
  readonly leftOut: Readonly<Record<string, number>>;
}

const boxIn = (text: string | undefined) => {
  const decoded = text === undefined ? undefined : decodeStore(text);
  return decoded?.ok && !isExample(decoded.box) ? decoded.box : undefined;
};

/** What comes of two texts; a hostile one that cannot be merged changes nothing. */
function mergedOr(merge: Merge, mine: string, theirs: string): ReturnType<Merge> {
  try {
    return merge(mine, theirs);
  } catch {
    return { text: mine };
  }
}

/** Two notebooks together: nothing of the own one goes. A box that is no longer the current one stands among the designs. */
export function mergeNotebooks(own: Notebook, other: Notebook): Merged {
  const kept: Record<string, string> = { ...other, ...own };
  const leftOut: Record<string, number> = {};
  const unread: Aside[] = [];
  for (const [key, { merge }] of Object.entries(keys)) {
    const [mine, theirs] = [own[key], other[key]];
    if (mine === undefined || theirs === undefined || mine === theirs) continue;
    const merged = mergedOr(merge, mine, theirs);
    kept[key] = merged.text;
    if (merged.text !== mine && isUnread(mine)) unread.push({ key, text: mine });
    if (merged.leftOut) leftOut[key] = merged.leftOut;
  }
  if (unread.length > 0) kept['set-aside'] = writeAsides([...readAsides(kept['set-aside']), ...unread]);
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

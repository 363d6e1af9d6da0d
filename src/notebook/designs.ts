/** Named designs kept on the device, beside the current box. Each is read field by field; tabs add to one list. */
import { signal } from '@preact/signals';
import type { Box } from '../box/subjects/inputs.ts';
import { keepAside } from './aside.ts';
import { readBox } from './codec.ts';
import { load, onOtherTab, save } from './storage.ts';

const key = 'designs';
const version = 1;
export const mostDesigns = 50;

export interface SavedDesign {
  readonly name: string;
  readonly box: Box;
}

export const designs = signal<readonly SavedDesign[]>([]);
/** The design deleted last, until another is deleted or the page is left: it can be put back. */
export const deleted = signal<SavedDesign | undefined>(undefined);

/** What could not be read on this device; it stays in the store under another name and can be copied. */
export const unreadable = signal<string | undefined>(undefined);
let awake = false;

/** Reads the list from the device, and follows other tabs from then on. Designs that cannot be read are set aside, the others are kept. */
export function loadDesigns(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  const text = load(key);
  onOtherTab(key, (changed) => {
    designs.value = readDesigns(changed).good;
  });
  if (text === undefined) return;
  const { good, allRead } = readDesigns(text);
  designs.value = good;
  if (!allRead) {
    unreadable.value = text;
    save(`${key}.damaged`, text);
  }
}

/** The designs in a text that claims to be the list. A design with fields that cannot be used is good without them. */
export function readDesigns(text: string): { good: SavedDesign[]; allRead: boolean } {
  let claimed: { version?: unknown; designs?: unknown } | null;
  try {
    claimed = JSON.parse(text);
  } catch {
    return { good: [], allRead: false };
  }
  const list = claimed?.designs;
  if (claimed?.version !== version || !Array.isArray(list)) return { good: [], allRead: false };
  let whole = 0;
  const good = list.slice(0, mostDesigns).flatMap((one: { name?: unknown; box?: unknown } | null) => {
    const decoded = readBox(one?.box);
    if (!decoded.ok || typeof one?.name !== 'string' || one.name.length > 60) return [];
    if (decoded.dropped.length === 0) whole++;
    return [{ name: one.name, box: decoded.box }];
  });
  return { good, allRead: whole === list.length };
}

/** The list as text for the store. */
export const writeDesigns = (list: readonly SavedDesign[]): string =>
  JSON.stringify({ version, designs: list });

/** What is kept now, by whatever tab; this tab's list where the store cannot be read. */
function latest(): readonly SavedDesign[] {
  const text = load(key);
  if (text === undefined) return designs.value;
  const { good, allRead } = readDesigns(text);
  // Another tab may be of a newer version.
  if (!allRead) keepAside(key, text);
  return good;
}

const store = (list: readonly SavedDesign[]): boolean => {
  designs.value = list;
  return save(key, writeDesigns(list));
};

export type Saved = { ok: true } | { ok: false; why: 'same name' | 'full' | 'blocked'; message: string };

/** Keeps a box under its name beside what any tab has kept. One of the same name is replaced only where that is asked for. */
export function saveDesign(box: Box, replace = false): Saved {
  const kept = latest();
  const { name } = box;
  const others = kept.filter((one) => one.name !== name);
  if (others.length < kept.length && !replace)
    return { ok: false, why: 'same name', message: `A design called “${name}” is kept already.` };
  if (others.length >= mostDesigns)
    return { ok: false, why: 'full', message: `At most ${mostDesigns} designs are kept. Delete one first.` };
  return store([...others, { name, box }])
    ? { ok: true }
    : {
        ok: false,
        why: 'blocked',
        message: 'This device does not let the page keep anything: save it as a file, or copy a link.',
      };
}

/** Keeps a box under a name that is free: its own, or with a number behind it. Nothing where the same box is kept already. */
export function setAside(box: Box): void {
  const kept = latest();
  const same = JSON.stringify(box);
  if (kept.some((one) => JSON.stringify(one.box) === same)) return;
  const taken = new Set(kept.map(({ name }) => name));
  let name = box.name;
  for (let count = 2; taken.has(name); count++) name = `${box.name.slice(0, 55)} ${count}`;
  saveDesign({ ...box, name });
}

export function deleteDesign(name: string): void {
  const kept = latest();
  deleted.value = kept.find((one) => one.name === name);
  store(kept.filter((one) => one.name !== name));
}

/** Puts the design deleted last back. */
export function undelete(): void {
  const back = deleted.value;
  if (!back) return;
  deleted.value = undefined;
  store([...latest().filter(({ name }) => name !== back.name), back]);
}

/** Named designs kept on the device, beside the current box. Each is validated when it is read. */
import { signal } from '@preact/signals';
import type { Box } from '../box/box.ts';
import { validateBox } from './codec.ts';
import { keep, recall } from './storage.ts';

const key = 'designs';
const version = 1;
export const mostDesigns = 50;

export interface SavedDesign {
  readonly name: string;
  readonly box: Box;
}

export const designs = signal<readonly SavedDesign[]>([]);

/** What could not be read on this device; it stays in the store under another name and can be copied. */
export const unreadable = signal<string | undefined>(undefined);

/** Reads the list from the device. Designs that cannot be read are set aside, the others are kept. */
export function wakeDesigns(): void {
  const text = recall(key);
  if (text === undefined) return;
  const { good, allRead } = readDesigns(text);
  designs.value = good;
  if (!allRead) {
    unreadable.value = text;
    keep(`${key}.damaged`, text);
  }
}

/** The designs in a text that claims to be the list. */
export function readDesigns(text: string): { good: SavedDesign[]; allRead: boolean } {
  let claimed: unknown;
  try {
    claimed = JSON.parse(text);
  } catch {
    return { good: [], allRead: false };
  }
  const list = (claimed as { version?: unknown; designs?: unknown } | null)?.designs;
  if ((claimed as { version?: unknown } | null)?.version !== version || !Array.isArray(list))
    return { good: [], allRead: false };
  const good = list.slice(0, mostDesigns).flatMap((one: { name?: unknown; box?: unknown } | null) => {
    const decoded = validateBox(one?.box);
    return decoded.ok && typeof one?.name === 'string' && one.name.length <= 60
      ? [{ name: one.name, box: decoded.box }]
      : [];
  });
  return { good, allRead: good.length === list.length };
}

/** The list as text for the store. */
export const writeDesigns = (list: readonly SavedDesign[]): string =>
  JSON.stringify({ version, designs: list });

const store = (list: readonly SavedDesign[]): boolean => {
  designs.value = list;
  return keep(key, writeDesigns(list));
};

/** Keeps a box under its name; one of the same name is replaced. Tells what went wrong, if anything did. */
export function saveDesign(box: Box): string | undefined {
  const others = designs.value.filter(({ name }) => name !== box.name);
  if (others.length >= mostDesigns) return `At most ${mostDesigns} designs are kept. Delete one first.`;
  return store([...others, { name: box.name, box }])
    ? undefined
    : 'This device does not let the page keep anything.';
}

export function deleteDesign(name: string): void {
  store(designs.value.filter((design) => design.name !== name));
}

/**
 * The reader's own notes, each beside a step of a lesson or a rule; kept on the device, the same in every tab, and carried by
 * the file of a box.
 */
import { signal } from '@preact/signals';
import { readKept } from '../aside.ts';
import { onOtherTab, save } from '../storage.ts';

const key = 'notes';
const version = 1;
/** What may be typed; two notes that came together may be longer. */
export const longestNote = 4000;
const longestKept = 5 * longestNote;
const mostNotes = 500;

/** The text of each note by its place: "lessons/joint-spacing#edge", "rules/finger-fit". */
export type Notes = Readonly<Record<string, string>>;

export const notes = signal<Notes>({});
let awake = false;

/** Reads what claims to be notes by their place; what cannot be one is dropped. */
export function readNotes(claimed: unknown): Notes {
  if (typeof claimed !== 'object' || claimed === null) return {};
  return Object.fromEntries(
    Object.entries(claimed)
      .filter(
        ([place, text]) =>
          /^(lessons|rules)\/[a-z0-9-]{1,80}(#[a-z0-9-]{1,80})?$/.test(place) &&
          typeof text === 'string' &&
          text.trim() !== '' &&
          text.length <= longestKept,
      )
      .slice(0, mostNotes),
  );
}

/** Reads what `writeNotes` wrote. */
export function decodeNotes(text: string | undefined): Notes {
  try {
    const kept: { version?: unknown; notes?: unknown } | null = JSON.parse(text ?? 'null');
    return kept?.version === version ? readNotes(kept.notes) : {};
  } catch {
    return {};
  }
}

export const writeNotes = (all: Notes): string => JSON.stringify({ version, notes: all });

const kept = (): Notes => readKept(key, 'notes', decodeNotes, writeNotes);

/** Reads what is kept, and follows other tabs from then on. */
export function loadNotes(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  notes.value = kept();
  onOtherTab(key, (text) => {
    notes.value = decodeNotes(text);
  });
}

/** Keeps a note beside what any tab has kept meanwhile; an empty one is forgotten. @returns whether the device took it */
export function setNote(place: string, text: string): boolean {
  const { [place]: _old, ...others } = { ...notes.value, ...kept() };
  notes.value = text.trim() === '' ? others : { ...others, [place]: text.slice(0, longestKept) };
  return save(key, writeNotes(notes.value));
}

/**
 * Two sets of notes together. Where both have another at one place, both stay, one below the other; what there is no room
 * for is counted.
 */
export function mergeNotes(own: Notes, other: Notes): { notes: Notes; leftOut: number } {
  const merged: Record<string, string> = { ...own };
  let leftOut = 0;
  for (const [place, text] of Object.entries(other)) {
    const mine = own[place];
    if (mine?.includes(text)) continue;
    const both = mine === undefined || text.includes(mine) ? text : `${mine}\n\n${text}`;
    if (both.length > longestKept || (mine === undefined && Object.keys(merged).length >= mostNotes))
      leftOut++;
    else merged[place] = both;
  }
  return { notes: merged, leftOut };
}

/** Puts notes from a file beside the reader's own. @returns how many places it had notes for that are new or longer now */
export function addNotes(other: Notes): number {
  loadNotes();
  const own = { ...notes.value, ...kept() };
  const { notes: merged } = mergeNotes(own, other);
  const changed = Object.keys(merged).filter((place) => merged[place] !== own[place]).length;
  if (changed > 0) {
    notes.value = merged;
    save(key, writeNotes(merged));
  }
  return changed;
}

/**
 * The tries of one figure: what was set, and what came out, in the words and units that stood there. They last as long
 * as the visit: a try belongs to the thought of the moment, and the next reader at a shared device begins with none.
 */

/** One control as it stood. */
export interface Setting {
  /** Label: "wall thickness". */
  readonly name: string;
  /** As it was read: "10 mm", "Black cherry". */
  readonly shown: string;
  /** What brings it back: the text of its field, its option, or the place of its slider. */
  readonly value: string;
  /** Not folded away, so it belongs to every try. */
  readonly main: boolean;
}

export interface LabTry {
  readonly set: readonly Setting[];
  /** Lines of results, the main ones. */
  readonly got: readonly string[];
  /** Names of what was moved since the try before. */
  readonly moved?: readonly string[];
}

/** More cannot be looked through. */
export const mostTries = 10;
const longest = 400;

const isText = (value: unknown): value is string => typeof value === 'string' && value.length <= longest;
const isSetting = (value: unknown): value is Setting => {
  const { name, shown, value: raw, main } = (value ?? {}) as Partial<Record<keyof Setting, unknown>>;
  return [name, shown, raw].every(isText) && typeof main === 'boolean';
};
const isTry = (value: unknown): value is LabTry => {
  const { set, got, moved = [] } = (value ?? {}) as Partial<Record<keyof LabTry, unknown>>;
  return (
    Array.isArray(set) &&
    set.every(isSetting) &&
    [got, moved].every((all) => Array.isArray(all) && all.every(isText))
  );
};

/** The tries in a text that claims to hold them; what cannot be read is dropped. */
export function readTries(text: string | null): readonly LabTry[] {
  try {
    const kept: unknown = JSON.parse(text ?? '[]');
    return Array.isArray(kept) ? kept.filter(isTry).slice(-mostTries) : [];
  } catch {
    return [];
  }
}

/** The controls that stand elsewhere in the second of two tries; one that only one of them has is none of these. */
export const changedBetween = (before: LabTry, after: LabTry): readonly string[] =>
  after.set
    .filter(({ name, shown }) => before.set.some((one) => one.name === name && one.shown !== shown))
    .map(({ name }) => name);

const counts = ['Two', 'Three', 'Four', 'Five'];

/** What is said where more than one control was moved between two tries; nothing where one was. */
export function nudgeOf(changed: readonly string[]): string {
  if (changed.length < 2) return '';
  const count = counts[changed.length - 2] ?? 'Many';
  return `${count} things changed at once: ${changed.slice(0, -1).join(', ')} and ${changed.at(-1)}. Change one to see what it does.`;
}

const keyOf = (figure: string) => `rule-and-reason.tries.${figure}`;

/** The tries kept for a figure in this visit. @param figure its page and title */
export function loadTries(figure: string): readonly LabTry[] {
  try {
    return readTries(sessionStorage.getItem(keyOf(figure)));
  } catch {
    return [];
  }
}

/** Keeps them for the visit; where that is refused, the page has them as long as it is open. */
export function keepTries(figure: string, tries: readonly LabTry[]): void {
  try {
    sessionStorage.setItem(keyOf(figure), JSON.stringify(tries));
  } catch {
    // Nothing to do: see above.
  }
}

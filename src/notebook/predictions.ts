/**
 * What the reader guessed before looking, by guess id; kept on the device, and the same in every tab.
 * A guess is kept as a short text: a number in its stored unit, the name of an option, or that it was skipped.
 */
import { signal } from '@preact/signals';
import { readKept } from './aside.ts';
import { onOtherTab, save } from './storage.ts';

const key = 'guesses';

/** Kept in place of a guess when the reader wanted to see at once. */
export const skipped = 'skipped';

export type Guesses = Readonly<Record<string, string>>;

export const guesses = signal<Guesses>({});
let awake = false;
/** While a class guesses on the wall, the reader's own guesses. */
let own: Guesses | undefined;

/** The guesses in a text from the store; anything that is not a record of short texts is dropped. */
function read(text: string | undefined): Guesses {
  try {
    const kept: unknown = JSON.parse(text ?? '{}');
    return typeof kept === 'object' && kept !== null
      ? Object.fromEntries(
          Object.entries(kept).filter(([, value]) => typeof value === 'string' && value.length < 100),
        )
      : {};
  } catch {
    return {};
  }
}

const kept = (): Guesses => readKept(key, 'guesses', read);

/** Loads earlier guesses, and follows other tabs from then on. */
export function loadGuesses(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  guesses.value = kept();
  onOtherTab(key, (text) => {
    if (own) own = read(text);
    else guesses.value = read(text);
  });
}

/** Remembers a guess beside what any tab has kept meanwhile; an empty text forgets it. */
export function rememberGuess(id: string, text: string): void {
  const { [id]: _old, ...others } = { ...guesses.value, ...(own ? {} : kept()) };
  guesses.value = text === '' ? others : { ...others, [id]: text };
  if (!own) save(key, JSON.stringify(guesses.value));
}

/** For a class on the wall: every figure is covered, and what is guessed is kept nowhere. @returns the way back to the reader's own */
export function setGuessesAside(): () => void {
  loadGuesses();
  own ??= guesses.value;
  guesses.value = {};
  return () => {
    guesses.value = own ?? guesses.value;
    own = undefined;
  };
}

/** A kept guess as a number within these limits; nothing if it is none. */
export function markOf(text: string | undefined, low: number, high: number): number | undefined {
  const value = text === undefined || text.trim() === '' ? Number.NaN : Number(text);
  return value >= low && value <= high ? value : undefined;
}

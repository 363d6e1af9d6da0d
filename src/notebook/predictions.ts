/** What the reader guessed before looking, by guess id; kept on the device. */
import { signal } from '@preact/signals';
import { keep, recall } from './storage.ts';

const key = 'guesses';

export type Guesses = Readonly<Record<string, string>>;

export const guesses = signal<Guesses>({});

/** Loads earlier guesses; anything that is not a record of short texts is dropped. */
export function wakeGuesses(): void {
  try {
    const kept: unknown = JSON.parse(recall(key) ?? '{}');
    if (typeof kept === 'object' && kept !== null)
      guesses.value = Object.fromEntries(
        Object.entries(kept).filter(([, value]) => typeof value === 'string' && value.length < 100),
      );
  } catch {
    guesses.value = {};
  }
}

/** Remembers a guess; an empty text forgets it. */
export function rememberGuess(id: string, text: string): void {
  const { [id]: _old, ...others } = guesses.value;
  guesses.value = text === '' ? others : { ...others, [id]: text };
  keep(key, JSON.stringify(guesses.value));
}

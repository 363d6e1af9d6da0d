/** What the wall shows now, and what the class said. A class's hands are kept until the page is left, and nowhere else. */
import { signal } from '@preact/signals';
import type { UnitSystem } from '../../units/index.ts';
import { type GuessSpec, valuesOfGuess } from '../lesson/guess-spec.ts';
import { guessesOnPage } from '../lesson/guesses-on-page.ts';
import type { Slide } from './slides.ts';

/** The figure on the wall; none while the page is a page. */
export const slide = signal<Slide | undefined>(undefined);
/** Its place among those of the page, from 0, and how many there are. */
export const place = signal<{ readonly at: number; readonly of: number }>({ at: 0, of: 0 });
/** Whether its guess is open. */
export const isOpen = signal(false);
/** What stands over or beside it. */
export const panel = signal<'hands' | 'code' | undefined>(undefined);
/** Something to be said once. */
export const note = signal('');
/** Hands by figure, one count for each outcome or range. */
export const hands = signal<Readonly<Record<string, readonly number[]>>>({});

export const specOf = ({ figure }: Slide): GuessSpec | undefined => guessesOnPage.get(figure)?.spec;

/** Where the truth of a guess lies, in the stored unit, as the guess begins; undefined where none is a number. */
export function truthOf({ figure }: Slide, system: UnitSystem): number | undefined {
  const { spec, model } = guessesOnPage.get(figure) ?? {};
  return spec?.type === 'number' && model
    ? spec.truth(valuesOfGuess(spec, model, system), system)
    : undefined;
}

export function setHands({ name }: Slide, at: number, count: number): void {
  const counts = [...(hands.value[name] ?? [])];
  counts[at] = count;
  hands.value = { ...hands.value, [name]: counts };
}
export function dropHands({ name }: Slide): void {
  const { [name]: _, ...others } = hands.value;
  hands.value = others;
}

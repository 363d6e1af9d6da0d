/** The guesses that are awake on this page, by the card they stand in: for what is laid over a page and fetched late. */
import type { Model } from '../../box/subjects/model.ts';
import type { GuessSpec } from './guess-spec.ts';

export const guessesOnPage = new WeakMap<Element, { readonly spec: GuessSpec; readonly model: Model }>();

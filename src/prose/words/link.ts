/** The link around a use of a word: to the page of words, and with a script to its meaning beside it. */
import { href } from '../../widgets/kit/href.ts';
import { anchorOfWord } from './glossary.ts';

export const wordLink = (id: string, text: string): string =>
  `<a class="word" href="${href(`words/#${anchorOfWord(id)}`)}" data-word="${id}">${text}</a>`;

/** Words that a text marks already, by the `Word` tag. */
export const linkedIn = (html: string): readonly string[] =>
  [...html.matchAll(/<a class="word"[^>]* data-word="([^"]+)"/g)].map((match) => match[1]!);

/** A question as it is meant: its concepts, what was misspelled, what is not known, whether it is about my own box. */
import { fillers } from './fillers.ts';
import { type Language, tokensOf } from './language.ts';
import type { Spelling } from './spelling.ts';

export interface Meant {
  /** For each word that asks for something: what it may mean. */
  readonly words: readonly (readonly string[])[];
  /** Words that are none of the site's. */
  readonly unknown: readonly string[];
  readonly readAs: readonly { readonly typed: string; readonly meant: string }[];
  /** What kind of answer the question asks for, where it says so: a number of my own, advice, a meaning, a lesson, an exercise, what to do about something wrong, how not to be hurt. */
  readonly wants: ReadonlySet<Wish>;
}

export type Wish = keyof typeof wishes;

const wishes = {
  mine: /\b(my|mine|our|ours|did i)\b/i,
  advice: /\b(should|must|need|needs|enough|best|usual|minimum|can i|do i)\b/i,
  meaning:
    /\bwhat\s+(is|are|does|do)\s+(an?\s+|the\s+)?[\w-]+(\s+[\w-]+){0,2}(\s+mean)?\s*\??$|\b(meaning|mean|definition|define)\b/i,
  lesson: /\blesson\b/i,
  practice: /\b(exercises?|practi[cs]e|quiz)\b/i,
  wrong:
    /\btoo (wide|narrow|big|small|long|short|thick|thin|tight|loose|deep|shallow)\b|\b(what now|what do i do|fix|went wrong)\b/i,
  safe: /\b(safe|safely|safety|danger|dangerous|hurt|mask|respirator|goggles|gloves|fire|burn|kickback|caution|cautions|hazard)\b/i,
} as const;

/** @param isKnown whether a word stands in some text of the site */
export function meantBy(
  question: string,
  language: Language,
  spelling: Spelling,
  isKnown: (token: string) => boolean,
): Meant {
  const typed = tokensOf(question);
  const isTyping = /[a-z]$/i.test(question);
  const readAs: { typed: string; meant: string }[] = [];
  const unknown: string[] = [];
  /** Known words in a row; the one still being typed may be the beginning of several. */
  const row: string[] = [];
  let beginnings: readonly string[] = [];
  typed.forEach((token, at) => {
    if (fillers.has(token) || language.tokens.has(token) || isKnown(token)) {
      row.push(token);
      return;
    }
    if (isTyping && at === typed.length - 1) {
      if (token.length < 2) return;
      beginnings = spelling.beginning(token);
      if (beginnings.length > 0) return;
    }
    const meant = spelling.meant(token);
    if (meant) {
      readAs.push({ typed: token, meant });
      row.push(meant);
    } else unknown.push(token);
  });
  const words = language.read(row).map(({ concepts }) => concepts);
  const begun = beginnings.flatMap((word) => language.read([word]).flatMap(({ concepts }) => concepts));
  return {
    words: begun.length > 0 ? [...words, [...new Set(begun)]] : words,
    unknown,
    readAs,
    wants: new Set((Object.keys(wishes) as Wish[]).filter((wish) => wishes[wish].test(question))),
  };
}

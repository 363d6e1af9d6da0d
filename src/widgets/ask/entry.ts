/**
 * What can be an answer: a rule, a lesson or a step of one, an exercise, a word, a trouble, a caution, a wood, a page, a number of the
 * reader's own box, or that these pages do not say it. The site's own entries are made while it is built (`prose/ask-entries.ts`) and fetched with the first
 * question; those of the box are made from the box as it is.
 */
import type { Verdict } from '../../box/core/verdict.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import type { Words } from '../../box/work/say.ts';
import type { Marked } from '../../figures/box/MarkedBox.tsx';

/** As a reader meets it, beside the title. */
export const kindWords = {
  rule: 'rule',
  lesson: 'lesson',
  exercise: 'exercise',
  word: 'word',
  trouble: 'trouble',
  wood: 'wood',
  page: 'page',
  own: 'my box',
  judged: 'for my box',
  sized: 'for that size',
  hazard: 'caution',
  beyond: 'not on these pages',
} as const;
export type Kind = keyof typeof kindWords;

/** A text that holds lengths, as each reader has it. */
export interface BothTexts {
  readonly mm: string;
  readonly inch: string;
}

export interface Entry {
  /** `rule:lid-clearance`, `own:bottom.width`. */
  readonly id: string;
  readonly kind: Kind;
  readonly title: string;
  /** From the site's root: `rules/lid-clearance/`. */
  readonly path: string;
  /** One sentence or two: what it claims, asks or means. */
  readonly says?: string | Words;
  /** How people say it; as good as the title. */
  readonly asked?: readonly string[];
  /** Searched too, and not shown. */
  readonly text?: string;
  readonly usual?: BothTexts;
  /** When to break it. */
  readonly except?: string;
  /** Slug of the rule that gives the reason. */
  readonly rule?: string | undefined;
  /** Slugs of the rules where its causes stand, the likeliest first. */
  readonly rules?: readonly string[];
  /** Id of the check whose number comes first. */
  readonly check?: string | undefined;
  /** The only kind of box that it is about: another one has no number for it. */
  readonly onlyOf?: Box['kind'] | undefined;
  /** What of the box is meant. */
  readonly part?: Marked | undefined;
  /** Of the reader's box; made when it is shown. Undefined where the box has no such number. */
  readonly number?: () => Words | undefined;
  /** How a rule judges a size that was asked about. */
  readonly verdict?: Verdict;
}

/** What is fetched with the first question. */
export interface AskFile {
  /** Groups of words that mean the same, by the name of the group. */
  readonly words: Readonly<Record<string, readonly string[]>>;
  readonly entries: readonly Entry[];
  /** How people ask for an answer, by its id, beside what it says itself. */
  readonly asked: Readonly<Record<string, readonly string[]>>;
  /** Names of woods of which the tables have no movement. */
  readonly stillWoods: readonly string[];
}

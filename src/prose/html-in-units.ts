/**
 * Pairs of native values in a page: each becomes two spans, of which the style sheet shows the reader's; without
 * JavaScript, and where both are asked for, it reads as it was written.
 */
import { withPairs } from '../units/late/pairs.ts';

/** Text of an HTML file between its tags, with every pair as two spans. */
const splitPairs = (text: string): string =>
  withPairs(text)
    .map((piece) =>
      typeof piece === 'string'
        ? piece
        : `<span class="mm">${piece.mm}</span><span class="inch">${piece.inch}</span>`,
    )
    .join('');

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** A sentence of a frontmatter as HTML. */
export const sentenceInUnits = (text: string): string => splitPairs(escaped(text));

/** What is no running text: drawings, equations, and parts that wake, whose words are written in both units already. */
const untouched = /(<(svg|math|astro-island|script|style)\b[\s\S]*?<\/\2>|<[^>]*>)/;

/** Rendered HTML with every pair of its running text in the reader's units. */
export const htmlInUnits = (html: string): string =>
  html
    .split(untouched)
    // The pattern has two groups: text, what was matched, the name of its tag, text, …
    .map((piece, at) => (at % 3 === 0 ? splitPairs(piece) : at % 3 === 1 ? piece : ''))
    .join('');

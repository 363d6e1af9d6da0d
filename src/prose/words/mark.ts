/**
 * The first use of each word of the glossary in a page's HTML becomes a link to its meaning. Not in headings, links,
 * drawings, controls and margins. What lies in a fold is marked only where the open text never uses the word.
 */
import { finderOf, type Glossary } from './glossary.ts';

/** A tag; its attributes may hold a “>”. */
const tag = /(<\/?[a-zA-Z][^\s>/]*(?:"[^"]*"|'[^']*'|[^>"'])*>|<!--[\s\S]*?-->)/;
const named = /^<(\/?)([a-zA-Z][\w-]*)/;
/** Nothing in these is running text of the lesson. */
const closed = new Set(
  'a astro-island button cite code figure form h1 h2 h3 h4 label math nav noscript output script style summary svg table'.split(
    ' ',
  ),
);
const void_ = new Set('br hr img input link meta source wbr'.split(' '));
const isMargin = (piece: string) => /class="[^"]*\b(step-notes|kicker|no-words)\b/.test(piece);

interface Place {
  /** Which piece of the page, and where in it. */
  readonly piece: number;
  readonly at: number;
  readonly length: number;
  readonly folded: boolean;
}

export interface MarkedPage {
  readonly html: string;
  /** Ids of the words that were marked, in the order of the page. */
  readonly used: readonly string[];
}

/** @param linked the link around a use: its id, and the text as it stands there */
export function markWords(
  html: string,
  glossary: Glossary,
  linked: (id: string, text: string) => string,
): MarkedPage {
  const find = finderOf(glossary);
  const pieces = html.split(tag);
  const first = new Map<string, Place>();
  let folds = 0;
  /** The element that is passed over, and how deep in elements of its name we are. */
  let over: { name: string; depth: number } | undefined;
  pieces.forEach((piece, index) => {
    const [, end, written] = index % 2 === 1 ? (named.exec(piece) ?? []) : [];
    const name = written?.toLowerCase();
    if (name !== undefined) {
      if (void_.has(name) || piece.endsWith('/>')) return;
      if (over) {
        if (name === over.name) over.depth += end ? -1 : 1;
        if (over.depth === 0) over = undefined;
      } else if (!end && (closed.has(name) || isMargin(piece))) over = { name, depth: 1 };
      else if (name === 'details') folds += end ? -1 : 1;
      return;
    }
    if (over || index % 2 === 1) return;
    for (const { id, at, length } of find(piece)) {
      const known = first.get(id);
      if (!known || (known.folded && folds === 0))
        first.set(id, { piece: index, at, length, folded: folds > 0 });
    }
  });
  const inOrder = [...first].sort(([, one], [, other]) => one.piece - other.piece || one.at - other.at);
  // From the end, so that the places before stay where they are.
  for (const [id, { piece, at, length }] of inOrder.toReversed()) {
    const text = pieces[piece]!;
    pieces[piece] = text.slice(0, at) + linked(id, text.slice(at, at + length)) + text.slice(at + length);
  }
  return { html: pieces.join(''), used: inOrder.map(([id]) => id) };
}

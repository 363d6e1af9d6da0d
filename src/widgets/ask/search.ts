/** From a question to its answers. */
import type { Box } from '../../box/subjects/inputs.ts';
import type { UnitSystem } from '../../units/index.ts';
import { askIndex } from './ask-index.ts';
import type { AskFile, Entry } from './entry.ts';
import { judgedSize } from './judged.ts';
import { tokensOf } from './language.ts';
import { type Own, ownOf } from './own.ts';
import { ownAmounts } from './own-amounts.ts';
import { ownNumbers } from './own-numbers.ts';
import { ownParts } from './own-parts.ts';
import { ownWhole } from './own-whole.ts';
import { ownWork } from './own-work.ts';
import { pages } from './pages.ts';
import { type Meant, meantBy } from './question.ts';
import { ranked } from './rank.ts';
import { numberIn, type ReadNumber } from './sizes.ts';
import { type Spelling, spellingOf } from './spelling.ts';
import { wallForLength } from './wall-for-length.ts';
import { forPanel, woodEntries } from './wood-entries.ts';

export interface Found {
  readonly answers: readonly Entry[];
  readonly readAs: Meant['readAs'];
  readonly unknown: Meant['unknown'];
  /** Where nothing answers the question: what comes nearest. */
  readonly nearest: readonly Entry[];
}

export interface Search {
  /** Takes up the reader's box, where it is another one. */
  readonly own: (box: Box) => Own;
  readonly find: (question: string, box: Box, system: UnitSystem) => Found;
}

const most = 8;
/** Entries that are taken up in one go while the page must not stand still: some milliseconds on a slow phone. */
const atOnce = 20;
const nextTask = () => new Promise<void>((resolve) => setTimeout(resolve));

const entriesOf = (own: Own, { stillWoods }: AskFile): readonly Entry[] => [
  ...ownParts(own),
  ...ownWhole(own),
  ...ownWork(own),
  ...ownAmounts(own),
  ...ownNumbers(own),
  ...woodEntries(own.box, stillWoods),
];

/** Characters of a question; what is pasted behind them is not read, since a word of a million letters fits no table of spellings. */
const longestQuestion = 300;

/** Made piece by piece, so that typing goes on meanwhile. */
export async function searchOf(file: AskFile, read: ReadNumber, box: Box): Promise<Search> {
  const index = askIndex(file);
  let own = ownOf(box);
  let ofBox = entriesOf(own, file);
  const all = [...file.entries, ...pages, ...ofBox];
  for (let at = 0; at < all.length; at += atOnce) {
    await nextTask();
    index.add(all.slice(at, at + atOnce));
  }
  await nextTask();
  let spelling: Spelling | undefined = spellingOf(index.known);

  /** A misspelled question says the same as a well spelled one. */
  const asRead = (question: string, { readAs }: Meant) =>
    tokensOf(question)
      .map((token) => readAs.find(({ typed }) => typed === token)?.meant ?? token)
      .join(' ');

  const takeUp = (other: Box): Own => {
    if (other === own.box) return own;
    own = ownOf(other);
    index.drop(ofBox);
    ofBox = entriesOf(own, file);
    index.add(ofBox);
    spelling = undefined;
    return own;
  };

  return {
    own: takeUp,
    find: (typed, ofReader, system) => {
      const question = typed.slice(0, longestQuestion);
      const mine = takeUp(ofReader);
      const size = numberIn(question);
      spelling ??= spellingOf(index.known);
      const meant = meantBy(size?.rest ?? question, index.language, spelling, (token) =>
        index.known.has(token),
      );
      const concepts = new Set(meant.words.flat());
      const judged =
        size &&
        (wallForLength(read, size, concepts, mine, system) ??
          judgedSize(read, size.typed, concepts, mine, system));
      const saidSo = index.saidSo(asRead(question, meant));
      const others = ranked(index.hits([...concepts]), meant, saidSo).slice(0, most);
      const answers = isUnderstood(meant)
        ? [...(judged ? [judged] : []), ...others.map((one) => forPanel(one, ofReader, concepts))]
        : [];
      return {
        answers,
        readAs: meant.readAs,
        unknown: meant.unknown,
        nearest: answers.length > 0 ? [] : others.slice(0, 3),
      };
    },
  };
}

/** Whether more of a question is known than strange; what is misspelled is known only while nothing else is strange. */
function isUnderstood({ words, unknown, readAs }: Meant): boolean {
  const strange = unknown.length;
  return words.length - (strange > 0 ? readAs.length : 0) > strange;
}

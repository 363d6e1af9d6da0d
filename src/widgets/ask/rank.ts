/** Which answers come first: those that answer all of a question, of the kind it asks for. */
import type { Hit } from './ask-index.ts';
import type { Entry, Kind } from './entry.ts';
import type { Meant, Wish } from './question.ts';
import { answeredByWoods } from './wood-entries.ts';

const weights: Readonly<Record<Kind, number>> = {
  judged: 1,
  sized: 1,
  own: 1,
  rule: 1.1,
  trouble: 1,
  wood: 1,
  page: 0.8,
  beyond: 0.8,
  lesson: 0.6,
  hazard: 0.5,
  word: 0.5,
  exercise: 0.3,
};

/** Kinds that a question asks for in its own words count so many times as much. */
const wishes: readonly (readonly [wish: Wish, of: Kind, by: number])[] = [
  ['mine', 'own', 1.8],
  ['advice', 'rule', 1.5],
  ['meaning', 'word', 4],
  ['lesson', 'lesson', 3],
  ['practice', 'exercise', 10],
  ['safe', 'hazard', 4],
];

/** Concepts of a question about something that is wrong. */
const troubles: ReadonlySet<string> = new Set(
  'jams rattles rocks splits falls-out opens cups out-of-square sags smells sticky-finish step hole'
    .split(' ')
    .map((name) => `=${name}`),
);
/** A trouble counts more where one is asked about, and less elsewhere. */
const forTrouble = (isTrouble: boolean) => (isTrouble ? 1.6 : 0.7);

/** An answer that people ask for in just these words counts so many times as much. */
const saidSoBy = 5;

/** Less of the question than this is no answer; nor is what scores so much less than the best. */
const leastShare = 0.4;
const leastOfBest = 0.04;

/** How far an entry answers one concept, 0 to 1: every wood says what it moves. */
const answers = ({ entry, answered }: Hit, concept: string) =>
  entry.kind === 'wood' && answeredByWoods.includes(concept) ? 1 : answered(concept);

/** An exercise asks where the others answer: it stands behind them, but for who wants to practice. */
const isBehind = ({ kind }: Entry, wants: Meant['wants']) => kind === 'exercise' && !wants.has('practice');

/** @param saidSo ids of the entries that are asked for in just these words */
export function ranked(
  hits: readonly Hit[],
  { words, wants }: Meant,
  saidSo: ReadonlySet<string>,
): readonly Entry[] {
  const isTrouble = wants.has('wrong') || words.flat().some((concept) => troubles.has(concept));
  const scored = hits
    .map((hit) => {
      const { kind } = hit.entry;
      const share =
        words.reduce((sum, word) => sum + Math.max(...word.map((concept) => answers(hit, concept))), 0) /
        words.length;
      const wanted = wishes
        .filter(([wish, of]) => of === kind && wants.has(wish))
        .reduce((all, [, , by]) => all * by, 1);
      const weight =
        weights[kind] *
        wanted *
        (saidSo.has(hit.entry.id) ? saidSoBy : 1) *
        (kind === 'trouble' ? forTrouble(isTrouble) : 1);
      return { entry: hit.entry, share, score: hit.score * share ** 3 * weight };
    })
    .sort(
      (one, other) =>
        Number(isBehind(one.entry, wants)) - Number(isBehind(other.entry, wants)) || other.score - one.score,
    );
  const best = scored[0]?.score ?? 0;
  return scored
    .filter(({ share, score }) => share >= leastShare && score >= best * leastOfBest)
    .map(({ entry }) => entry);
}

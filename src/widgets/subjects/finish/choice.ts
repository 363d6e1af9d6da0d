/** The finishes a reader may choose from, by name, and what is known of each. */
import { choice } from '../../../box/core/inputs.ts';
import { effectivenessAfter, type Finish, finishes, notFitting } from '../../../calc/finish/finish.ts';
import { type Runner, raceDays } from '../../../figures/finish/FinishRace.tsx';

const label = ({ name, coats }: Pick<Finish, 'name' | 'coats'>) =>
  `${name}, ${coats} ${coats === 1 ? 'coat' : 'coats'}`;

/** Labels in the order of `finishes`; a finish with one published figure says so. */
const finishLabels = finishes.map((finish) =>
  finish.figures === 'three' ? label(finish) : `${label(finish)} (one figure)`,
);

/** Those that one resistance describes, then those that it does not. */
const runnerLabels = [...finishLabels, ...notFitting.map((finish) => `${label(finish)} (no fit)`)];

const at = (name: string, coats: number) =>
  finishes.findIndex((finish) => finish.name === name && finish.coats === coats);

/** A choice of one label, by its index. */
const oneOf = (words: string, labels: readonly string[], start: number) =>
  choice(words, Object.fromEntries(labels.map((text, index) => [String(index), text])), String(start));

/** The finishes the figures start with. */
const [varnish, linseed] = [at('Urethane varnish', 3), at('Linseed oil', 3)];

/** Controls that choose a finish: those that one resistance describes, or all. */
export const oneFinish = (words: string) => oneOf(words, finishLabels, varnish);
export const runners = {
  first: oneOf('one finish', runnerLabels, varnish),
  second: oneOf('another', runnerLabels, linseed),
};

const lines = new Map<number, readonly number[]>();

/** A finish as the race draws it; its line is computed once. @param index in `runnerLabels` */
export function runner(index: number): Runner {
  const finish = finishes[index];
  const { published } = finish ?? notFitting[index - finishes.length]!;
  const days = published.length === 1 ? [14] : [1, 7, 14];
  if (finish && !lines.has(index))
    lines.set(
      index,
      raceDays.map((day) => effectivenessAfter(day, finish.resistance)),
    );
  return {
    name: runnerLabels[index]!,
    model: lines.get(index),
    published: published.map((percent, i) => ({ day: days[i]!, percent })),
  };
}

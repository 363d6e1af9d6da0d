/** The course in blocks: its minutes, what a block names, and which questions it asks again. Pure. */
import { oneOf } from '../author-error.ts';
import { pickRecall } from '../recall.ts';

/** The parts of a block in order, minutes each (common practice): 90 together. */
export const phases = {
  retrieve: { minutes: 5, name: 'Do you still know?', short: 'questions from earlier blocks' },
  predict: { minutes: 10, name: 'Guess, then see', short: 'a guess, then to see it' },
  worked: { minutes: 15, name: 'Worked example', short: 'a worked example' },
  bench: { minutes: 45, name: 'At the bench', short: 'the bench' },
  exercise: { minutes: 10, name: 'Exercise', short: 'an exercise with a key' },
  exit: { minutes: 5, name: 'Before you leave', short: 'a check before leaving' },
} as const;

export const minutesOfBlock = Object.values(phases).reduce((sum, phase) => sum + phase.minutes, 0);

const minutes = Object.values(phases);

/** When each part begins and ends, minutes from the start of the block. */
export const timetable = minutes.map((phase, at) => {
  const from = minutes.slice(0, at).reduce((sum, { minutes }) => sum + minutes, 0);
  return { name: phase.name, from, to: from + phase.minutes };
});

interface Named {
  readonly id: string;
}

/** The entries that a block names, in its order; stops the build at a name that is none, with the list of those there are. */
export function named<Entry extends Named>(
  block: string,
  what: string,
  wanted: readonly Named[],
  all: readonly Entry[],
): Entry[] {
  const byId = Object.fromEntries(all.map((entry) => [entry.id, entry]));
  return wanted.map(({ id }) => oneOf(byId, id, `${what} of the block ${block}`, id));
}

/** The step of a lesson's text that holds this guess; stops the build where the lesson has no such guess. */
export function stepOfGuess(block: string, body: string, guess: string): string {
  const steps: Record<string, string> = {};
  let step = '';
  for (const [, tag, of] of body.matchAll(/<(Step|Guess) of="([^"]+)"/g)) {
    if (tag === 'Step') step = of!;
    else steps[of!] = step;
  }
  return oneOf(steps, guess, `guess of the block ${block}`, guess);
}

interface Lesson extends Named {
  readonly data: { readonly recall: Parameters<typeof pickRecall>[0][number]['data']['recall'] };
}

/**
 * Three questions from the lessons of earlier blocks; the first block asks its own, before anybody can know.
 * @param lessons those of each block, in the order of the blocks
 * @param block index among them
 */
export function questionsOfBlock(lessons: readonly (readonly Lesson[])[], block: number) {
  const inOrder = lessons
    .flat()
    .map(({ id, data: { recall } }, at) => ({ id, data: { order: at + 1, recall } }));
  return pickRecall(inOrder, lessons[block]![0]!.id);
}

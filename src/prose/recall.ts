/**
 * Which three questions are built into a lesson and printed, the same for everybody: one each from the lessons before it, the
 * latest first. A reader's own are chosen on their device, by `notebook/recall`.
 */

interface Question {
  ask: string;
  options: string[];
  right: number;
  because: string;
}
interface Lesson {
  id: string;
  data: { order: number; recall: Question[] };
}

/** @returns three questions; the nth later lesson asks the nth question of an earlier one, so that none comes twice in a row. */
export function pickRecall(lessons: readonly Lesson[], id: string): Question[] {
  const here = lessons.find((lesson) => lesson.id === id);
  if (!here)
    throw new Error(
      `<Recall> got “${id}”, but the lessons are: ${lessons.map((lesson) => lesson.id).join(', ')}.`,
    );
  const earlier = lessons
    .filter((lesson) => lesson.data.order < here.data.order)
    .sort((a, b) => b.data.order - a.data.order);
  const from = earlier.length ? earlier : [here];
  return [0, 1, 2].flatMap((turn) => {
    const lesson = from[turn % from.length]!;
    const distance = here.data.order - lesson.data.order;
    const question =
      lesson.data.recall[(distance + Math.floor(turn / from.length)) % lesson.data.recall.length];
    return question ? [question] : [];
  });
}

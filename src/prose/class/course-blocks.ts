/** Every block of the course with what it names, in order. */
import { getCollection } from 'astro:content';
import { exercises } from '../../exercises/index.ts';
import { lessonsInOrder } from '../course.ts';
import { named, questionsOfBlock, stepOfGuess } from './blocks.ts';

const found = (await getCollection('blocks')).sort((a, b) => a.data.order - b.data.order);
const [rules, glossary, troubles] = await Promise.all([
  getCollection('rules'),
  getCollection('glossary'),
  getCollection('troubles'),
]);
const lessonsOf = found.map(({ id, data }) => named(id, 'lessons', data.lessons, lessonsInOrder));

const guessOf = (block: string, { lesson, of }: { lesson: { id: string }; of: string }) => {
  const [from] = named(block, 'guess', [lesson], lessonsInOrder);
  const step = stepOfGuess(block, from!.body ?? '', of);
  return {
    ask: from!.data.steps?.find(({ id }) => id === step)?.ask ?? '',
    path: `lessons/${lesson.id}/#wall=${of}`,
  };
};

export const courseBlocks = found.map(({ id, data }, at) => {
  const ruleOf = (what: string, rule: { id: string }) => named(id, what, [rule], rules)[0]!;
  return {
    id,
    data,
    lessons: lessonsOf[at]!,
    rules: named(id, 'rules', data.rules, rules),
    words: named(id, 'words', data.words, glossary),
    troubles: named(id, 'troubles', data.troubles, troubles),
    guess: guessOf(id, data.guess),
    figure: ruleOf('figure', data.figure),
    worked: ruleOf('worked', data.worked),
    exercise: named(id, 'exercise', [data.exercise], lessonsInOrder)[0]!,
    /** With other numbers for every learner; each names its lesson. */
    exercises: exercises.filter((one) => data.lessons.some(({ id }) => id === one.lesson)),
    questions: questionsOfBlock(lessonsOf, at),
  };
});

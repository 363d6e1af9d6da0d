/**
 * What the reader's notebook is read with, as a file for its first use: every question that is asked again, in the order of
 * the course, and what each place of a note is called. Its name changes with its content.
 */
import { getCollection } from 'astro:content';
import { createHash } from 'node:crypto';
import { questionId } from '../notebook/recall/answers.ts';
import type { NotebookWords } from '../widgets/beside/words.ts';
import { lessonsInOrder } from './course.ts';

/** All questions in the order of the course. */
export const allQuestions: NotebookWords['questions'] = lessonsInOrder.flatMap(({ id, data }) =>
  data.recall.map((question, at) => ({
    id: questionId(id, at + 1),
    lesson: id,
    order: data.order,
    title: data.title,
    ...question,
  })),
);

export const notebookFile = getCollection('rules').then((rules) => {
  const words: NotebookWords = {
    questions: allQuestions,
    places: Object.fromEntries([
      ...lessonsInOrder.flatMap(({ id, data: { order, steps = [] } }) =>
        steps.map((step) => [`lessons/${id}#${step.id}`, `Lesson ${order}: ${step.ask}`]),
      ),
      ...rules.map(({ id, data }) => [`rules/${id}`, `Rule: ${data.title}`]),
    ]),
  };
  const json = JSON.stringify(words);
  return { name: `notebook-${createHash('sha256').update(json).digest('hex').slice(0, 8)}.json`, json };
});

/** Which exercises belong to a block of the course: those of a rule that the block names, or that one of its lessons teaches. */
import { getCollection } from 'astro:content';
import { exercises } from '../../exercises/index.ts';
import { courseBlocks } from './course-blocks.ts';

const lessonOf = new Map((await getCollection('rules')).map(({ id, data }) => [id, data.lesson?.id]));

/** Every block with exercises, and their ids in the order of the course. */
export const blockExercises = courseBlocks
  .map(({ id, data, rules, lessons }) => ({
    id,
    title: `${data.order} ${data.title}`,
    exercises: exercises
      .filter((one) =>
        one.rules.some(
          (rule) =>
            rules.some((named) => named.id === rule) ||
            lessons.some(({ id: lesson }) => lesson === lessonOf.get(rule)),
        ),
      )
      .map((one) => one.id),
  }))
  .filter((block) => block.exercises.length > 0);

/** What stands on the page of each lesson, by the lesson's slug: its labs and its model, for checking what an author wrote. */
import type { Lesson } from '../widgets/lesson/lesson.tsx';

const files = import.meta.glob<{ lesson?: Lesson }>('../widgets/subjects/*/*.tsx', { eager: true });

export const lessons: Readonly<Record<string, Lesson>> = Object.fromEntries(
  Object.entries(files).flatMap(([path, { lesson }]) =>
    lesson ? [[path.replace(/^.*\/|\.tsx$/g, ''), lesson]] : [],
  ),
);

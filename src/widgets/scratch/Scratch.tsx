/**
 * Scratch cells: a sheet of them on their own page, one at the end of each lesson. They are the same notebook, so what is
 * tried in a lesson is found again on the sheet. What works them out is fetched with the first use. One island for both,
 * so that their code stays in files of its own and no other page gets a part of it.
 */
import { type AtLesson, LessonCell } from './LessonCell.tsx';
import { Sheet } from './Sheet.tsx';

export default function Scratch({ at }: { at?: AtLesson }) {
  return at ? <LessonCell {...at} /> : <Sheet />;
}

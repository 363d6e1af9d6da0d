/** The parts of the notebook's page, from one file. */
export { AllNotes } from './AllNotes.tsx';
export { DueToday } from './DueToday.tsx';
export { KeepAll } from './KeepAll.tsx';
export { LessonsDone } from './LessonsDone.tsx';

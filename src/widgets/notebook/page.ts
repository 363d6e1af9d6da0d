/** The parts of the notebook's page, from one file. */
export { AllNotes } from './AllNotes.tsx';
export { DueToday } from './DueToday.tsx';
export { KeepAllHere } from './KeepAllHere.tsx';
export { LessonsDone } from './LessonsDone.tsx';

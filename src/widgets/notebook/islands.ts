/** What stands beside a lesson and a rule of the reader's notebook, from one file. */
export { default as NoteHere } from './NoteHere.tsx';
export { default as RecallHere } from './RecallHere.tsx';

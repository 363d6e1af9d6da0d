/** The islands of a lesson from one file, so that a lesson fetches one and not four. */
export { default as Exercise } from './Exercise.tsx';
export { default as GuessForm } from './GuessForm.tsx';
export { default as PutInMyBox } from './PutInMyBox.tsx';
export { default as RecallQuestion } from './RecallQuestion.tsx';

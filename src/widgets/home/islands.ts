/** The islands that tell a returning reader where they are, from one file. */
export { default as GoOn } from './GoOn.tsx';
export { default as OwnBox } from './OwnBox.tsx';
export { default as StepsDone } from './StepsDone.tsx';

/** The islands in the frame of every page, from one file. */
export { default as Ask } from '../ask/Ask.tsx';
export { default as Damaged } from './Damaged.tsx';
export { default as RulerChoice } from './RulerChoice.tsx';

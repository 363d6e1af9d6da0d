/** The islands in the frame of every page, from one file. */
export { default as Damaged } from './Damaged.tsx';
export { default as UnitSwitch } from './UnitSwitch.tsx';

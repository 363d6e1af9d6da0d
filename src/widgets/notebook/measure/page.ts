/** The parts of the page of measurements, from one file. */
export { BoxMeasurements } from './BoxMeasurements.tsx';
export { Weighings } from './Weighings.tsx';

/**
 * Every key of the device's store, in one list: what a reader keeps is taken along, brought in and erased by it, and
 * `tests/notebook/everything.test.ts` finds what it lacks. A new key is one line here: what readers call it, how many things
 * its text holds, and how two devices' come together.
 */
import { readAsides } from '../aside.ts';
import { readDesigns } from '../designs.ts';
import { decodeNotes } from '../learning/notes.ts';
import { readMeasurements } from '../measure/measurements.ts';
import { readAnswers } from '../recall/answers.ts';
import { decodeCells } from '../scratch/cells.ts';
import {
  type Merge,
  mergeAsides,
  mergeByName,
  mergeCells,
  mergeDesigns,
  mergeDone,
  mergeMeasurements,
  mergeOwnNotes,
  mergeProgress,
  mergeRecall,
  mergeTries,
  ownStays,
} from './merges.ts';

export interface Kept {
  /** What a reader calls it. */
  readonly name: string;
  /** How many things a text holds; without it there is one. */
  readonly count?: (text: string) => number;
  readonly merge: Merge;
}

/** How many entries a record in JSON has, or the one under this name in it. */
const entries = (within?: string) => (text: string) => {
  try {
    const all: unknown = JSON.parse(text);
    const found = within === undefined ? all : (all as Record<string, unknown> | null)?.[within];
    return typeof found === 'object' && found !== null ? Object.keys(found).length : 0;
  } catch {
    return 0;
  }
};
const cells = (text: string) => {
  const decoded = decodeCells(text, '');
  return decoded.ok ? decoded.cells.filter((cell) => cell.text.trim() !== '').length : 0;
};
const sizeOf = (record: object) => Object.keys(record).length;

const listed = {
  box: { name: 'the box you work on', merge: ownStays },
  designs: { name: 'kept designs', count: (text) => readDesigns(text).good.length, merge: mergeDesigns },
  'designs.damaged': { name: 'designs that could not be read', merge: ownStays },
  done: { name: 'boxes with ticked steps', count: entries(), merge: mergeDone },
  progress: { name: 'lessons begun', count: entries('lessons'), merge: mergeProgress },
  guesses: { name: 'guesses', count: entries(), merge: mergeByName },
  recall: { name: 'questions answered', count: (text) => sizeOf(readAnswers(text)), merge: mergeRecall },
  notes: { name: 'notes', count: (text) => sizeOf(decodeNotes(text)), merge: mergeOwnNotes },
  'exercise-member': { name: 'your class and number', merge: ownStays },
  'exercise-tries': { name: 'tries of exercises', count: entries(), merge: mergeTries },
  sheets: { name: 'what you chose for the sheets of a class', merge: ownStays },
  'set-aside': {
    name: 'texts that could not be read',
    count: (text) => readAsides(text).length,
    merge: mergeAsides,
  },
  scratch: { name: 'scratch cells', count: cells, merge: mergeCells },
  'scratch.before': { name: 'scratch cells from before', count: cells, merge: ownStays },
  'scratch.damaged': { name: 'scratch cells that could not be read', merge: ownStays },
  measurements: {
    name: 'measurements and weighings',
    count: (text) => {
      const { measurements, weighings } = readMeasurements(text);
      return measurements.length + weighings.length;
    },
    merge: mergeMeasurements,
  },
  year: { name: 'your year of air', merge: ownStays },
  units: { name: 'inches or millimeters', merge: ownStays },
  ruler: { name: 'your ruler', merge: ownStays },
  'both-units': { name: 'whether both units are shown', merge: ownStays },
  spacing: { name: 'whether text is set wide', merge: ownStays },
} as const satisfies Record<string, Kept>;

export const keys: Readonly<Record<string, Kept>> = listed;

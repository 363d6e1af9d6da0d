/**
 * The example of the site (invented): a sliding-lid box for a double-six set of 28 dominoes standing on edge, in three
 * rows of ten, two places empty. It exists twice, each on its reader's own rulers: a converted size helps nobody at a
 * bench. While it is untouched, choosing other units swaps it; a box of the reader's own is never converted.
 * Its values are those every input starts from.
 */
import type { UnitSystem } from '../../units/index.ts';
import type { Input } from '../core/field.ts';
import { type Box, fields } from './inputs.ts';

const startOf = (system: UnitSystem) =>
  Object.fromEntries(
    Object.entries(fields as Readonly<Record<string, Input>>).map(([name, { start, inchStart }]) => [
      name,
      system === 'inch' && inchStart !== undefined ? inchStart : start,
    ]),
  ) as unknown as Box;

export const exampleBox: Box = startOf('mm');
/** The same box as sold and cut in inches. */
export const inchExample: Box = startOf('inch');

/** The example for a reader of these units. */
export const exampleFor = (system: UnitSystem): Box => (system === 'inch' ? inchExample : exampleBox);

/** Whether a box is the example, in either units, as nobody has touched it. */
export const isExample = (box: Box): boolean =>
  [exampleBox, inchExample].some((one) =>
    Object.keys(fields).every(
      (name) => JSON.stringify(box[name as keyof Box]) === JSON.stringify(one[name as keyof Box]),
    ),
  );

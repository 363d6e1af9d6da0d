/** Something about the box that cannot be built, and the change that mends it. */
import { format } from '../../units/index.ts';
import type { Box } from '../box.ts';

export interface Refusal {
  /** Permanent name of the condition: "groove-through-wall". */
  readonly id: string;
  /** What is impossible, with its numbers. */
  readonly what: string;
  /** The change that mends it, with a number. */
  readonly mend: string;
  /** The input to change, and the value that mends it where it is a number, in the unit of the field. */
  readonly field?: keyof Box | undefined;
  readonly to?: number | undefined;
}

/** A length in both units, for sentences that hold numbers: "9.5 mm (3/8 in)". */
export const both = (value: number): string =>
  `${format(value, 'length', { system: 'mm' })} (${format(value, 'length', { system: 'inch' })})`;

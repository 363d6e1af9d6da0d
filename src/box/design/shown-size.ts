/**
 * A size as it is shown, on the reader's ruler and everywhere the same: cut list, build sheet, file and drawing read it
 * here.
 */
import type { FormatOptions, Rounding } from '../../units/index.ts';
import type { Part, Size } from './part.ts';

export const sides = ['length', 'width', 'thickness'] as const;

/** A length with the way it is printed. */
export interface ShownLength extends Omit<FormatOptions, 'system'> {
  readonly value: number;
  readonly kind: 'length';
}

/** A size to mark or cut that is no side of a part: a groove's depth, a fence, the line of a saw cut. */
export const shownLength = (value: number, round?: Rounding): ShownLength => ({
  value,
  kind: 'length',
  as: 'size',
  ...(round && { round }),
});

/** Finished sizes as the part asks for; rough ones never less than needed. */
export const shownSize = (part: Part, state: 'finished' | 'rough', side: keyof Size): ShownLength =>
  shownLength(part[state][side], state === 'rough' ? 'up' : part.round);

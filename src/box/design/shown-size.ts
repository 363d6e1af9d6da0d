/** A size of a part as it is shown, everywhere the same: cut list, build sheet, file and drawing read it here. */
import type { FormatOptions } from '../../units/index.ts';
import type { Part, Size } from './part.ts';

export const sides = ['length', 'width', 'thickness'] as const;

/** A length with the way it is printed. */
export interface ShownLength extends Omit<FormatOptions, 'system'> {
  readonly value: number;
  readonly kind: 'length';
}

/** Finished sizes as the part asks for; rough ones never less than needed. Panels are cut to 1/64 in, the rest as usual. */
export function shownSize(part: Part, state: 'finished' | 'rough', side: keyof Size): ShownLength {
  const round = state === 'rough' ? 'up' : part.round;
  return { value: part[state][side], kind: 'length', round, ...(round === 'down' && { denominator: 64 }) };
}

/** Text for the number field beside a slider, and its label. */
import { format } from './format.ts';
import { INCH, type Kind, kinds, type UnitSystem, unitName } from './kinds.ts';
import { NOISE } from './rounding.ts';

/**
 * A stored value as text to edit, without its unit: plain spaces and hyphen, lengths to 0.01 mm or 1/64 in
 * (thousandths below that). `parse` reads it back within half of its last step. Empty for what is no number.
 * @param fine in thousandths of an inch where it lies between two 64ths: gaps, play, one's own errors
 */
export function toField(value: number, kind: Kind, system: UnitSystem, fine = false): string {
  if (!(Math.abs(value) < 1e12)) return '';
  const digits = kind === 'length' ? 2 : undefined;
  const sixtyFourths = (value / INCH) * 64;
  const between = Math.abs(sixtyFourths - Math.round(sixtyFourths)) > NOISE;
  return format(value, kind, { system, digits, denominator: fine && between ? 1000 : 64, unit: false })
    .replaceAll('\u202f', '')
    .replace('\u00a0', ' ')
    .replace('\u2212', '-');
}

/** The unit a number in this field is meant in when none is written; empty for pure numbers. */
export const fieldUnit = (kind: Kind, system: UnitSystem): string => kinds[kind][system][0]!.label;

/** The same unit as it is said: `millimeters`, `inches`, `degrees Celsius`; empty for pure numbers. */
export const spokenUnit = (kind: Kind, system: UnitSystem): string =>
  unitName(kinds[kind][system][0]!, false);

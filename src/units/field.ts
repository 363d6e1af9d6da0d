/** Text for the number field beside a slider, and its label. */
import { format } from './format.ts';
import { type Kind, kinds, type UnitSystem, unitName } from './kinds.ts';

/**
 * A stored value as text to edit, without its unit: plain spaces and hyphen, lengths to 0.01 mm or 1/64 in
 * (thousandths below that). `parse` reads it back within half of its last step. Empty for what is no number.
 */
export function toField(value: number, kind: Kind, system: UnitSystem): string {
  if (!(Math.abs(value) < 1e12)) return '';
  const digits = kind === 'length' ? 2 : undefined;
  return format(value, kind, { system, digits, denominator: 64, unit: false })
    .replaceAll('\u202f', '')
    .replace('\u00a0', ' ')
    .replace('\u2212', '-');
}

/** The unit a number in this field is meant in when none is written; empty for pure numbers. */
export const fieldUnit = (kind: Kind, system: UnitSystem): string => kinds[kind][system][0]!.label;

/** The same unit as it is said: `millimeters`, `inches`, `degrees Celsius`; empty for pure numbers. */
export const spokenUnit = (kind: Kind, system: UnitSystem): string =>
  unitName(kinds[kind][system][0]!, false);

/** Something about the box that cannot be built, and the change that mends it. */
import { format } from '../../units/index.ts';
import type { Field } from '../core/field.ts';
import type { Box } from '../subjects/inputs.ts';
import { fields } from '../subjects/inputs.ts';
import type { Values } from '../whole/index.ts';

export interface Refusal {
  /** Permanent name of the condition: "groove-through-wall". */
  readonly id: string;
  /** What is impossible, with its numbers. */
  readonly what: string;
  /** The change that mends it, with a number. */
  readonly fix: string;
  /** The input to change and the value that mends it, in the stored unit of its field. */
  readonly field?: keyof Box | undefined;
  readonly to?: number | string | undefined;
}

/** One way in which a box cannot be built. */
export interface Condition {
  readonly id: string;
  /** Whether it stands in the way of this box. */
  readonly breaks: (v: Values) => boolean;
  readonly what: (v: Values) => string;
  /** The input to change, the least or most it may be; without a value there is none that would do alone. */
  readonly field: (v: Values) => keyof Box;
  readonly limit: 'least' | 'most' | 'choose';
  readonly to: (v: Values) => number | string | undefined;
}

const once = (mm: string, inch: string) => (mm === inch ? mm : `${mm} (${inch})`);

/** A length in both units, for sentences that hold numbers: "9.5 mm (3/8 in)". */
export const both = (value: number, round?: 'up' | 'down'): string =>
  once(
    format(value, 'length', { system: 'mm', ...(round && { round }) }),
    format(value, 'length', { system: 'inch', ...(round && { round }) }),
  );

/** To tenths on the safe side, so that the number printed mends it too; counts stay whole. */
function safe(value: number, limit: 'least' | 'most'): number {
  const tenths = value * 10;
  return (limit === 'least' ? Math.ceil(tenths - 1e-9) : Math.floor(tenths + 1e-9)) / 10;
}

/** The refusal of a condition that breaks. */
export function refuse(condition: Condition, v: Values): Refusal {
  const { id, limit } = condition;
  const field = condition.field(v);
  const found = condition.to(v);
  const wanted = typeof found === 'number' && limit === 'most' && found < 0.1 ? undefined : found;
  const row: Field = fields[field];
  const what = condition.what(v);
  if (typeof wanted === 'string' && row.type === 'choice')
    return { id, what, fix: `Choose “${row.options[wanted]}” under “${row.label}”.`, field, to: wanted };
  if (typeof wanted !== 'number' || !Number.isFinite(wanted) || row.type !== 'number' || limit === 'choose')
    return { id, what, fix: `No ${row.label} mends this alone: change the other sizes first.`, field };
  const to = safe(wanted, limit);
  const round = limit === 'least' ? 'up' : 'down';
  const fix = once(
    format(to, row.kind, { system: 'mm', round, digits: row.digits }),
    format(to, row.kind, { system: 'inch', round }),
  );
  return { id, what, fix: `Make the ${row.label} at ${limit} ${fix}.`, field, to };
}

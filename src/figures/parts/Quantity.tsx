/**
 * A number with its unit, written both ways at once; the style sheet shows the reader's units.
 * So a page built once fits both readers from its first paint, and switching units moves nothing.
 */
import { type FormatOptions, format, type Kind, type UnitSystem } from '../../units/index.ts';
import { seenBy } from './my-ruler.ts';

export interface QuantityProps extends Omit<FormatOptions, 'system'> {
  value: number;
  kind: Kind;
}

/** Whether a kind of number is written differently in inches. */
const differs = (kind: Kind) =>
  !['percent', 'points', 'angle', 'ratio', 'count', 'days', 'number'].includes(kind);

/** In running text. */
export function Quantity({ value, kind, ...options }: QuantityProps) {
  if (!differs(kind)) return <span class="number">{format(value, kind, seenBy('mm', options))}</span>;
  return (
    <>
      <span class="number mm">{format(value, kind, seenBy('mm', options))}</span>
      <span class="number inch">{format(value, kind, seenBy('inch', options))}</span>
    </>
  );
}

/** The two texts of a number, for places that cannot hold elements. */
export const bothUnits = (value: number, kind: Kind, options: Omit<FormatOptions, 'system'> = {}) => ({
  mm: format(value, kind, seenBy('mm', options)),
  inch: differs(kind) ? format(value, kind, seenBy('inch', options)) : undefined,
});

/**
 * A number inside the description of a drawing: both texts in one, which `Drawing` takes apart again, so that each
 * reader hears their own.
 */
export function said(value: number, kind: Kind, options: Omit<FormatOptions, 'system'> = {}): string {
  const { mm, inch } = bothUnits(value, kind, options);
  return inch === undefined || inch === mm ? mm : `{${mm}|${inch}}`;
}

/** A description as one reader hears it. */
export const hearing = (description: string, system: UnitSystem): string =>
  description.replace(/\{([^|{}]*)\|([^|{}]*)\}/g, system === 'mm' ? '$1' : '$2');

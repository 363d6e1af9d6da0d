/** How a subject declares its inputs: `length('wall thickness', { low: 3, high: 25, start: { mm: 8, inch: 5 / 16 } })`. */
import { INCH, type Kind } from '../../units/index.ts';
import { clean } from '../../units/rounding.ts';
import type { ChoiceField, Input, NumberField } from './field.ts';

type NumberSays = Pick<NumberField, 'low' | 'high'> &
  Partial<NumberField> & {
    /** Stored unit; or mm for one reader and inches for the other, neither converted. */
    readonly start: number | { readonly mm: number; readonly inch: number };
  };

/** An input that is a number of this kind, in whole steps. */
export const number = (
  label: string,
  kind: Kind,
  { start, ...says }: NumberSays & { readonly step: number },
): Input<NumberField> => ({
  digits: 0,
  ...says,
  type: 'number',
  label,
  kind,
  ...(typeof start === 'number'
    ? { start }
    : {
        start: start.mm, // Without arithmetic noise, so that a number that goes away and comes back is the same.
        inchStart: clean(start.inch * INCH),
      }),
});

/** A length in whole millimeters or eighths of an inch. */
export const length = (label: string, says: NumberSays): Input<NumberField> =>
  number(label, 'length', { step: 1, inchStep: INCH / 8, digits: 1, denominator: 16, ...says });

/** A size that is marked or cut, on the reader's ruler; half millimeters or 32nds of an inch where there is none. */
export const size = (label: string, says: NumberSays): Input<NumberField> =>
  length(label, { step: 0.5, inchStep: INCH / 32, denominator: 32, as: 'size', ...says });

/** A length in hundredths of a millimeter or thousandths of an inch. */
export const fine = (label: string, says: NumberSays): Input<NumberField> =>
  number(label, 'length', { step: 0.01, inchStep: INCH / 1000, digits: 2, as: 'fine', ...says });

/** A gap as a maker leaves it. */
export const gap = (label: string, says: NumberSays): Input<NumberField> =>
  fine(label, {
    step: 0.05,
    inchStep: INCH / 128,
    denominator: 64,
    help: 'As you leave it today.',
    ...says,
  });

/** A whole number of things. */
export const count = (label: string, says: NumberSays): Input<NumberField> =>
  number(label, 'count', { step: 1, ...says });

/** One of a few words. */
export const choice = <Option extends string>(
  label: string,
  options: Readonly<Record<Option, string>>,
  start: NoInfer<Option>,
  more: Pick<ChoiceField, 'help' | 'note' | 'when' | 'leads'> = {},
): Input<ChoiceField<Option>> =>
  ({ ...more, type: 'choice', label, options, start }) as Input<ChoiceField<Option>>;

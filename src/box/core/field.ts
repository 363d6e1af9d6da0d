/**
 * What an input of the box is: label, kind, limits, steps, and the value it starts from. Sliders, number fields, links
 * and storage are all built from the tables of inputs (`box/subjects/S/inputs.ts`), so a limit stands in one place.
 * Steps are shop sizes: one for readers in millimeters, one for readers in inches (a fraction, kept in mm).
 */
import type { Kind, Ruler } from '../../units/index.ts';

/** What other inputs must be for something to hold: all of one set, any of several sets. `some` is a number above zero. */
export type When = Readonly<Record<string, readonly string[] | 'some'>>;

interface Common {
  /** As a reader meets it, lower case. */
  readonly label: string;
  readonly help?: string | undefined;
  /** Boxes that have this input at all; without it all have. */
  readonly when?: readonly When[];
  /** Boxes whose size it gives; without it it is not about size, or always is. */
  readonly leads?: readonly When[];
}

export interface NumberField extends Common {
  readonly type: 'number';
  readonly kind: Kind;
  readonly low: number;
  readonly high: number;
  /** Step in the field's own unit for readers in millimeters. */
  readonly step: number;
  /** Step for readers in inches, in mm. Kinds other than length use `step`. */
  readonly inchStep?: number;
  /** Decimals shown in mm, and the finest inch fraction. */
  readonly digits?: 0 | 1 | 2;
  readonly denominator?: 8 | 16 | 32 | 64;
  /** A size to mark or cut, which follows the reader's ruler, or a gap or an error, where small differences count: see `format`. */
  readonly as?: 'size' | 'fine';
  /** Another input that it should not lie above, or below, and what is said if it does. */
  readonly notAbove?: readonly [other: string, says: string];
  readonly notBelow?: readonly [other: string, says: string];
}

export interface ChoiceField<Option extends string = string> extends Common {
  readonly type: 'choice';
  readonly options: Readonly<Record<Option, string>>;
  /** What is to be said about the option chosen. */
  readonly note?: (value: string) => string;
}

export interface TextField extends Common {
  readonly type: 'text';
  readonly longest: number;
}

/** One thing that goes in the box, lying as it is named: mm. */
export interface Item {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly count: number;
}

/** A list of things that go in the box. */
export interface ItemsField extends Common {
  readonly type: 'items';
  readonly most: number;
}

/** Reasons by the check they answer. */
export interface ReasonsField extends Common {
  readonly type: 'reasons';
  readonly longest: number;
}

export type Field = NumberField | ChoiceField | TextField | ItemsField | ReasonsField;

/** What a field holds. */
type ValueOf<F> = F extends NumberField
  ? number
  : F extends ChoiceField<infer Option>
    ? Option
    : F extends TextField
      ? string
      : F extends ItemsField
        ? readonly Item[]
        : Readonly<Record<string, string>>;

/** An input as it is declared: its field, and the value it has in the example, where a box begins. */
export type Input<F extends Field = Field> = F & {
  readonly start: ValueOf<F>;
  /** The same for a reader in inches, in the stored unit; else the example is alike in both. */
  readonly inchStart?: ValueOf<F>;
};

/** The values of a table of inputs, by name. */
export type InputsOf<Table> = { readonly [Name in keyof Table]: ValueOf<Table[Name]> };

/** The step of a number for a reader with this ruler, in the stored unit: a size goes by its marks. */
export const stepOf = ({ as, step, inchStep }: NumberField, { mark, system }: Ruler): number =>
  as === 'size' ? mark : system === 'inch' && inchStep ? inchStep : step;

/** A number that lies on a step, give or take arithmetic noise, is not stepped to again. */
const noise = 1e-6;

/** The next whole step above or below a place between steps, in steps. */
export const nextStep = (at: number, by: 1 | -1): number =>
  by > 0 ? Math.floor(at + noise) + 1 : Math.ceil(at - noise) - 1;

/** How a number of this field is printed, everywhere. */
export const printOf = ({ digits, denominator, as }: Pick<NumberField, 'digits' | 'denominator' | 'as'>) => ({
  digits,
  denominator,
  as,
});

/**
 * A relation is one formula of the trade or of physics, declared once.
 *
 * What the reader sees (`expression`) and what the program runs (`compute`) stand side by side.
 * `tests/calc/core/relations.test.ts` lets mathjs evaluate the expression with units attached, over random
 * inputs, and fails where the two differ. So a relation can be shown as an equation, filled with the
 * reader's numbers and trusted at the same time.
 *
 * Units are one coherent set everywhere in `calc`: mm, N, MPa (= N/mm²), g, degrees for angles on the
 * screen, °C, and moisture content in percent points. Conversions live in `src/units` only.
 */

/** Units a relation may use, in mathjs spelling. `'1'` is a pure number, `'%'` percent points (also of moisture), `'degC'` a temperature. */
export type Unit =
  | '1'
  | '%'
  | 'degC'
  | 'K'
  | 'mm'
  | 'mm^2'
  | 'mm^3'
  | 'N'
  | 'N/mm'
  | 'MPa'
  | 'g'
  | 'kg/m^3'
  | 'g/m^2'
  | 'deg'
  | 'Pa'
  | 'day'
  | 'mm^2/day'
  | 'mm/day'
  | 'day/mm'
  | 'Hz'
  | 's'
  | 'ms';

/** One symbol of a relation: what it stands for and where the relation may be used. */
export interface SymbolSpec {
  /** Name in the field's words, lower case: "wall thickness". */
  readonly name: string;
  readonly unit: Unit;
  /** Range of validity, ends included. Outside it `outsideRange` says so. The property test draws from it. */
  readonly range: readonly [low: number, high: number];
  /** Whole numbers only (counts). */
  readonly whole?: true;
  /** A difference of two percentages, said as percentage points: "3 points". */
  readonly points?: true;
  /** LaTeX, where the mathjs name alone would look wrong: `\\Delta M`. */
  readonly tex?: string;
}

/** How well a statement is known. The words are the ones printed on the page. */
export type Evidence = 'published' | 'geometry' | 'derived' | 'common practice' | 'from memory';

export interface Relation<Name extends string = string> {
  /** Permanent name in kebab-case; links and rule files use it. */
  readonly id: string;
  /** What it gives, as a heading: "Load that breaks the lip". */
  readonly title: string;
  /** The symbol, unit and name of what comes out. */
  readonly result: {
    readonly symbol: string;
    readonly tex?: string;
    readonly name: string;
    readonly unit: Unit;
    /** See `SymbolSpec`. */
    readonly points?: true;
  };
  /** Inputs by symbol; the keys are the names used in `expression` and taken by `compute`. */
  readonly inputs: Readonly<Record<Name, SymbolSpec>>;
  /** Narrower ranges that the inputs set each other: two walls must leave an inside. The input's own range holds too. */
  readonly rangesGiven?: (inputs: Readonly<Record<Name, number>>) => {
    readonly [K in Name]?: readonly [low: number, high: number];
  };
  /** The formula in mathjs syntax, as the reader will see it typeset. */
  readonly expression: string;
  /** The same formula in plain TypeScript. Units as declared; never throws. */
  readonly compute: (inputs: Readonly<Record<Name, number>>) => number;
  readonly evidence: Evidence;
  /** A fit to measurements: its constants hide units, so mathjs checks the numbers alone. */
  readonly fit?: true;
  /** Where it comes from: a key in `content/sources`, or a sentence for geometry and derivations. */
  readonly source: string;
  /** What the formula leaves out, in a sentence or two. */
  readonly limits?: string;
}

/**
 * Declares a relation; only there to infer the input names. The mark below lets a bundle drop relations it does not use.
 */
/* @__NO_SIDE_EFFECTS__ */
export function relation<Name extends string>(spec: Relation<Name>): Relation<Name> {
  return spec;
}

/** What is said about a relation, whatever its inputs: all but the function that computes it. */
export type Card = Omit<Relation<string>, 'compute' | 'rangesGiven'>;

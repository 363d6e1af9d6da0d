/**
 * A result is a number that follows from the box: which relation gives it and what is put into it.
 * The same row computes the number, prints its equation with the reader's numbers, and says what moves it most.
 */
import type { Card, Relation } from '../../calc/core/relation.ts';
import { type Working, work } from '../../calc/core/working.ts';
import type { Denominator, Kind } from '../../units/index.ts';

/** What is said of a number beside the number. */
export interface Say<Values> {
  /** As a reader meets it: "inside length to width". Lower case. */
  readonly label: string;
  readonly kind: Kind;
  readonly digits?: 0 | 1 | 2 | 3;
  readonly denominator?: Denominator;
  /** A gap, play, growth or other small difference, or a size to mark or cut: see `format`. */
  readonly as?: 'fine' | 'size';
  /** Gaps round up, panels and tongues round down. */
  readonly round?: 'up' | 'down' | 'nearest';
  /** Rule file that teaches it. */
  readonly rule?: string;
  /** Whether this box has such a number at all: a sawn lid has no play in side grooves. */
  readonly when?: (values: Values) => boolean;
  /** The box is built from it, so it stays a number outside the range of its relation; it is not printed there. */
  readonly builds?: true;
}

export interface Result<Values> extends Say<Values> {
  /** Every relation that can stand behind it. */
  readonly relations: readonly Card[];
  readonly work: (values: Values) => Working;
}

/** A table of results, computed in order: a later row may use an earlier one. */
export type ResultTable<Names extends string, Values> = Readonly<Record<Names, Result<Values>>>;

/** A maker of rows for one kind of values: `given` must name the inputs of its relation, no more and no less. */
export const rowsOf =
  <Values>() =>
  <Name extends string>(
    of: Relation<Name>,
    given: (values: Values) => Readonly<Record<NoInfer<Name>, number>>,
    say: Say<Values>,
  ): Result<Values> => ({ ...say, relations: [of], work: (values) => work(of, given(values)) });

/** A row behind which one of several relations stands: the size given decides, or a method's range of validity. */
export const choiceOf =
  <Values>() =>
  (relations: readonly Card[], choose: (values: Values) => Working, say: Say<Values>): Result<Values> => ({
    ...say,
    relations,
    work: choose,
  });

/** The number of a row: NaN where its relation does not hold, unless the box is built from it. */
export function numberOf<Values>(row: Result<Values>, values: Values): number {
  const { value, outside } = row.work(values);
  return outside && !row.builds ? Number.NaN : value;
}

/** What is said of a row's number, to whoever prints it. */
export const sayOf = <Values>({ label, kind, digits, denominator, as, round, rule }: Say<Values>) => ({
  label,
  kind,
  digits,
  denominator,
  as,
  round,
  rule,
});

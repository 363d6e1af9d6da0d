/**
 * A result is a number that follows from the box: which relation gives it and what is put into it.
 * The same row computes the number, prints its equation with the reader's numbers, and says what moves it most.
 */
import type { Relation } from '../calc/relation.ts';
import type { Kind } from '../units/index.ts';

// biome-ignore lint/suspicious/noExplicitAny: a table holds relations of many inputs; a test runs every row.
export type AnyRelation = Relation<any>;

/** A choice between relations: the size given decides, or a method's range of validity. */
export interface Choice<Values> {
  readonly among: readonly AnyRelation[];
  readonly choose: (values: Values) => AnyRelation;
}

export interface Result<Values> {
  /** As a reader meets it: "inside length to width". Lower case. */
  readonly label: string;
  readonly kind: Kind;
  readonly digits?: 0 | 1 | 2;
  readonly denominator?: 8 | 16 | 32 | 64 | 1000;
  /** Gaps round up, panels and tongues round down. */
  readonly round?: 'up' | 'down' | 'nearest';
  readonly relation: AnyRelation | Choice<Values>;
  /** The relation's inputs, by symbol. */
  readonly given: (values: Values) => Readonly<Record<string, number>>;
  /** Rule file that teaches it. */
  readonly rule?: string;
}

/** A table of results, computed in order: a later row may use an earlier one. */
export type ResultTable<Names extends string, Values> = Readonly<Record<Names, Result<Values>>>;

/** The relation behind a result, for these values. */
export function relationOf<Values>({ relation }: Result<Values>, values: Values): AnyRelation {
  return 'choose' in relation ? relation.choose(values) : relation;
}

/** Every relation that can stand behind a result. */
export function relationsOf<Values>({ relation }: Result<Values>): readonly AnyRelation[] {
  return 'among' in relation ? relation.among : [relation];
}

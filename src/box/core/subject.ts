/**
 * A subject of the notebook, as far as the box goes: the numbers that follow from the box, the rules that judge them, and
 * the subjects whose numbers it takes up. A lesson loads its subject with what that needs, and nothing else.
 */
import type { ResultTable } from './result.ts';
import type { Check } from './verdict.ts';

export interface Subject<Names extends string, V> {
  readonly name: string;
  /** Subjects whose results its own rows and checks use. */
  readonly needs: readonly Subject<string, V>[];
  /** In the order of computation: a row uses only rows above it, and those of `needs`. */
  readonly results: ResultTable<Names, V>;
  readonly checks: readonly Check<V>[];
}

/** What a lab is: data, read by `Lab`. */
import type { ComponentChildren, FunctionComponent } from 'preact';
import type { ChoiceField, Input, InputsOf, NumberField } from '../../box/core/field.ts';
import type { Result } from '../../box/core/result.ts';
import type { ChoiceName, NumberName } from '../../box/subjects/inputs.ts';
import type { ResultName, Values } from '../../box/whole/index.ts';
import type { Refused } from '../../calc/core/refusal.ts';
import type { Card } from '../../calc/core/relation.ts';

/** Controls that belong to one figure and not to the box. */
export type OwnTable = Readonly<Record<string, Input<NumberField> | Input<ChoiceField>>>;

/**
 * `All` is what figure, sentence and rows see: the values of the box, those of the lab's own controls, and what it
 * solved.
 */
export interface LabSpec<Own extends string = string, All extends Values = Values> {
  /** Heading above the figure. */
  readonly title: string;
  /** The figure: numbers in, SVG out. */
  readonly figure: FunctionComponent<{ values: All }>;
  readonly own?: OwnTable;
  /** What costs more than a row, or may have no answer: then its words stand in place of the figure. */
  readonly solve?: (values: All) => object | Refused;
  /** At most three controls; of inputs that give the size, only the ones in force are shown. */
  readonly controls: readonly (NumberName | ChoiceName | Own)[];
  /** Further ones, behind "more". */
  readonly more?: readonly (NumberName | ChoiceName | Own)[];
  /** Results of the box by name, and rows of the lab's own. */
  readonly results: readonly (ResultName | Result<All>)[];
  /** What the figure shows now, in a sentence. */
  readonly says: (values: All) => ComponentChildren;
}

/** A lab that shares what it moves with the others on its page, and so draws itself in a `LabFrame`. */
export interface SharingLabSpec {
  /** Relations behind its numbers: their equations come with the page. */
  readonly relations: readonly Card[];
  readonly component: FunctionComponent;
}

/**
 * A lab with controls of its own; their names and values, and what it solves, are inferred from its tables. The result
 * is a plain `LabSpec`: `Lab` gives each function exactly what the tables say.
 */
export const lab = <Own extends OwnTable, Found extends object = object>(
  spec: Omit<LabSpec<keyof Own & string, Values & InputsOf<Own> & Found>, 'own' | 'solve'> & {
    readonly own: Own;
    readonly solve?: (values: Values & InputsOf<Own>) => Found | Refused;
  },
): LabSpec => spec as unknown as LabSpec;

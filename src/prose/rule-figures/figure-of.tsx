/** What the figure of a rule is: one or two states, drawn from the rule's own worked examples, each with its words. */
import type { ComponentChildren, VNode } from 'preact';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import type { Kind } from '../../units/index.ts';

/** A worked example: what is put into its relation, and what that gives. */
export type Worked = Readonly<Record<string, number>> & { readonly value: number };

export interface State {
  readonly drawn: VNode;
  readonly says: ComponentChildren;
}

/** Figures by rule. What an example calls `W` is its `W` in the drawing. */
export type FigureTable = Readonly<Record<string, (worked: readonly Worked[]) => readonly State[]>>;

/** A number in a caption. */
export const N = ({
  of,
  as,
  kind = 'length',
  digits,
}: {
  of: number;
  as?: 'exact';
  kind?: Kind;
  digits?: 0 | 1 | 2;
}) => <Quantity value={of} kind={kind} {...(as && { as })} {...(digits !== undefined && { digits })} />;

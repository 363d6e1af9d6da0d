/** Sentences whose numbers are worked out while the site is built, and rules by how far physics bears them out. */
import type { Relation, SymbolSpec } from '../calc/core/relation.ts';
import { relations } from '../calc/index.ts';
import type { Kind } from '../units/index.ts';
import { kindOfUnit } from '../widgets/kit/kind-of-unit.ts';
import { oneOf } from './author-error.ts';
import type { evidences } from './rule-terms.ts';

/** Whether what is heard stands. */
export const answers = ['yes', 'half', 'no'] as const;

export interface Sum {
  readonly relation: string;
  readonly given: Readonly<Record<string, number>>;
}

/** A number of a sentence, and how it is written. */
export interface Worked {
  readonly value: number;
  readonly kind: Kind;
  readonly after?: string;
}

const known: Readonly<Record<string, Relation>> = Object.fromEntries(relations);

/** Moisture in percent is written as such; Hz has no kind of its own. */
const worked = (value: number, spec: SymbolSpec): Worked => ({
  value,
  kind: kindOfUnit(spec),
  ...(spec.unit === 'Hz' && { after: 'Hz' }),
});

/** What a relation gives for these inputs. */
export function workedOut({ relation, given }: Sum): Worked {
  const found = oneOf(known, relation, 'numbers', relation);
  return worked(found.compute(given), found.result);
}

/** The sentence in pieces: text, and numbers in the place of `{name}` and `{name.t}`. */
export function pieces(text: string, numbers: Readonly<Record<string, Sum>>): readonly (string | Worked)[] {
  return text.split(/(\{[\w.]+\})/).map((piece, at) => {
    if (at % 2 === 0) return piece;
    const [name, input] = piece.slice(1, -1).split('.') as [string, string | undefined];
    const sum = oneOf(numbers, name, 'because', piece);
    if (input === undefined) return workedOut(sum);
    const { inputs } = oneOf(known, sum.relation, 'numbers', sum.relation);
    return worked(oneOf(sum.given, input, 'because', piece), oneOf(inputs, input, 'because', piece));
  });
}

type Evidence = (typeof evidences)[number];

/** How far physics bears a rule out, from its evidence alone. */
export const borneOut = (evidence: readonly Evidence[]): 'physics' | 'practice' =>
  evidence.some((kind) => kind === 'published' || kind === 'geometry' || kind === 'derived')
    ? 'physics'
    : 'practice';

/** Whether part of it is only remembered. */
export const remembered = (evidence: readonly Evidence[], body = ''): boolean =>
  evidence.includes('from memory') || body.includes('§');

/** Sentences whose numbers are worked out while the site is built, and rules by how far physics bears them out. */
import type { Relation, SymbolSpec } from '../calc/core/relation.ts';
import { relations } from '../calc/index.ts';
import { bothUnits } from '../figures/parts/Quantity.tsx';
import { kindOfUnit } from '../widgets/kit/late/kind-of-unit.ts';
import { oneOf } from './author-error.ts';
import type { evidences } from './rule-terms.ts';

/** Whether what is heard stands. */
export const answers = ['yes', 'half', 'no'] as const;

export interface Sum {
  readonly relation: string;
  readonly given: Readonly<Record<string, number>>;
  /** What is put in instead for a reader in inches. */
  readonly inch?: Readonly<Record<string, number>> | undefined;
}

/** A number as it is written for a reader in millimeters and for one in inches. */
export interface Worked {
  readonly mm: string;
  readonly inch: string;
}

const known: Readonly<Record<string, Relation>> = Object.fromEntries(relations);
/** Below this a length is a difference, which is not rounded to a mark of a ruler; mm. */
const fine = 3;

type Spec = Pick<SymbolSpec, 'unit' | 'points'>;
/** Units that readers of either ruler share have no kind of their own: Hz, Pa, mm²/day. */
const shared = ({ unit }: Spec) =>
  unit === '1' ? '' : `\u00a0${unit.replace('^2', '²').replace('^3', '³')}`;

/** Both texts of a number. */
function written(value: number, inInches: number, spec: Spec): Worked {
  const text = (number: number) => {
    const kind = kindOfUnit(spec);
    const { mm, inch } = bothUnits(number, kind, {
      ...(kind === 'length' && Math.abs(number) < fine && { as: 'exact' as const }),
      ...(kind === 'angle' && { digits: 2 as const }),
    });
    const after = kind === 'number' ? shared(spec) : '';
    return { mm: mm + after, inch: (inch ?? mm) + after };
  };
  return { mm: text(value).mm, inch: text(inInches).inch };
}

/** What a relation gives for these inputs. */
export function workedOut({ relation, given, inch }: Sum): Worked {
  const { compute, result } = oneOf(known, relation, 'numbers', relation);
  return written(compute(given), compute(inch ? { ...given, ...inch } : given), result);
}

/** What is put into it, by name: “wall thickness 10 mm”. */
export function putIn({ relation, given }: Sum): readonly (Worked & { readonly name: string })[] {
  const { inputs } = oneOf(known, relation, 'numbers', relation);
  return Object.entries(inputs).map(([symbol, spec]) => ({
    name: spec.name,
    ...written(given[symbol]!, given[symbol]!, spec),
  }));
}

/** The sentence in pieces: text, and numbers in the place of `{name}` and `{name.t}`. */
export function pieces(text: string, numbers: Readonly<Record<string, Sum>>): readonly (string | Worked)[] {
  return text.split(/(\{[\w.]+\})/).map((piece, at) => {
    if (at % 2 === 0) return piece;
    const [name, input] = piece.slice(1, -1).split('.') as [string, string | undefined];
    const sum = oneOf(numbers, name, 'because', piece);
    if (input === undefined) return workedOut(sum);
    const { inputs } = oneOf(known, sum.relation, 'numbers', sum.relation);
    const value = oneOf(sum.given, input, 'because', piece);
    return written(value, sum.inch?.[input] ?? value, oneOf(inputs, input, 'because', piece));
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

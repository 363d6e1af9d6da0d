/** What a cell says: a result in both units, the reader's first, or why there is none. */
import type { Unit } from '../../calc/core/relation.ts';
import { figuresOf } from '../../figures/scratch/OwnPlot.tsx';
import type { Shown } from '../../notebook/scratch/amounts.ts';
import type { Listed } from '../../notebook/scratch/listed.ts';
import type { CellResult } from '../../notebook/scratch/sheet.ts';
import { INCH, type UnitSystem } from '../../units/index.ts';
import { reasons } from '../kit/reasons.ts';

/** The texts of a result, the one that leads first. */
export function inOrder({ asked, mm, inch }: Shown, system: UnitSystem): readonly string[] {
  const both = system === 'mm' ? [mm, inch] : [inch, mm];
  return [...new Set([...(asked === undefined ? [] : [asked]), ...both])];
}

export function Result({ result, system }: { result: CellResult | undefined; system: UnitSystem }) {
  if (!result || result.type === 'empty' || result.type === 'plot') return null;
  if (result.type === 'asks') return <span class="other-units">{result.message}</span>;
  if (result.type === 'trouble') return <span class="message">{result.message}</span>;
  const [first, ...others] = inOrder(result.shown, system);
  return (
    <>
      <span class="result-equals">= </span>
      <b>{first}</b>
      {others.map((text) => (
        <span key={text} class="other-units">
          {text}
        </span>
      ))}
    </>
  );
}

const unitSaid = (unit: Unit): string =>
  unit === '1'
    ? 'plain number'
    : unit === '%'
      ? 'percent, plain'
      : unit === 'degC'
        ? '°C, plain'
        : unit === 'mm'
          ? 'length'
          : unit.replace('^2', '²').replace('^3', '³');

/** How a relation or a function is called: "wallShare(t, L): t wall thickness, length; …". */
export function signatureOf(listed: Listed | undefined): string | undefined {
  if (!listed || listed.type === 'number') return undefined;
  if (listed.type === 'function') return `${listed.name}(${listed.takes}): ${listed.meaning}`;
  return `${callOf(listed)}: ${listed.inputs.map((input) => `${called(listed, input)}, ${unitSaid(input.unit)}`).join('; ')}`;
}

type ListedRelation = Listed & { readonly type: 'relation' };
type ListedInput = ListedRelation['inputs'][number];
const called = ({ id }: ListedRelation, { symbol }: ListedInput) =>
  `${symbol} ${reasons.value[id]?.names[symbol] ?? ''}`.trim();
export const callOf = ({ name, inputs }: ListedRelation) =>
  `${name}(${inputs.map(({ symbol }) => symbol).join(', ')})`;

/** What the inputs of a relation are, from where to where each holds, and what it gives. */
export const inputsOf = (listed: ListedRelation, system: UnitSystem): string =>
  `${listed.inputs.map((input) => `${called(listed, input)}, ${rangeOf(input, system)}`).join('; ')}. Gives ${
    { '1': 'a plain number', '%': 'percent, a plain number', degC: '°C, a plain number', mm: 'a length' }[
      listed.gives as string
    ] ?? unitSaid(listed.gives)
  }.`;

function rangeOf({ unit, range: [low, high] }: ListedInput, system: UnitSystem): string {
  if (unit === 'mm' && system === 'inch')
    return `${figuresOf(low / INCH)} to ${figuresOf(high / INCH)}\u00a0in`;
  const end =
    { '1': '', '%': '\u00a0%', degC: '\u00a0°C', mm: '\u00a0mm' }[unit as string] ??
    `\u00a0${unitSaid(unit)}`;
  return `${figuresOf(low)} to ${figuresOf(high)}${end}`;
}

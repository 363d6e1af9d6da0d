/** A relation of the site, called in a cell: units of what is put in, its range, and the unit of what comes out. */
import type { Relation, SymbolSpec, Unit } from '../../calc/core/relation.ts';
import { outsideRange } from '../../calc/core/working.ts';
import { amountOf, calledAs, hasOwnZero, inFigures, kindOf } from './amounts.ts';
import { type Amount, isAmount, math, type Value } from './math.ts';
import { Trouble } from './trouble.ts';

/** Names of inputs by relation and symbol, where the code does not carry them: `widgets/kit/reasons.ts`. */
export type InputWords = Readonly<Record<string, { readonly names: Readonly<Record<string, string>> }>>;

/** Plain numbers in a cell, with what they count. */
const plain: Partial<Record<Unit, string>> = {
  '1': '',
  '%': ' %',
  degC: ' °C',
};

/** A number as stored, with its unit, for a sentence; a length in inches beside. */
const written = (value: number, { unit }: SymbolSpec): string => {
  if (unit in plain) return `${inFigures(value)}${plain[unit]}`;
  const text = `${inFigures(value)} ${unit.replace('^2', '²').replace('^3', '³')}`;
  return unit === 'mm' ? `${text} (${inFigures(value / 25.4)} in)` : text;
};

export function callRelation(
  name: string,
  of: Relation,
  given: readonly Value[] | Readonly<Record<string, Value>>,
  words: InputWords,
): Value {
  const entries = Object.entries(of.inputs);
  const called = (symbol: string) => {
    const says = of.inputs[symbol]?.name || words[of.id]?.names[symbol];
    return says ? `${symbol} (${says})` : symbol;
  };
  const signature = `${name}(${entries.map(([symbol]) => symbol).join(', ')})`;
  const has = new Map(
    Array.isArray(given)
      ? entries.map(([symbol], at) => [symbol, given[at] as Value | undefined])
      : Object.entries(given),
  );
  const stray = Array.isArray(given)
    ? given.length > entries.length && `${given.length} values`
    : [...has.keys()].find((symbol) => !Object.hasOwn(of.inputs, symbol));
  if (stray)
    throw new Trouble(`${signature} has no place for ${Array.isArray(given) ? stray : `“${stray}”`}.`);
  const numbers = entries.map(([symbol, spec]) => {
    const value = has.get(symbol);
    if (value === undefined)
      throw new Trouble(`${signature} wants ${called(symbol)} as well, ${wanted(spec)}.`);
    return [symbol, numberFor(spec, value, `${name}: ${called(symbol)}`)] as const;
  });
  const inputs = Object.fromEntries(numbers);
  const outside = outsideRange(of, inputs);
  if (outside) {
    const { symbol, spec, value } = outside;
    throw new Trouble(
      `${name} holds for ${called(symbol)} from ${written(spec.range[0], spec)} to ${written(spec.range[1], spec)}, and it is ${written(value, spec)}.`,
    );
  }
  const result = of.compute(inputs);
  if (!Number.isFinite(result)) throw new Trouble(`${name} gives no number for this.`);
  return of.result.unit in plain ? result : amountOf(result, of.result.unit);
}

const wanted = ({ unit }: SymbolSpec): string => {
  if (unit === '%') return 'in percent: a plain number such as 8';
  if (unit === 'degC') return 'in °C, a plain number, or such as 70 degF';
  if (unit === '1') return 'a plain number';
  const kind = kindOf(math.unit(unit));
  return kind ? `${kind.called}: write ${kind.example}` : `in ${unit}`;
};

function numberFor(spec: SymbolSpec, value: Value, who: string): number {
  const isPlain = spec.unit in plain;
  const unit = isPlain ? 'degC' : spec.unit;
  const fits = isAmount(value)
    ? (!isPlain || (spec.unit === 'degC' && hasOwnZero(value))) && value.equalBase(math.unit(unit))
    : typeof value === 'number' && isPlain;
  if (!fits) throw new Trouble(`${who} is ${wanted(spec)}. Here it is ${calledAs(value)}.`);
  const number = isAmount(value) ? (math.multiply(1, value) as Amount).toNumber(unit) : (value as number);
  if (spec.whole && !Number.isInteger(number))
    throw new Trouble(`${who} is a whole number, and here it is ${inFigures(number)}.`);
  return number;
}

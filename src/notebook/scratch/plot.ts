/** The points of a plot: an expression worked out again and again while one name goes from one value to another. */
import type { MathNode } from 'mathjs';
import { amountOf, calledAs, inFigures, kindOf } from './amounts.ts';
import type { Cell } from './cells.ts';
import { together } from './functions.ts';
import { type Amount, isAmount, math, type Value } from './math.ts';
import { Trouble } from './trouble.ts';
import { read, type Surroundings, workOut } from './work-out.ts';

/** How many values are worked out. */
const parts = 120;

/** Numbers along one side, in one unit for each reader. */
export interface Side {
  readonly mm: Scale;
  readonly inch: Scale;
}
interface Scale {
  /** Behind the numbers: "mm"; empty for plain ones. */
  readonly unit: string;
  /** A number of this unit is the plotted one times `by` plus `plus`. */
  readonly by: number;
  readonly plus: number;
}

export interface Plotted {
  /** Pieces without gaps, in the plotted numbers: the first unit of the kind. */
  readonly pieces: readonly (readonly (readonly [x: number, y: number])[])[];
  readonly x: Side;
  readonly y: Side;
  /** Why some of it has no number, if so. */
  readonly gap?: string;
}

const scaleOf = (unit: string, base: string): Scale => {
  const [zero, one] = [0, 1].map((value) => amountOf(value, base).toNumber(unit)) as [number, number];
  return { unit: unit.replace('^2', '²').replace('^3', '³').replace('deg', '°'), by: one - zero, plus: zero };
};

/** In which units a side is written, and the number of a value on it. */
function sideOf(value: Value): { side: Side; number: (value: Value) => number } {
  if (!isAmount(value)) {
    const plain = { unit: '', by: 1, plus: 0 };
    return { side: { mm: plain, inch: plain }, number: Number };
  }
  const kind = kindOf(value);
  const base = kind?.mm[0] ?? value.toSI().formatUnits();
  const inch = kind?.inch[0] ?? base;
  return {
    side: { mm: scaleOf(base, base), inch: scaleOf(inch, base) },
    number: (one) => (math.multiply(1, one as Amount) as Amount).toNumber(base),
  };
}

/** @throws Trouble where nothing can be plotted */
export function plotted(cell: Cell & { type: 'plot' }, around: Surroundings): Plotted {
  const over = cell.over.trim();
  const [from, to] = (['from', 'to'] as const).map((end) => workOut(read(cell[end]), around)) as [
    Value,
    Value,
  ];
  const [low, high] = together([from, to], '“from” and “to”') as [number, number];
  if (!(low < high)) throw new Trouble('“from” must be below “to”.');
  // The name may be taken by a cell above: inside the plot it is what changes.
  const own = new Map(around.own);
  own.delete(over);
  workOut(read(`${over} = 1`), { ...around, own });
  const body: MathNode = read(cell.text);
  const x = sideOf(from);
  const [start, end] = [x.number(from), x.number(to)];
  const base = isAmount(from) ? (kindOf(from)?.mm[0] ?? from.toSI().formatUnits()) : undefined;
  let y: ReturnType<typeof sideOf> | undefined;
  let first: Value | undefined;
  let gap: string | undefined;
  const pieces: (readonly [number, number])[][] = [[]];
  for (let part = 0; part <= parts; part++) {
    const at = start + (part / parts) * (end - start);
    own.set(over, base === undefined ? at : amountOf(at, base));
    try {
      const value = workOut(body, { ...around, own });
      if (typeof value === 'boolean') throw new Trouble('A yes or no cannot be plotted.');
      if (first === undefined) {
        first = value;
        y = sideOf(value);
      } else if (
        isAmount(value) !== isAmount(first) ||
        (isAmount(value) && !value.equalBase(first as Amount))
      )
        throw new Trouble(`This is ${calledAs(first)} at one place and ${calledAs(value)} at another.`);
      pieces.at(-1)!.push([at, y!.number(value)]);
    } catch (error) {
      if (!(error instanceof Trouble) || performance.now() > around.until) throw error;
      gap ??= `From ${over} = ${inFigures(at)}${base ? ` ${base}` : ''} on: ${error.message}`;
      if (pieces.at(-1)!.length > 0) pieces.push([]);
      // Nothing so far, and the same everywhere, most likely.
      if (first === undefined && part === parts) throw error;
    }
  }
  return {
    pieces: pieces.filter((piece) => piece.length > 0),
    x: x.side,
    y: y!.side,
    ...(gap ? { gap } : {}),
  };
}

/** The functions a cell may call beside the relations: roots, rounding, angles. */
import { amountOf, calledAs, hasOwnZero, kindOf } from './amounts.ts';
import { type Amount, isAmount, math, type Value } from './math.ts';
import { Trouble } from './trouble.ts';

type Given = readonly Value[];

interface Callable {
  readonly takes: string;
  readonly says: string;
  /** How many values, at least and at most. */
  readonly count: readonly [number, number];
  readonly of: (given: Given, name: string) => Value;
}

const pure = (value: Value, name: string): number => {
  if (typeof value !== 'number')
    throw new Trouble(`${name}(…) wants a plain number, and this is ${calledAs(value)}.`);
  return value;
};
/** Radians; a plain number is taken for them. */
const turned = (value: Value, name: string): number =>
  isAmount(value) && kindOf(value)?.called === 'an angle' ? value.toNumber('rad') : pure(value, name);

/** Numbers of values of one kind, so that they can be compared. @throws Trouble where they are of two kinds */
export function together(given: Given, what: string): readonly number[] {
  const [first] = given;
  if (given.some((value) => typeof value === 'boolean')) throw new Trouble(`${what} wants numbers.`);
  if (isAmount(first)) {
    const other = given.find((value) => !isAmount(value) || !value.equalBase(first));
    if (other !== undefined)
      throw new Trouble(
        `${what} wants amounts of one kind: here are ${calledAs(first)} and ${calledAs(other)}.`,
      );
    return given.map((value) => (math.multiply(1, value as Amount) as Amount).toSI().value as number);
  }
  const other = given.find(isAmount);
  if (other)
    throw new Trouble(`${what} wants amounts of one kind: here are a plain number and ${calledAs(other)}.`);
  return given as readonly number[];
}

const picked = (choose: (...of: number[]) => number) => (given: Given, name: string) => {
  const numbers = together(given, `${name}(…)`);
  return given[numbers.indexOf(choose(...numbers))]!;
};

/** Rounds to whole steps: `round(x, 1/16 in)`; a plain number without a step to whole ones. */
const toStep = (rounded: (x: number) => number) => (given: Given, name: string) => {
  const [value, step] = given;
  if (step === undefined) {
    if (isAmount(value)) throw new Trouble(`${name}(…) wants a step as well: ${name}(x, 1/16 in).`);
    return rounded(pure(value!, name));
  }
  if (hasOwnZero(value!)) throw new Trouble('A temperature is rounded as a plain number.');
  const [of, by] = together([value!, step], `${name}(…)`);
  if (by === 0) throw new Trouble(`${name}(…) cannot go in steps of zero.`);
  // A number that lies on a step but for arithmetic noise stays there.
  const steps = Number((of! / by!).toPrecision(12));
  return math.multiply(rounded(steps), step as Amount) as Value;
};

const one = [1, 1] as const;
const ofNumber = (says: string, f: (x: number) => number, takes = 'x'): Callable => ({
  takes,
  says,
  count: one,
  of: ([x], name) => f(pure(x!, name)),
});
const ofAngle = (says: string, f: (x: number) => number): Callable => ({
  takes: 'angle',
  says,
  count: one,
  of: ([x], name) => f(turned(x!, name)),
});
const givesAngle = (says: string, f: (x: number) => number): Callable => ({
  takes: 'x',
  says,
  count: one,
  of: ([x], name) => amountOf((f(pure(x!, name)) * 180) / Math.PI, 'deg'),
});
const root =
  (power: number) =>
  ([x]: Given, name: string) => {
    if (hasOwnZero(x!)) throw new Trouble(`${name}(…) of a temperature means nothing.`);
    if (isAmount(x)) return math.pow(x, 1 / power) as Value;
    return power === 3 ? Math.cbrt(pure(x!, name)) : Math.sqrt(pure(x!, name));
  };

const most = 20;
export const functions: ReadonlyMap<string, Callable> = new Map(
  Object.entries({
    sqrt: { takes: 'x', says: 'square root', count: one, of: root(2) },
    cbrt: { takes: 'x', says: 'cube root', count: one, of: root(3) },
    abs: {
      takes: 'x',
      says: 'the size without its sign',
      count: one,
      of: (given, name) =>
        together(given, name)[0]! < 0 ? (math.unaryMinus(given[0] as Amount) as Value) : given[0]!,
    },
    min: { takes: 'x, y, …', says: 'the smallest', count: [1, most], of: picked(Math.min) },
    max: { takes: 'x, y, …', says: 'the largest', count: [1, most], of: picked(Math.max) },
    round: { takes: 'x, step', says: 'to the nearest step', count: [1, 2], of: toStep(Math.round) },
    roundUp: { takes: 'x, step', says: 'up to a step', count: [1, 2], of: toStep(Math.ceil) },
    roundDown: { takes: 'x, step', says: 'down to a step', count: [1, 2], of: toStep(Math.floor) },
    sin: ofAngle('sine', Math.sin),
    cos: ofAngle('cosine', Math.cos),
    tan: ofAngle('tangent', Math.tan),
    asin: givesAngle('angle of a sine', Math.asin),
    acos: givesAngle('angle of a cosine', Math.acos),
    atan: givesAngle('angle of a tangent', Math.atan),
    exp: ofNumber('e to this power', Math.exp),
    log: ofNumber('natural logarithm', Math.log),
    log10: ofNumber('logarithm to base 10', Math.log10),
  } satisfies Record<string, Callable>),
);

export const constants: ReadonlyMap<string, number> = new Map([
  ['pi', Math.PI],
  ['phi', (1 + Math.sqrt(5)) / 2],
]);

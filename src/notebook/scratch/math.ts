/**
 * What is taken of mathjs: its reader of expressions and its amounts with units. Nothing else of it is loaded, so that
 * nothing in a cell can import, make units, evaluate text or rewrite formulas; and none of this needs `eval` or
 * `Function`, which a content-security-policy may forbid.
 */
import {
  addDependencies,
  create,
  divideDependencies,
  type MathNode,
  type MathType,
  multiplyDependencies,
  parseDependencies,
  powDependencies,
  subtractDependencies,
  type Unit,
  unaryMinusDependencies,
  unitDependencies,
} from 'mathjs';

interface Taken {
  readonly parse: (text: string) => MathNode;
  readonly unit: (text: string) => Unit;
  readonly add: (a: MathType, b: MathType) => MathType;
  readonly subtract: (a: MathType, b: MathType) => MathType;
  readonly multiply: (a: MathType, b: MathType) => MathType;
  readonly divide: (a: MathType, b: MathType) => MathType;
  readonly pow: (a: MathType, b: number) => MathType;
  readonly unaryMinus: (a: MathType) => MathType;
}

export const math = create(
  {
    add: addDependencies!,
    divide: divideDependencies!,
    multiply: multiplyDependencies!,
    parse: parseDependencies!,
    pow: powDependencies!,
    subtract: subtractDependencies!,
    unaryMinus: unaryMinusDependencies!,
    unit: unitDependencies!,
  },
  {},
) as unknown as Taken;

/** A number with a unit; without a number it is the unit itself. */
export type Amount = Unit;
/** What an expression gives. A truth comes from a comparison alone. */
export type Value = number | Amount | boolean;

export const isAmount = (value: unknown): value is Amount =>
  typeof value === 'object' && value !== null && 'equalBase' in value;

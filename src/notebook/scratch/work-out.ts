/**
 * Works out one expression. mathjs reads it; this goes through what was read and knows every kind of piece it lets
 * through, so nothing in a cell can reach anything that is not named here. Own names and own functions of the reader live
 * in a map that the cells share, from the top down.
 * Over 150 lines, because one list of every piece that is let through is easier to check than several.
 */
import type { MathNode } from 'mathjs';
import { calledAs, hasOwnZero, plainIfPure, unitNames, unitOf } from './amounts.ts';
import { callRelation, type InputWords } from './call.ts';
import { constants, functions, together } from './functions.ts';
import { type Amount, isAmount, math, type Value } from './math.ts';
import { keyOf, type NamedNumber, relationNamed, relationNames } from './names.ts';
import { tidy } from './tidy.ts';
import { nearest, Trouble } from './trouble.ts';

/** A function of the reader: its inputs and what is worked out of them. */
interface OwnFunction {
  readonly takes: readonly string[];
  readonly body: MathNode;
}
/** What the reader has named so far. */
export type Own = Map<string, Value | OwnFunction>;

export interface Surroundings {
  readonly numbers: ReadonlyMap<string, NamedNumber>;
  readonly words: InputWords;
  readonly own: Own;
  /** Time after which it is stopped, ms of `performance.now`. */
  readonly until: number;
}

/** Functions of the reader that may wait for one another. */
const deepest = 100;
/** Names of the reader. */
const mostOwn = 200;
const ownName = /^[\p{L}][\p{L}\p{N}_]{0,30}$/u;

export const stopped = 'Stopped: this took longer than a second. It may call itself without an end.';

const isFunction = (it: Value | OwnFunction): it is OwnFunction => typeof it === 'object' && 'takes' in it;

/** Pieces of what mathjs has read, with what this looks at. */
interface Piece {
  readonly type: string;
  readonly name: string;
  readonly value: unknown;
  readonly fn: Piece & string;
  readonly args: readonly Piece[];
  readonly content: Piece;
  readonly object: Piece;
  readonly index: (Piece & { dotNotation?: boolean; dimensions: readonly Piece[] }) | null;
  readonly blocks: readonly { node: Piece }[];
  readonly properties: Readonly<Record<string, Piece>>;
  readonly params: readonly (string & Piece)[];
  readonly conditionals: readonly string[];
  readonly condition: Piece;
  readonly trueExpr: Piece;
  readonly falseExpr: Piece;
  readonly expr: Piece;
}

/** Reads a text. @throws Trouble with where and what, in the words of this site */
export function read(text: string): MathNode {
  const clean = tidy(text);
  if (clean === '') throw new Trouble('There is nothing to work out yet.');
  try {
    return math.parse(clean);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    const at = /\(char (\d+)\)/.exec(error.message)?.[1];
    const before = clean.slice(0, Number(at ?? 1) - 1).slice(-12);
    if (/^Unexpected end|^Parenthesis \)/.test(error.message))
      throw new Trouble(
        /Parenthesis/.test(error.message)
          ? 'A closing parenthesis is missing.'
          : 'Something is missing at the end.',
      );
    if (clean[Number(at) - 1] === ',')
      throw new Trouble('A comma parts what is put into a function. In a number write a point: 1.5.');
    throw new Trouble(
      `This cannot be read${before ? ` after “${before}”` : ''}. Write it as 2 * (3/8 in + 1 mm).`,
    );
  }
}

/** Works out what was read. @throws Trouble */
export function workOut(node: MathNode, around: Surroundings): Value {
  let steps = 0;
  let depth = 0;
  const { numbers, own, words } = around;

  const tick = () => {
    if (++steps % 64 === 0 && performance.now() > around.until) throw new Trouble(stopped);
  };

  const unknown = (name: string, called: boolean): never => {
    const all = called
      ? [
          ...relationNames,
          ...functions.keys(),
          ...[...own].filter(([, it]) => isFunction(it)).map(([key]) => key),
        ]
      : [...own.keys(), ...unitNames, ...constants.keys(), ...[...numbers.values()].map((one) => one.name)];
    const like = nearest(name, all);
    throw new Trouble(
      `“${name.slice(0, 40)}” is not a name here.${like.length > 0 ? ` Did you mean ${like.join(' or ')}?` : ''} The names you can use are listed below.`,
    );
  };

  const known = (name: string): Value | undefined => {
    const found = numbers.get(keyOf(name));
    if (found && found.value === undefined)
      throw new Trouble(`This box has no number for ${found.name} (${found.meaning}).`);
    return found?.value;
  };

  const named = (name: string, inside: ReadonlyMap<string, Value>): Value => {
    const mine = inside.get(name) ?? own.get(name);
    if (mine !== undefined && isFunction(mine))
      throw new Trouble(`${name} is a function: write ${name}(${mine.takes.join(', ')}).`);
    const found = mine ?? constants.get(name) ?? unitOf(name) ?? known(name);
    if (found !== undefined) return found;
    const relation = relationNamed(name);
    if (relation)
      throw new Trouble(`${name} wants its inputs: ${name}(${Object.keys(relation.inputs).join(', ')}).`);
    if (functions.has(name))
      throw new Trouble(`${name} wants its inputs: ${name}(${functions.get(name)!.takes}).`);
    return unknown(name, false);
  };

  /** The path of `box.inside.width`; nothing but names with dots between is a path. */
  const pathOf = (piece: Piece): string => {
    if (piece.type === 'SymbolNode') return piece.name;
    const part = piece.index?.dotNotation && piece.index.dimensions[0]?.value;
    if (piece.type !== 'AccessorNode' || typeof part !== 'string')
      throw new Trouble('Only names have dots in them, such as box.inside.width.');
    return `${pathOf(piece.object)}.${part}`;
  };

  const call = (piece: Piece, inside: ReadonlyMap<string, Value>): Value => {
    const name = pathOf(piece.fn);
    const mine = own.get(name);
    const byObject =
      piece.args.length === 1 && piece.args[0]!.type === 'ObjectNode' ? piece.args[0]! : undefined;
    const relation = mine === undefined ? relationNamed(name) : undefined;
    if (relation) {
      const given = byObject
        ? Object.fromEntries(Object.entries(byObject.properties).map(([key, of]) => [key, go(of, inside)]))
        : piece.args.map((of) => go(of, inside));
      return callRelation(name, relation, given, words);
    }
    const fixed = functions.get(name);
    if (!fixed && !(mine !== undefined && isFunction(mine))) {
      if (
        unitOf(name) ||
        inside.has(name) ||
        mine !== undefined ||
        numbers.has(keyOf(name)) ||
        constants.has(name)
      )
        throw new Trouble(`“${name}” cannot be called. To multiply, write * before the parenthesis.`);
      return unknown(name, true);
    }
    const given = piece.args.map((of) => go(of, inside));
    if (fixed) {
      const [least, most] = fixed.count;
      if (given.length < least || given.length > most)
        throw new Trouble(`Write ${name}(${fixed.takes}): ${fixed.says}.`);
      return fixed.of(given, name);
    }
    const { takes, body } = mine as OwnFunction;
    if (given.length !== takes.length) throw new Trouble(`Write ${name}(${takes.join(', ')}).`);
    if (depth >= deepest) throw new Trouble(`Stopped: ${name} calls itself more than ${deepest} times over.`);
    depth++;
    const value = go(body as unknown as Piece, new Map(takes.map((key, at) => [key, given[at]!])));
    depth--;
    return value;
  };

  const free = (name: string): void => {
    if (!ownName.test(name))
      throw new Trouble(
        'A name of your own is one word: letters, figures and _, a letter first, 31 at most.',
      );
    if (constants.has(name) || unitOf(name) || name === 'in')
      throw new Trouble(`“${name}” keeps its meaning here. Choose another name.`);
    if (
      functions.has(name) ||
      relationNamed(name) ||
      numbers.has(keyOf(name)) ||
      /^(box|wood|to)$/i.test(name)
    )
      throw new Trouble(
        `“${name}” is a name of this site and keeps its meaning. Choose another, such as my_${name.slice(0, 20)}.`,
      );
    if (own.size >= mostOwn && !own.has(name))
      throw new Trouble(`There is room for ${mostOwn} names of your own.`);
  };

  const combine = (fn: string, signs: string, [a, b]: readonly [Value, Value]): Value => {
    if (typeof a === 'boolean' || typeof b === 'boolean')
      throw new Trouble(`“${signs}” wants numbers, and one of these is a yes or no.`);
    const isUnitAlone = (value: Value) => isAmount(value) && value.value === null;
    if ((hasOwnZero(a) || hasOwnZero(b)) && !(fn === 'multiply' && typeof a === 'number' && isUnitAlone(b)))
      throw new Trouble(
        'Temperatures in °C and °F cannot be added or multiplied. Write plain numbers of °C, or turn one into the other: 70 degF to degC.',
      );
    if (fn === 'add' || fn === 'subtract') {
      together([a, b], `“${signs}”`);
      return math[fn](math.multiply(1, a), math.multiply(1, b)) as Value;
    }
    if (fn === 'multiply' || fn === 'divide') {
      if (fn === 'divide' && b === 0) throw new Trouble('This divides by zero.');
      return plainIfPure(math[fn](a, b) as Value);
    }
    if (typeof b !== 'number') throw new Trouble(`A power is a plain number, and this is ${calledAs(b)}.`);
    if (isAmount(a) && Math.abs(b) > 6) throw new Trouble('The power of an amount with a unit goes up to 6.');
    if (typeof a === 'number') return a ** b;
    return plainIfPure(math.pow(a, b) as Value);
  };

  const compared = (how: string, [a, b]: readonly Value[]): boolean => {
    const [x, y] = together([a!, b!], 'A comparison') as [number, number];
    if (how === 'smaller') return x < y;
    if (how === 'larger') return x > y;
    if (how === 'smallerEq') return x <= y;
    if (how === 'largerEq') return x >= y;
    return how === 'equal' ? x === y : x !== y;
  };

  const truth = (value: Value): boolean => {
    if (typeof value !== 'boolean') throw new Trouble(`This asks yes or no, and gets ${calledAs(value)}.`);
    return value;
  };

  const operate = ({ fn, args, ...piece }: Piece, inside: ReadonlyMap<string, Value>): Value => {
    const signs = String((piece as unknown as { op: string }).op);
    if (fn === 'and') return truth(go(args[0]!, inside)) && truth(go(args[1]!, inside));
    if (fn === 'or') return truth(go(args[0]!, inside)) || truth(go(args[1]!, inside));
    if (fn === 'not') return !truth(go(args[0]!, inside));
    const given = args.map((of) => go(of, inside));
    if (fn === 'unaryPlus') return given[0]!;
    if (fn === 'unaryMinus') {
      if (typeof given[0] === 'boolean') throw new Trouble('A yes or no has no sign.');
      return math.unaryMinus(given[0]!) as Value;
    }
    if (fn === 'to') {
      const [a, b] = given;
      if (!isAmount(b) || b.value !== null)
        throw new Trouble('Behind “to” stands a unit: to in, to mm, to N/mm.');
      if (!isAmount(a) || !a.equalBase(b))
        throw new Trouble(
          `${calledAs(a!)} cannot be written in ${b.formatUnits()}, which is for ${calledAs(b)}.`,
        );
      return (math.multiply(1, a) as Amount).to(b.formatUnits());
    }
    if (/^(smaller|larger)(Eq)?$|^(un)?equal$/.test(fn)) return compared(fn, given);
    if (/^(add|subtract|multiply|divide|pow)$/.test(fn)) return combine(fn, signs, [given[0]!, given[1]!]);
    throw new Trouble(`“${signs}” is not used here.`);
  };

  const go = (piece: Piece, inside: ReadonlyMap<string, Value>): Value => {
    tick();
    switch (piece.type) {
      case 'ConstantNode': {
        const { value } = piece;
        if (value === undefined) throw new Trouble('There is nothing to work out yet.');
        if (typeof value === 'boolean') return value;
        if (typeof value !== 'number' || Number.isNaN(value))
          throw new Trouble(`“${String(value)}” is no number.`);
        if (!Number.isFinite(value)) throw new Trouble('This number is too large.');
        return value;
      }
      case 'ParenthesisNode':
        return go(piece.content, inside);
      case 'SymbolNode':
      case 'AccessorNode':
        return named(pathOf(piece), inside);
      case 'OperatorNode':
        return operate(piece, inside);
      case 'FunctionNode':
        return call(piece, inside);
      case 'ConditionalNode':
        return go(truth(go(piece.condition, inside)) ? piece.trueExpr : piece.falseExpr, inside);
      case 'RelationalNode': {
        const { conditionals, params } = piece as {
          conditionals: readonly string[];
          params: readonly Piece[];
        };
        const given = params.map((of) => go(of, inside));
        return conditionals.every((how, at) => compared(how, given.slice(at, at + 2)));
      }
      case 'BlockNode':
        return piece.blocks.map(({ node: one }) => go(one, inside)).at(-1) ?? unknown('', false);
      case 'AssignmentNode': {
        if (piece.index || piece.object.type !== 'SymbolNode' || inside.size > 0)
          throw new Trouble('A name is given alone: gap = 2 mm. Names with dots keep their meaning.');
        free(piece.object.name);
        const value = finite(go(piece.value as Piece, inside));
        own.set(piece.object.name, value);
        return value;
      }
      case 'FunctionAssignmentNode': {
        free(piece.name);
        for (const param of piece.params) free(param);
        if (piece.params.length > 8) throw new Trouble('A function of your own takes 8 values at most.');
        own.set(piece.name, { takes: [...piece.params], body: piece.expr as unknown as MathNode });
        return true;
      }
      default:
        throw new Trouble(refusedPieces[piece.type] ?? 'This cannot be used in a cell.');
    }
  };
  return finite(go(node as unknown as Piece, new Map()));
}

const refusedPieces: Readonly<Record<string, string>> = {
  ArrayNode: 'Lists are not used here. To see many values, add a plot.',
  RangeNode: 'A colon makes no list here. To see many values, add a plot.',
  ObjectNode: 'Braces stand in the call of a relation alone: grooveWidth({…}).',
};

/** A number that is one. @throws Trouble for what is too large or none at all */
function finite(value: Value): Value {
  const number = typeof value === 'boolean' ? 0 : isAmount(value) ? (value.toSI().value ?? 1) : value;
  if (typeof number !== 'number')
    throw new Trouble('There is no number for this: a root of a negative one, perhaps.');
  if (Number.isNaN(number))
    throw new Trouble('There is no number for this: a root of a negative one, perhaps.');
  if (!Number.isFinite(number)) throw new Trouble('This number is too large.');
  return value;
}

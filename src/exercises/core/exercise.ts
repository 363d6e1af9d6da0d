/**
 * What an exercise is: numbers drawn from stated lists, a question, the steps to the answer, and the usual slips.
 *
 * Everything a learner reads is text in one system of units, so a screen, a printed sheet and a table of keys can all be
 * made from a `Task`. Values are stored as everywhere: mm, mm², percent points.
 */

import { type FormatOptions, format, type Kind, type UnitSystem } from '../../units/index.ts';
import type { Principle } from './principles.ts';
import type { Draw } from './seed.ts';

/** How a number is printed. */
export interface Print extends Omit<FormatOptions, 'system'> {
  readonly kind: Kind;
}

/** A wrong number that is often given, and which step goes wrong when it is. */
export interface Mistake {
  readonly id: string;
  /** What the slip gives, in the unit of the answer. */
  readonly value: number;
  /** Names the step, and says what to do there. */
  readonly says: string;
}

/** A number asked for. */
export interface NumberAsked {
  readonly type: 'number';
  readonly label: string;
  readonly key: number;
  /** How far from the key is still right. */
  readonly within: number;
  readonly print: Print;
  readonly mistakes: readonly Mistake[];
}

/** One of several statements asked for. */
export interface PickAsked {
  readonly type: 'pick';
  readonly label: string;
  /** The id of the right one. */
  readonly key: string;
  readonly options: readonly {
    readonly id: string;
    readonly text: string;
    /** Which step goes wrong where this is picked; not for the right one. */
    readonly says?: string;
  }[];
}

export type Asked = NumberAsked | PickAsked;

/** One line of the way to the answer. */
export interface Line {
  /** The rule that this step is. */
  readonly principle: Principle;
  /** What to do, without any result: this is a hint. */
  readonly does: string;
  /** The numbers put in: "190 mm + 2 × 8 mm". Empty for a step without a sum. */
  readonly sum: string;
  readonly gives: Asked;
  /** Asked of the learner; the other lines only lead there. */
  readonly asked: boolean;
}

/** What a learner gets. */
export interface Task {
  readonly exercise: string;
  readonly system: UnitSystem;
  /** The drawn values by name, for keys and tests. */
  readonly values: Values;
  readonly given: readonly { readonly label: string; readonly text: string }[];
  /** A table to read from, where one is needed. */
  readonly table?: { readonly title: string; readonly rows: readonly (readonly [string, string])[] };
  readonly question: string;
  readonly lines: readonly Line[];
  /** Asks for a reason in words, which only a teacher can judge. */
  readonly reason?: string;
}

export type Values = Readonly<Record<string, number | string>>;
export type Posed = Omit<Task, 'exercise' | 'system' | 'values'>;

/** An exercise as its file writes it. */
interface Spec<V extends Values> {
  readonly id: string;
  readonly title: string;
  /** One line for a list of exercises. */
  readonly about: string;
  /** The lesson it belongs to, by id: its page leads here, and this one back. */
  readonly lesson: string;
  /** Pages of the rules it trains, by id. */
  readonly rules: readonly string[];
  /** From the lists of one system: inch learners get native inch values. */
  readonly draw: (from: Draw, system: UnitSystem) => V;
  /** Whether a box can be built with them, and they ask something. Else all are drawn again. */
  readonly fits?: (values: V, system: UnitSystem) => boolean;
  readonly pose: (values: V, system: UnitSystem) => Posed;
}

/** An exercise, whatever its values are called. */
export type Exercise = Spec<Values>;

/** Declares an exercise; only there to infer the names of its values. */
export const exercise = <V extends Values>(spec: Spec<V>): Exercise => spec as unknown as Exercise;

/** A value as a learner reads it. */
export const write = (value: number, { kind, ...how }: Print, system: UnitSystem): string =>
  format(value, kind, { ...how, system });

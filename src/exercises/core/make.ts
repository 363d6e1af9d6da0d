/** Short ways to write the parts of an exercise. */

import { INCH, type UnitSystem } from '../../units/index.ts';
import { type Line, type Mistake, type NumberAsked, type PickAsked, type Print, write } from './exercise.ts';
import type { Principle } from './principles.ts';

/** Inches as stored. */
export const inches = (value: number): number => value * INCH;
/** One native value for each system, mm and inches; the stored one of the reader's. */
export const native = (system: UnitSystem, mm: number, inch: number): number =>
  system === 'mm' ? mm : inches(inch);

/** A size to mark or cut: one decimal of a millimeter, or a fraction of an inch. */
export const size: Print = { kind: 'length' };
/** A small difference: hundredths of a millimeter, or thousandths of an inch with the mark beside. */
export const fine: Print = { kind: 'length', as: 'fine' };
/** The same without the mark, for sums. */
export const exact: Print = { kind: 'length', as: 'exact' };
export const count: Print = { kind: 'count' };
export const plain: Print = { kind: 'number' };
export const points: Print = { kind: 'points' };

/** What counts as exact: half a tenth of a millimeter, or five thousandths of an inch for those who type decimals. */
export const exactly = (system: UnitSystem): number => native(system, 0.05, 0.005);

/** Writes values in one system. */
export const writer =
  (system: UnitSystem) =>
  (value: number, print: Print = size): string =>
    write(value, print, system);

export const slip = (id: string, value: number, says: string): Mistake => ({ id, value, says });

type Way = readonly [principle: Principle, does: string, sum: string];

/** A line that leads to the answer. */
export const step = (
  [principle, does, sum]: Way,
  label: string,
  key: number,
  within: number,
  print: Print,
  mistakes: readonly Mistake[] = [],
): Line => ({
  principle,
  does,
  sum,
  asked: false,
  gives: { type: 'number', label, key, within, print, mistakes },
});

/** A line whose number is asked for. */
export const ask = ([principle, does, sum]: Way, gives: Omit<NumberAsked, 'type'>): Line => ({
  principle,
  does,
  sum,
  asked: true,
  gives: { type: 'number', ...gives },
});

/** A line that asks to choose. */
export const choose = ([principle, does, sum]: Way, gives: Omit<PickAsked, 'type'>): Line => ({
  principle,
  does,
  sum,
  asked: true,
  gives: { type: 'pick', ...gives },
});

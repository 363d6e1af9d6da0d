/**
 * What a guess is: data, read by `GuessCard`. The start is drawn, the reader says how it goes on, and then the truth is
 * drawn over it. A guess works on the example in the reader's units, never on the reader's box: all guess the same.
 */
import type { ComponentChildren, FunctionComponent } from 'preact';
import type { NumberField } from '../../box/core/field.ts';
import { exampleFor } from '../../box/subjects/example.ts';
import type { Box, ChoiceName, NumberName } from '../../box/subjects/inputs.ts';
import { compute, type Model } from '../../box/subjects/model.ts';
import type { Values } from '../../box/whole/index.ts';
import type { GuessFrame } from '../../figures/parts/guess-frame.ts';
import type { UnitSystem } from '../../units/index.ts';

/** What the drawing of a guess is given. It shows nothing of the outcome before `open`. */
export interface GuessFigureProps {
  readonly values: Values;
  readonly system: UnitSystem;
  /** Where the reader put the mark, in the stored unit; undefined while nothing is guessed. */
  readonly mark: number | undefined;
  readonly open: boolean;
}

interface CommonGuess {
  /** Inputs that differ from the example, for a reader of these units. */
  readonly pins?: (system: UnitSystem) => Partial<Box>;
  /** What the button lets happen: "Let August come". */
  readonly event: string;
  /** What is true, in a sentence or two, once it is open; again whenever the control below is moved. */
  readonly answer: (values: Values, system: UnitSystem) => ComponentChildren;
  /** Inputs the reader may move afterwards; one, as a rule. */
  readonly controls?: readonly (NumberName | ChoiceName)[];
}

/** A mark that is dragged along or down the drawing, or typed. */
export interface NumberGuess extends CommonGuess {
  readonly type: 'number';
  /** Name of the field: "your mark". */
  readonly label: string;
  /** Kind, limits and steps of the mark, as those of an input. */
  readonly field: Pick<NumberField, 'kind' | 'low' | 'high' | 'step' | 'inchStep' | 'digits'>;
  readonly figure: FunctionComponent<GuessFigureProps>;
  /** The drawing's size, and where in it the mark's lowest and highest places lie. */
  readonly frame: GuessFrame;
  /** Another layout for a page as wide as the front page. */
  readonly wide?: Pick<NumberGuess, 'figure' | 'frame'>;
  /** Where the mark begins. */
  readonly start: (values: Values) => number;
  /** Where it belongs: a result of the box, or what a relation gives. */
  readonly truth: (values: Values, system: UnitSystem) => number;
}

/** One of several outcomes, each drawn. */
export interface PickGuess extends CommonGuess {
  readonly type: 'pick';
  /** What is picked: "it will look like". */
  readonly label: string;
  readonly options: Readonly<Record<string, string>>;
  /** Draws one option; as it is before the guess, and as it is in truth. */
  readonly option: FunctionComponent<{ values: Values; option: string; open: boolean }>;
  /** The start, drawn once above the options, where they do not show it. */
  readonly figure?: FunctionComponent<GuessFigureProps>;
  readonly truth: (values: Values) => string;
}

export type GuessSpec = NumberGuess | PickGuess;

/** The values a guess begins with, and what the reader has moved since. */
export const valuesOfGuess = (
  { pins }: GuessSpec,
  model: Model,
  system: UnitSystem,
  moved: Partial<Box> = {},
): Values => compute(model.results, { ...exampleFor(system), ...pins?.(system), ...moved });

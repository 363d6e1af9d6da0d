/**
 * The one box that runs through the whole notebook: everything the reader decides, nothing that follows from it.
 * Each subject declares its inputs; here they are put together.
 *
 *          |<------- length ------->|
 *   top    ┌────────────────────────┐  lidLip        wood above the lid's groove
 *          │▒▒▒▒▒▒▒▒▒▒ lid ▒▒▒▒▒▒▒▒▒│  lidThickness
 *          │        headroom        │
 *          │        contents        │
 *          │▒▒▒▒▒▒▒ bottom ▒▒▒▒▒▒▒▒▒│  bottomTongue  the panel's edge in its groove
 *   table  └────────────────────────┘  bottomLip     wood below the bottom's groove
 */
import type {
  ChoiceField,
  Field,
  Input,
  InputsOf,
  NumberField,
  ReasonsField,
  TextField,
  When,
} from '../core/field.ts';
import { airInputs } from './air/inputs.ts';
import { boardInputs } from './board/inputs.ts';
import { bottomInputs } from './bottom/inputs.ts';
import { jointsInputs } from './joints/inputs.ts';
import { lidInputs } from './lid/inputs.ts';
import { movementInputs } from './movement/inputs.ts';
import { proportionInputs } from './proportion/inputs.ts';
import { contentsInputs, sizeInputs } from './size/inputs.ts';
import { squareInputs } from './square/inputs.ts';
import { wallsInputs } from './walls/inputs.ts';

const name: Input<TextField> = {
  type: 'text',
  label: 'name of the box',
  longest: 60,
  start: 'Domino box',
};
const accepted: Input<ReasonsField> = {
  type: 'reasons',
  label: 'list of exceptions',
  longest: 200,
  start: {},
};

/** Every input by name. */
export const fields = {
  /** What the reader calls it. */
  name,
  ...contentsInputs,
  ...sizeInputs,
  ...proportionInputs,
  ...wallsInputs,
  ...jointsInputs,
  ...bottomInputs,
  ...lidInputs,
  ...movementInputs,
  ...airInputs,
  ...boardInputs,
  ...squareInputs,
  /** Verdicts the reader accepts on purpose: the check's id and the reason. */
  accepted,
};

/** Lengths in mm, humidity in % relative humidity, temperature in °C, angles in degrees, forces in N. */
export type Box = InputsOf<typeof fields>;

/** The inputs alone, out of everything that is known about a box. */
export const inputsOf = (values: Box): Box =>
  Object.fromEntries(Object.keys(fields).map((name) => [name, values[name as keyof Box]])) as unknown as Box;

type NamesOf<F> = {
  [Name in keyof typeof fields]: (typeof fields)[Name] extends F ? Name : never;
}[keyof typeof fields];
/** Names of the inputs that are numbers. */
export type NumberName = NamesOf<NumberField>;
/** Names of the inputs that are one of a few words. */
export type ChoiceName = NamesOf<ChoiceField>;

const holds = (when: readonly When[] | undefined, box: Readonly<Record<string, unknown>>): boolean =>
  !when ||
  when.some((all) =>
    Object.entries(all).every(([name, of]) =>
      of === 'some' ? Number(box[name]) > 0 : of.includes(String(box[name])),
    ),
  );

/** Whether this box has the input at all. */
export const hasInput = (name: keyof Box, box: Box): boolean => holds((fields[name] as Field).when, box);
/** Whether the input moves the sizes of this box; inputs that are not about size always count. */
export const isInForce = (name: keyof Box, box: Box): boolean => holds((fields[name] as Field).leads, box);

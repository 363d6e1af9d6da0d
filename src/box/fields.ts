/**
 * The inputs of the box as a reader meets them: label, kind, limits and steps, one row each.
 * Sliders, number fields, links and storage are all built from this table, so a limit stands in one place.
 * Steps are shop sizes: one for readers in millimeters, one for readers in inches (a fraction, kept in mm).
 * Over 150 lines, because one table with a row for each input is easier to check than several.
 */
import type { Wood } from '../calc/wood.ts';
import type { Kind } from '../units/index.ts';
import type { Box } from './box.ts';
import { woods } from './woods.ts';

const inch = 25.4;

export interface NumberField {
  readonly type: 'number';
  readonly label: string;
  readonly kind: Kind;
  readonly low: number;
  readonly high: number;
  /** Step in the field's own unit for readers in millimeters. */
  readonly step: number;
  /** Step for readers in inches, in mm. Kinds other than length use `step`. */
  readonly inchStep?: number;
  /** Decimals shown in mm, and the finest inch fraction. */
  readonly digits?: 0 | 1 | 2;
  readonly denominator?: 8 | 16 | 32 | 64;
  readonly help?: string;
}

export interface ChoiceField {
  readonly type: 'choice';
  readonly label: string;
  readonly options: Readonly<Record<string, string>>;
  readonly help?: string;
}

export interface TextField {
  readonly type: 'text';
  readonly label: string;
  readonly longest: number;
}

export type Field = NumberField | ChoiceField | TextField;

type KeysOf<T> = { [K in keyof Box]: Box[K] extends T ? K : never }[keyof Box];
/** Names of the inputs that are numbers. */
export type NumberName = KeysOf<number>;
/** Names of the inputs that are one of a few words. */
export type ChoiceName = Exclude<keyof Box, NumberName | 'name'>;

const length = (label: string, low: number, high: number, help?: string): NumberField => ({
  type: 'number',
  label,
  kind: 'length',
  low,
  high,
  step: 1,
  inchStep: inch / 8,
  digits: 1,
  denominator: 16,
  help,
});
const thickness = (label: string, low: number, high: number, help?: string): NumberField => ({
  ...length(label, low, high, help),
  step: 0.5,
  inchStep: inch / 32,
  denominator: 32,
});
const fine = (label: string, low: number, high: number): NumberField => ({
  type: 'number',
  label,
  kind: 'length',
  low,
  high,
  step: 0.01,
  inchStep: inch / 1000,
  digits: 2,
});
const humidity = (label: string, help?: string): NumberField => ({
  type: 'number',
  label,
  kind: 'percent',
  low: 5,
  high: 95,
  step: 1,
  digits: 0,
  help,
});

/** How a wood stands in the list: averages over several species and figures from memory are told apart at once. */
const woodLabel = ({ name, isGroup, radialCoefficient, tangentialCoefficient }: Wood) => {
  const remembered = [radialCoefficient, tangentialCoefficient].some((of) => of?.status === 'from memory');
  const notes = [isGroup && 'group average', remembered && 'from memory'].filter(Boolean);
  return notes.length > 0 ? `${name} (${notes.join(', ')})` : name;
};

export const fields: Readonly<Record<NumberName, NumberField>> &
  Readonly<Record<ChoiceName, ChoiceField>> &
  Readonly<Record<'name', TextField>> = {
  name: { type: 'text', label: 'name of the box', longest: 60 },

  contentsLength: length('length of the contents', 10, 600, 'All the contents as they lie together.'),
  contentsWidth: length('width of the contents', 10, 400),
  contentsHeight: length('height of the contents', 2, 300),
  clearance: thickness('room on each side', 0, 25, 'Common practice: 3 to 6 mm, 1/8 to 1/4 in.'),
  headroom: thickness('room above the contents', 0, 60),

  sizeFrom: {
    type: 'choice',
    label: 'the size comes from',
    options: { contents: 'the contents', inside: 'a wanted inside', outside: 'a wanted outside' },
  },
  wantedLength: length('wanted length', 40, 600),
  wantedWidth: length('wanted width', 30, 400),
  wantedHeight: length('wanted height', 15, 300),

  wall: thickness('wall thickness', 3, 25),

  joint: {
    type: 'choice',
    label: 'corner joint',
    options: { finger: 'finger joint (box joint)', mitre: 'plain miter (mitre)', butt: 'butt joint' },
  },
  fingerWidth: thickness('finger width', 2, 25, 'The width your cutter makes.'),
  fingerFit: fine('slot minus finger', 0, 0.5),
  stepError: fine('error of each step', 0, 0.3),

  bottom: {
    type: 'choice',
    label: 'bottom',
    options: { solid: 'solid wood, floating', plywood: 'plywood' },
  },
  bottomThickness: thickness('bottom thickness', 2, 20),
  bottomTongue: thickness('edge of the bottom in its groove', 2, 20),
  bottomLip: thickness('wood below the bottom groove', 0.5, 25),
  grooveDepth: thickness('depth of the bottom groove', 1, 15),

  lidThickness: thickness('lid thickness', 3, 15),
  lidLip: thickness('wood above the lid groove', 0.5, 25),
  lidGrooveDepth: thickness('depth of the lid groove', 1, 15),

  species: {
    type: 'choice',
    label: 'wood',
    options: Object.fromEntries(woods.map((wood) => [wood.id, woodLabel(wood)])),
  },
  ringAngle: {
    type: 'number',
    label: 'growth rings to the face',
    kind: 'angle',
    low: 0,
    high: 90,
    step: 5,
    digits: 0,
    help: '0° is flat-sawn, 90° quarter-sawn.',
  },

  temperature: {
    type: 'number',
    label: 'temperature',
    kind: 'temperature',
    low: 0,
    high: 40,
    step: 1,
    digits: 0,
  },
  humidityToday: humidity('humidity today', 'Relative humidity where the wood lies now.'),
  humidityDry: humidity('humidity at the driest'),
  humidityDamp: humidity('humidity at the dampest'),

  push: {
    type: 'number',
    label: 'push by hand',
    kind: 'force',
    low: 5,
    high: 200,
    step: 5,
    digits: 0,
    help: 'A firm thumb pushes with about 50 N (11 lbf): from memory, not measured here.',
  },
};

/**
 * The inputs of the box as a reader meets them: label, kind, limits and steps, one row each.
 * Sliders, number fields, links and storage are all built from this table, so a limit stands in one place.
 * Steps are shop sizes: one for readers in millimeters, one for readers in inches (a fraction, kept in mm).
 * Over 150 lines, because one table with a row for each input is easier to check than several.
 */
import { INCH, type Kind, type UnitSystem } from '../../units/index.ts';
import { woodLabel, woodNote } from '../wood/wood-words.ts';
import { woods } from '../wood/woods.ts';
import type { Box } from './box.ts';

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
  /** What is wrong with it beside the other inputs, if anything. */
  readonly warns?: (box: Box) => string | undefined;
}

export interface ChoiceField {
  readonly type: 'choice';
  readonly label: string;
  readonly options: Readonly<Record<string, string>>;
  readonly help?: string;
  /** What is to be said about the option chosen. */
  readonly note?: (value: string) => string;
}

export interface TextField {
  readonly type: 'text';
  readonly label: string;
  readonly longest: number;
}

/** A list of things that go in the box. */
export interface ItemsField {
  readonly type: 'items';
  readonly label: string;
  readonly most: number;
}

/** Reasons by rule. */
export interface ReasonsField {
  readonly type: 'reasons';
  readonly label: string;
  readonly longest: number;
}

export type Field = NumberField | ChoiceField | TextField | ItemsField | ReasonsField;

type KeysOf<T> = { [K in keyof Box]: Box[K] extends T ? K : never }[keyof Box];
/** Names of the inputs that are numbers. */
export type NumberName = KeysOf<number>;
/** Names of the inputs that are one of a few words. */
export type ChoiceName = Exclude<keyof Box, NumberName | 'name' | 'items' | 'accepted'>;

/** The step of a number for a reader of these units, in the stored unit. */
export const stepOf = (field: NumberField, system: UnitSystem): number =>
  system === 'inch' && field.inchStep ? field.inchStep : field.step;

/** A length in whole millimeters or eighths of an inch. */
export const length = (label: string, low: number, high: number, help?: string): NumberField => ({
  type: 'number',
  label,
  kind: 'length',
  low,
  high,
  step: 1,
  inchStep: INCH / 8,
  digits: 1,
  denominator: 16,
  help,
});
const thickness = (label: string, low: number, high: number, help?: string): NumberField => ({
  ...length(label, low, high, help),
  step: 0.5,
  inchStep: INCH / 32,
  denominator: 32,
});
const fine = (label: string, low: number, high: number): NumberField => ({
  type: 'number',
  label,
  kind: 'length',
  low,
  high,
  step: 0.01,
  inchStep: INCH / 1000,
  digits: 2,
});
const gap = (label: string, high: number): NumberField => ({
  ...fine(label, 0, high),
  step: 0.05,
  inchStep: INCH / 128,
  denominator: 64,
  help: 'As you leave it today.',
});
const count = (label: string, low: number, high: number): NumberField => ({
  type: 'number',
  label,
  kind: 'count',
  low,
  high,
  step: 1,
  digits: 0,
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

/** Said beside both fields, and by the verdict on them. */
export const DRY_ABOVE_DAMP =
  'The driest time of the year is damper than the dampest: swap the two, since the gaps are reckoned for the wider swing.';
const endOfYear = (label: string): NumberField => ({
  ...humidity(label),
  warns: ({ humidityDry, humidityDamp }) => (humidityDry > humidityDamp ? DRY_ABOVE_DAMP : undefined),
});

export const fields: Readonly<Record<NumberName, NumberField>> &
  Readonly<Record<ChoiceName, ChoiceField>> &
  Readonly<{ name: TextField; items: ItemsField; accepted: ReasonsField }> = {
  name: { type: 'text', label: 'name of the box', longest: 60 },
  items: { type: 'items', label: 'list of contents', most: 20 },

  contentsLength: length('length of the contents', 1, 600, 'All the contents as they lie together.'),
  contentsWidth: length('width of the contents', 1, 400),
  contentsHeight: length('height of the contents', 0.5, 300),
  clearance: thickness('room on each side', 0, 25, 'Common practice: 3 to 6 mm, 1/8 to 1/4 in.'),
  headroom: thickness('room above the contents', 0, 60),
  fingerRoom: length('room for fingers, in the length', 0, 60, 'Common practice: 20 to 25 mm, 3/4 to 1 in.'),
  lining: thickness('lining', 0, 5, 'Felt is about 1 to 2 mm, 1/16 in: common practice.'),
  dividersAcross: count('dividers across the length', 0, 12),
  dividersAlong: count('dividers along the length', 0, 12),
  dividerThickness: thickness('divider thickness', 1, 12),

  sizeFrom: {
    type: 'choice',
    label: 'the size comes from',
    options: { contents: 'the contents', inside: 'a wanted inside', outside: 'a wanted outside' },
  },
  wantedLength: length('wanted length', 40, 600),
  wantedWidth: length('wanted width', 30, 400),
  wantedHeight: length('wanted height', 15, 300),
  wantedRatio: {
    type: 'number',
    label: 'wanted length to width',
    kind: 'ratio',
    low: 1,
    high: 3,
    step: 0.05,
    digits: 2,
    help: 'Write it as 1.6 or as 8:5.',
  },

  wall: thickness('wall thickness', 3, 25),

  kind: {
    type: 'choice',
    label: 'kind of box',
    options: {
      sliding: 'sliding lid in grooves',
      'lift-off': 'lift-off lid with a liner',
      sawn: 'lid sawn off the closed box, hinged',
    },
  },

  joint: {
    type: 'choice',
    label: 'corner joint',
    options: {
      finger: 'finger joint (box joint)',
      dovetail: 'through dovetail',
      mitre: 'plain miter (mitre)',
      'keyed-mitre': 'miter with keys',
      'splined-mitre': 'miter with a spline',
      rabbet: 'rabbet (rebate)',
      butt: 'butt joint',
    },
  },
  fingerWidth: thickness(
    'finger width',
    2,
    25,
    'Half the pitch: a slot and a finger together are twice this. The cutter is wider than this by half the play; the build sheet gives it.',
  ),
  fingerFit: fine('slot minus finger', 0, 0.5),
  stepError: fine('error of each step', 0, 0.3),

  tailCount: count('tails on each corner', 1, 12),
  dovetailSlope: {
    type: 'number',
    label: 'dovetail slope, length to one of width',
    kind: 'number',
    low: 3,
    high: 12,
    step: 1,
    digits: 0,
  },
  pinWidth: thickness('width of a pin at its narrow side', 2, 20),
  keyCount: count('keys in each corner', 1, 8),
  keyThickness: thickness('key thickness', 1, 6),

  bottom: {
    type: 'choice',
    label: 'bottom',
    options: { solid: 'solid wood', plywood: 'plywood' },
  },
  bottomFit: {
    type: 'choice',
    label: 'the bottom is',
    options: { floating: 'floating', glued: 'glued in' },
  },
  bottomSeat: {
    type: 'choice',
    label: 'the bottom sits in',
    options: { groove: 'a groove', rabbet: 'a rabbet (rebate)' },
  },
  bottomThickness: thickness('bottom thickness', 2, 20),
  bottomTongue: thickness('edge of the bottom in its groove', 2, 20),
  bottomLip: thickness('wood below the bottom groove', 0.5, 25),
  grooveDepth: thickness('depth of the bottom groove', 1, 15),
  bottomGap: gap('gap at each side of the bottom', 5),

  lid: { type: 'choice', label: 'lid panel', options: { solid: 'solid wood', plywood: 'plywood' } },
  pull: {
    type: 'choice',
    label: 'pull',
    options: {
      notch: 'a thumb notch',
      glued: 'a strip glued across the end',
      hole: 'a finger hole bored through the lid',
    },
  },
  pullThickness: thickness('thickness of the pull, along the lid', 3, 20),
  lidHeight: length('height of the lid’s walls', 5, 100),
  linerRise: thickness('liner above the box', 1, 30),
  linerThickness: thickness('liner thickness', 2, 10),
  lidRoom: { ...fine('room around the liner, each side', 0, 2), step: 0.05 },
  hingeLength: length('length of a hinge', 8, 80),
  lidThickness: thickness('lid thickness', 3, 15),
  lidLip: thickness('wood above the lid groove', 0.5, 25),
  lidGrooveDepth: thickness('depth of the lid groove', 1, 15),
  lidPlay: gap('play of the lid, both sides together', 10),
  friction: {
    type: 'number',
    label: 'friction of the lid',
    kind: 'number',
    low: 0.1,
    high: 0.8,
    step: 0.02,
    digits: 2,
    help: 'Chestnut on chestnut, at rest: 0.46 (Villar-García 2020, seen in the abstract). Waxed: about 0.2§.',
  },
  pullOffset: length('pull, off the middle of the lid', 0, 200),

  species: {
    type: 'choice',
    label: 'wood',
    options: Object.fromEntries(woods.map((wood) => [wood.id, woodLabel(wood)])),
    note: woodNote,
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
  humidityDry: endOfYear('humidity at the driest'),
  humidityDamp: endOfYear('humidity at the dampest'),

  push: {
    type: 'number',
    label: 'push by hand',
    kind: 'force',
    low: 5,
    high: 200,
    step: 5,
    digits: 0,
    help: 'A firm thumb pushes with about 50 N (11 lbf)§; not measured here.',
  },

  boardLength: length('board length', 100, 4000),
  boardWidth: length('board width', 20, 600),
  boardThickness: thickness('board thickness, rough', 3, 100),
  kerf: {
    ...thickness('kerf: width of the saw cut', 0.3, 6),
    step: 0.1,
    inchStep: INCH / 64,
    denominator: 64,
  },
  planing: { ...thickness('planed off each face', 0, 5), step: 0.1, inchStep: INCH / 64, denominator: 64 },
  wallsFrom: {
    type: 'choice',
    label: 'walls come from',
    options: { strip: 'one strip, in walk-round order', bookmatched: 'a resawn pair, opened like a book' },
  },

  angleError: {
    type: 'number',
    label: 'error of the saw’s angle',
    kind: 'angle',
    low: 0,
    high: 1,
    step: 0.05,
    digits: 2,
  },
  lengthError: fine('error of a part’s length', 0, 2),

  accepted: { type: 'reasons', label: 'list of exceptions', longest: 200 },
};

/**
 * The parts of the bench: what the box is made of, and what it is made from and with. Each input stands in one of them,
 * a few in sight and the rest behind “more”.
 */
import type { Refusal } from '../../box/design/refusal.ts';
import { type Box, type ChoiceName, hasInput, type NumberName } from '../../box/subjects/inputs.ts';

type Input = NumberName | ChoiceName;

interface Inputs {
  readonly basic: readonly Input[];
  readonly more: readonly Input[];
}

/** In the order in which they are walked through, with their inputs. */
export const inputsOfParts = {
  inside: {
    basic: ['clearance', 'headroom'],
    more: [
      'sizeFrom',
      'contentsLength',
      'contentsWidth',
      'contentsHeight',
      'wantedLength',
      'wantedWidth',
      'wantedHeight',
      'fingerRoom',
      'lining',
      'dividersAcross',
      'dividersAlong',
      'dividerThickness',
    ],
  },
  walls: { basic: ['wall'], more: ['wantedRatio'] },
  corners: {
    basic: ['joint', 'fingerWidth', 'fingerFit', 'tailCount', 'dovetailSlope', 'keyCount', 'keyThickness'],
    more: ['pinWidth'],
  },
  grooves: { basic: ['lidLip', 'bottomLip'], more: ['lidGrooveDepth', 'grooveDepth'] },
  bottom: {
    basic: ['bottom', 'bottomThickness', 'bottomGap'],
    more: ['bottomFit', 'bottomSeat', 'bottomTongue'],
  },
  lid: {
    basic: ['kind', 'lidThickness', 'lidPlay', 'lidHeight'],
    more: [
      'lid',
      'pull',
      'pullThickness',
      'pullOffset',
      'friction',
      'linerRise',
      'linerThickness',
      'lidRoom',
      'hingeLength',
    ],
  },
  air: {
    basic: ['species', 'ringAngle', 'humidityToday'],
    more: ['humidityDry', 'humidityDamp', 'temperature'],
  },
  board: {
    basic: ['boardLength', 'boardWidth', 'boardThickness'],
    more: ['wallsFrom', 'kerf', 'planing'],
  },
  accuracy: {
    basic: ['angleError', 'lengthError', 'stepError'],
    more: ['push', 'diagonalsApart', 'rock'],
  },
} as const satisfies Readonly<Record<string, Inputs>>;

export type PartOfBench = keyof typeof inputsOfParts;
export const partsOfBench = Object.keys(inputsOfParts) as readonly PartOfBench[];

/** As a reader meets it, lower case. */
export const nameOfPart: Readonly<Record<PartOfBench, string>> = {
  inside: 'inside',
  walls: 'walls',
  corners: 'corners',
  grooves: 'grooves',
  bottom: 'bottom',
  lid: 'lid',
  air: 'wood and air',
  board: 'the board',
  accuracy: 'my accuracy',
};

/** After “more about” and “rules about”. */
export const aboutPart: Readonly<Record<PartOfBench, string>> = {
  inside: 'the inside',
  walls: 'the walls and the outside',
  corners: 'the corners',
  grooves: 'the grooves',
  bottom: 'the bottom',
  lid: 'the lid',
  air: 'wood and air',
  board: 'the board',
  accuracy: 'my accuracy',
};

/** The inputs of a part that this box has. */
export const inputsIn = (part: PartOfBench, which: keyof Inputs, box: Box): readonly Input[] =>
  inputsOfParts[part][which].filter((input) => hasInput(input, box));

/** The part under which an input stands. */
export const partOfInput = (input: string | undefined): PartOfBench | undefined =>
  partsOfBench.find((part) =>
    ([...inputsOfParts[part].basic, ...inputsOfParts[part].more] as (string | undefined)[]).includes(input),
  );

/** Where a reader mends what cannot be built; the things that go in and what has no field stand inside. */
export const partOfRefusal = ({ field }: Refusal): PartOfBench => partOfInput(field) ?? 'inside';

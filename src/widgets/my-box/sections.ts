/** Which inputs stand in which section of the page, and when an input has anything to say. */
import type { Box } from '../../box/core/box.ts';
import type { ChoiceName, NumberName } from '../../box/core/fields.ts';
import { isInForce } from '../../box/core/in-force.ts';

type Input = NumberName | ChoiceName;

export interface Section {
  readonly title: string;
  readonly inputs: readonly Input[];
}

const contents: readonly Input[] = [
  'contentsLength',
  'contentsWidth',
  'contentsHeight',
  'clearance',
  'headroom',
  'fingerRoom',
  'lining',
  'dividersAcross',
  'dividersAlong',
  'dividerThickness',
];

export const sections = {
  contents: { title: 'What goes in it', inputs: contents },
  size: {
    title: 'Size and kind',
    inputs: ['kind', 'sizeFrom', 'wantedLength', 'wantedWidth', 'wantedHeight', 'wall'],
  },
  corners: {
    title: 'Corners',
    inputs: [
      'joint',
      'fingerWidth',
      'fingerFit',
      'tailCount',
      'dovetailSlope',
      'pinWidth',
      'keyCount',
      'keyThickness',
    ],
  },
  bottom: {
    title: 'Bottom',
    inputs: [
      'bottom',
      'bottomFit',
      'bottomSeat',
      'bottomThickness',
      'bottomTongue',
      'bottomLip',
      'grooveDepth',
      'bottomGap',
    ],
  },
  lid: {
    title: 'Lid',
    inputs: [
      'lid',
      'pull',
      'pullThickness',
      'lidThickness',
      'lidLip',
      'lidGrooveDepth',
      'lidPlay',
      'friction',
      'pullOffset',
      'lidHeight',
      'linerRise',
      'linerThickness',
      'lidRoom',
      'hingeLength',
    ],
  },
  wood: {
    title: 'Wood and air',
    inputs: ['species', 'ringAngle', 'temperature', 'humidityToday', 'humidityDry', 'humidityDamp'],
  },
  board: {
    title: 'The board',
    inputs: ['wallsFrom', 'boardLength', 'boardWidth', 'boardThickness', 'kerf', 'planing'],
  },
  errors: { title: 'Your own accuracy', inputs: ['angleError', 'lengthError', 'stepError', 'push'] },
} as const satisfies Record<string, Section>;

const mitred = (box: Box) => box.joint === 'keyed-mitre' || box.joint === 'splined-mitre';

/** Sizes that lead only while the size is given their way. Room around the contents shows always: it also limits what fits a given inside. */
const sizes: readonly Input[] = [
  'contentsLength',
  'contentsWidth',
  'contentsHeight',
  'wantedLength',
  'wantedWidth',
  'wantedHeight',
];

/** Other inputs that only some boxes have; all the rest always show. */
const onlyWhen: Partial<Record<Input, (box: Box) => boolean>> = {
  dividerThickness: (box) => box.dividersAcross + box.dividersAlong > 0,
  fingerWidth: (box) => box.joint === 'finger',
  fingerFit: (box) => box.joint === 'finger',
  stepError: (box) => box.joint === 'finger',
  tailCount: (box) => box.joint === 'dovetail',
  dovetailSlope: (box) => box.joint === 'dovetail',
  pinWidth: (box) => box.joint === 'dovetail',
  keyCount: (box) => box.joint === 'keyed-mitre',
  keyThickness: mitred,
  bottomTongue: (box) => box.bottomSeat === 'groove',
  bottomFit: (box) => box.bottom === 'plywood',
  bottomGap: (box) => box.bottom === 'solid' || box.bottomFit === 'floating',
  pull: (box) => box.kind === 'sliding',
  pullThickness: (box) => box.kind === 'sliding' && box.pull === 'glued',
  lidPlay: (box) => box.kind === 'sliding',
  friction: (box) => box.kind === 'sliding',
  pullOffset: (box) => box.kind === 'sliding',
  lidHeight: (box) => box.kind !== 'sliding',
  linerRise: (box) => box.kind === 'lift-off',
  linerThickness: (box) => box.kind === 'lift-off',
  lidRoom: (box) => box.kind === 'lift-off',
  hingeLength: (box) => box.kind === 'sawn',
};

/** The inputs of a section that this box has. */
export const inputsFor = (section: Section, box: Box): readonly Input[] =>
  section.inputs.filter((input) =>
    sizes.includes(input) ? isInForce(input, box) : (onlyWhen[input]?.(box) ?? true),
  );

/**
 * The sizes of a box that a maker marks or sets, and whether they lie on a ruler. Sizes of the contents are the
 * contents' own; what is left free around them, and beside panels, is no size.
 */

import { isOn, type Ruler } from '../../units/index.ts';
import { type Box, fields, hasInput, type NumberName } from '../subjects/inputs.ts';
import { bottomFloats } from '../subjects/movement/results.ts';
import type { Values } from '../whole/index.ts';

/** Inputs that are sizes, in the order in which they are brought onto a ruler. */
export const markedInputs = [
  'wall',
  'bottomLip',
  'lidLip',
  'bottomTongue',
  'bottomThickness',
  'lidThickness',
  'grooveDepth',
  'lidGrooveDepth',
  'linerThickness',
  'linerRise',
  'lidHeight',
  'pullThickness',
  'pinWidth',
  'keyThickness',
  'dividerThickness',
  'fingerWidth',
] as const satisfies readonly NumberName[];
export type MarkedInput = (typeof markedInputs)[number];

/** Sizes that follow, in the order in which they are brought onto a ruler. */
export type FollowingSize =
  | 'insideLength'
  | 'insideWidth'
  | 'outsideHeight'
  | 'jointedHeight'
  | 'bottomWidth'
  | 'lidWidth';

export interface RulerSize {
  readonly name: MarkedInput | FollowingSize;
  /** As a reader meets it. */
  readonly label: string;
  /** mm */
  readonly value: number;
  /** A panel, which may lie on the finer mark of the ruler. */
  readonly isPanel?: true;
}

const labels: Readonly<Record<FollowingSize, string>> = {
  insideLength: 'inside length',
  insideWidth: 'inside width',
  outsideHeight: 'outside height',
  jointedHeight: 'height of the walls as they are glued up',
  bottomWidth: 'width of the bottom',
  lidWidth: 'width of the lid',
};

/** A rabbet has no tongue of its own, but the height of its floor goes by the same number. */
export const isMarked = (name: MarkedInput, box: Box) => name === 'bottomTongue' || hasInput(name, box);

/** Every size of this box that belongs on a ruler. A panel is listed where the reader says what is left beside it. */
export function rulerSizes(v: Values): RulerSize[] {
  const follows = (name: FollowingSize) => ({ name, label: labels[name], value: v[name] });
  return [
    ...markedInputs
      .filter((name) => isMarked(name, v))
      .map((name) => ({ name, label: fields[name].label, value: v[name] })),
    follows('insideLength'),
    follows('insideWidth'),
    // A box that is sawn open is glued up higher, and that is the height its walls are cut to.
    follows(v.kind === 'sawn' ? 'jointedHeight' : 'outsideHeight'),
    ...(bottomFloats(v) ? [{ ...follows('bottomWidth'), isPanel: true as const }] : []),
    ...(v.kind === 'sliding' ? [{ ...follows('lidWidth'), isPanel: true as const }] : []),
  ];
}

/** Whether a size lies on the ruler; a panel also where it lies on its finer mark. */
export const liesOn = ({ value, isPanel }: RulerSize, { mark, fit }: Ruler): boolean =>
  isOn(value, mark) || (isPanel === true && isOn(value, fit));

/** The sizes of a box that lie between two marks. */
export const offRuler = (v: Values, ruler: Ruler): RulerSize[] =>
  rulerSizes(v).filter((size) => !liesOn(size, ruler));

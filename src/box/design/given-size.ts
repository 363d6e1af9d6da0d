/**
 * Sizes that follow from others, given directly: an inside or outside size, or the width of a lid that is to be cut from
 * a piece at hand. The box then takes its size from its inside or its outside, the two other sizes stay, and what gives
 * way is said.
 */
import type { Refused } from '../../calc/core/refusal.ts';
import { type Box, fields, inputsOf } from '../subjects/inputs.ts';
import { evaluate, type Values } from '../whole/index.ts';
import { both } from './refusal.ts';

const axes = ['Length', 'Width', 'Height'] as const;
type Axis = (typeof axes)[number];
const wanted = { Length: 'wantedLength', Width: 'wantedWidth', Height: 'wantedHeight' } as const;

/** The clear inside, within the liner where there is one; and the outside. */
const insideOf = { Length: 'clearLength', Width: 'clearWidth', Height: 'insideHeight' } as const;
const outsideOf = { Length: 'outsideLength', Width: 'outsideWidth', Height: 'outsideHeight' } as const;

interface Given {
  /** As a reader meets it. */
  readonly label: string;
  readonly axis: Axis;
  /** What the box takes its size from, once this is given. */
  readonly from: 'inside' | 'outside';
  /** The size that gives way, and what stays. */
  readonly moves: keyof Values;
  readonly moved: string;
  readonly stays: string;
}

const inside = (axis: Axis): Given => ({
  label: `inside ${axis.toLowerCase()}`,
  axis,
  from: 'inside',
  moves: outsideOf[axis],
  moved: `outside ${axis.toLowerCase()}`,
  stays: axis === 'Height' ? 'bottom and lid' : 'the walls',
});
const outside = (axis: Axis): Given => ({
  label: `outside ${axis.toLowerCase()}`,
  axis,
  from: 'outside',
  moves: insideOf[axis],
  moved: `inside ${axis.toLowerCase()}`,
  stays: axis === 'Height' ? 'bottom and lid' : 'the walls',
});

/** Results that can be given. */
export const givenSizes = {
  clearLength: inside('Length'),
  clearWidth: inside('Width'),
  insideHeight: inside('Height'),
  outsideLength: outside('Length'),
  outsideWidth: outside('Width'),
  outsideHeight: outside('Height'),
  lidWidth: {
    label: 'width of the lid',
    axis: 'Width',
    from: 'inside',
    moves: 'outsideWidth',
    moved: 'outside width',
    stays: 'play, grooves and walls',
  },
} as const satisfies Readonly<Partial<Record<keyof Values, Given>>>;
export type GivenSize = keyof typeof givenSizes;

/** Nearer than this a size is what was asked for, mm. */
const near = 1e-6;

/** What the box becomes with this size, and what gives way, in a sentence. */
export interface GivenChange {
  readonly inputs: Partial<Box>;
  readonly says: string;
}

/**
 * Gives a result of the box a wanted size.
 * @param size mm
 * @returns refused where the input behind it cannot be so large or small
 */
export function giveSize(values: Values, result: GivenSize, size: number): GivenChange | Refused {
  const of: Given = givenSizes[result];
  const now = of.from === 'inside' ? insideOf : outsideOf;
  const inputs = {
    sizeFrom: of.from,
    wantedLength: values[now.Length],
    wantedWidth: values[now.Width],
    wantedHeight: values[now.Height],
  };
  const box: Box = { ...inputsOf(values), ...inputs };
  const lead = wanted[of.axis];
  const at = (value: number) => evaluate({ ...box, [lead]: value });
  // Every size follows the inside or outside in a straight line: two points of it tell where it has the wanted value.
  const [here, there] = [at(box[lead])[result], at(box[lead] + 1)[result]];
  const to = box[lead] + (size - here) / (there - here);
  const { low, high } = fields[lead];
  if (!(to >= low - near && to <= high + near))
    return {
      refused: `The ${of.from} ${of.axis.toLowerCase()} would be ${both(to)}; it can be ${both(low)} to ${both(high)}.`,
    };
  const after = at(to);
  const freed = values.sizeFrom === 'contents' ? ' What goes in no longer sets the size of the box.' : '';
  return {
    inputs: { ...inputs, [lead]: to },
    says: `The ${of.moved} goes from ${both(values[of.moves] as number)} to ${both(after[of.moves] as number)}; ${of.stays} stay.${freed}`,
  };
}

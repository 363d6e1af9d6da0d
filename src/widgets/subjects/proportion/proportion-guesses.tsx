/** Guesses of the lesson on proportion. */
import type { Box } from '../../../box/subjects/inputs.ts';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { fitsFrame, fitsRange, InsideOfIt } from '../../../figures/proportion/InsideOfIt.tsx';
import { SameShape, sameShape, shapeFrame, shapeRange } from '../../../figures/proportion/SameShape.tsx';
import { longFrame, longRange, WantedInside } from '../../../figures/proportion/WantedInside.tsx';
import { INCH, type UnitSystem } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Length = ({ of }: { of: number }) => <Quantity value={of} kind="length" digits={1} denominator={32} />;
const field = { kind: 'length', step: 1, inchStep: INCH / 16, digits: 1 } as const;

/** Three to two outside, on each reader's rulers. */
const threeToTwo = (system: UnitSystem): Partial<Box> =>
  system === 'mm'
    ? { sizeFrom: 'outside', wantedLength: 180, wantedWidth: 120, wall: 12, wantedRatio: 1.5 }
    : {
        sizeFrom: 'outside',
        wantedLength: 7.5 * INCH,
        wantedWidth: 5 * INCH,
        wall: INCH / 2,
        wantedRatio: 1.5,
      };

export const proportionGuesses: Readonly<Record<string, GuessSpec>> = {
  'inside-of-it': {
    type: 'number',
    label: 'inside length',
    event: 'Build it',
    field: { ...field, ...fitsRange },
    pins: (system) =>
      system === 'mm'
        ? { sizeFrom: 'outside', wantedLength: 152, wantedWidth: 102, wall: 19 }
        : { sizeFrom: 'outside', wantedLength: 6 * INCH, wantedWidth: 4 * INCH, wall: 0.75 * INCH },
    figure: InsideOfIt,
    frame: fitsFrame,
    start: (v) => v.outsideLength - v.wall,
    truth: (v) => v.insideLength,
    controls: ['wall'],
    answer: (v) => (
      <>
        Inside it is <Length of={v.insideLength} /> by <Length of={v.insideWidth} />
        {v.insideWidth < 65 && ': a playing card just fails to drop in'}.
      </>
    ),
  },
  'same-shape': {
    type: 'number',
    label: 'end of a 3 to 2 inside',
    event: 'Lay it in',
    field: { ...field, ...shapeRange },
    pins: threeToTwo,
    figure: SameShape,
    frame: shapeFrame,
    start: (v) => v.insideLength,
    truth: sameShape,
    controls: ['wall'],
    answer: (v) => (
      <>
        Three to two would end at <Length of={sameShape(v)} />. The inside is <Length of={v.insideLength} />{' '}
        long: longer for its width, 1 to <Quantity value={v.insideRatio} kind="ratio" digits={2} />.
      </>
    ),
  },
  'wanted-inside': {
    type: 'number',
    label: 'outside length',
    event: 'Move the end',
    field: { ...field, ...longRange },
    pins: threeToTwo,
    figure: WantedInside,
    frame: longFrame,
    start: (v) => v.outsideLength,
    truth: (v) => v.lengthForInside,
    controls: ['wantedRatio'],
    answer: (v) => (
      <>
        It must be <Length of={v.lengthForInside} /> long: the outside has to give way.
      </>
    ),
  },
};

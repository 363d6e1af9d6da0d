/** Guesses of the lesson on contents. */

import { boxAround, leastBulk } from '../../../box/design/lying.ts';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { Compartments, insideFrame, insideRange } from '../../../figures/size/Compartments.tsx';
import { LyingPick } from '../../../figures/size/LyingPick.tsx';
import { OutsideGuess, outsideFrame, outsideRange } from '../../../figures/size/OutsideGuess.tsx';
import { heightFrame, heightRange, StackGuess } from '../../../figures/size/StackGuess.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Length = ({ of }: { of: number }) => <Quantity value={of} kind="length" digits={1} denominator={32} />;
const field = { kind: 'length', step: 0.5, inchStep: INCH / 32, digits: 1 } as const;

export const startGuesses: Readonly<Record<string, GuessSpec>> = {
  'outside-of-contents': {
    type: 'number',
    label: 'outside length',
    event: 'Build the rest',
    field: { ...field, ...outsideRange },
    pins: (system) =>
      system === 'mm'
        ? { contentsLength: 150, contentsWidth: 90, clearance: 5, fingerRoom: 0, lining: 0, wall: 12 }
        : {
            contentsLength: 6 * INCH,
            contentsWidth: 3.5 * INCH,
            clearance: (3 / 16) * INCH,
            fingerRoom: 0,
            lining: 0,
            wall: INCH / 2,
          },
    figure: OutsideGuess,
    frame: outsideFrame,
    start: (v) => v.contentsLength,
    truth: (v) => v.outsideLength,
    controls: ['wall'],
    answer: (v) => (
      <>
        <Length of={v.outsideLength} />: the contents, room twice and a wall twice. Each end counts.
      </>
    ),
  },
  'four-compartments': {
    type: 'number',
    label: 'inside length',
    event: 'Put them in',
    field: { ...field, ...insideRange },
    pins: (system) =>
      system === 'mm'
        ? {
            contentsLength: 80,
            clearance: 0,
            fingerRoom: 0,
            lining: 1.5,
            dividersAcross: 3,
            dividerThickness: 4,
            wall: 9,
          }
        : {
            contentsLength: 3.25 * INCH,
            clearance: 0,
            fingerRoom: 0,
            lining: INCH / 16,
            dividersAcross: 3,
            dividerThickness: (5 / 32) * INCH,
            wall: (3 / 8) * INCH,
          },
    figure: Compartments,
    frame: insideFrame,
    start: (v) => v.contentsLength,
    truth: (v) => v.insideLength,
    controls: ['dividersAcross'],
    answer: (v) => (
      <>
        <Length of={v.insideLength} />: the lining counts twice, each divider once, and each needs a hair to
        slide in. Every one of them takes room away, none gives it back.
      </>
    ),
  },
  'height-of-the-stack': {
    type: 'number',
    label: 'outside height',
    event: 'Slide the lid in',
    field: { ...field, ...heightRange },
    pins: (system) =>
      system === 'mm'
        ? {
            contentsHeight: 25,
            headroom: 10,
            lining: 0,
            bottomLip: 9,
            bottomTongue: 4,
            lidThickness: 5,
            lidLip: 4,
            wall: 9,
          }
        : {
            contentsHeight: INCH,
            headroom: (3 / 8) * INCH,
            lining: 0,
            bottomLip: (3 / 8) * INCH,
            bottomTongue: (5 / 32) * INCH,
            lidThickness: (3 / 16) * INCH,
            lidLip: (5 / 32) * INCH,
            wall: (3 / 8) * INCH,
          },
    figure: StackGuess,
    frame: heightFrame,
    start: (v) => v.insideHeight,
    truth: (v) => v.outsideHeight,
    controls: ['headroom'],
    answer: (v) => (
      <>
        <Length of={v.outsideHeight} /> high, for <Length of={v.insideHeight} /> inside: what holds bottom and
        lid takes the rest.
      </>
    ),
  },
  'how-they-lie': {
    type: 'pick',
    label: 'Which way of laying 28 dominoes makes the smallest box?',
    event: 'Build all three',
    pins: (system) => ({
      lining: 0,
      fingerRoom: 0,
      dividersAcross: 0,
      dividersAlong: 0,
      wall: system === 'mm' ? 9 : (3 / 8) * INCH,
    }),
    options: {
      flat: 'flat, in two layers',
      edge: 'on edge, in three rows',
      end: 'on end',
    },
    option: LyingPick,
    truth: leastBulk,
    answer: (v) => {
      const box = boxAround(v, leastBulk(v));
      return (
        <>
          On end: <Length of={box.outsideLength} /> by <Length of={box.outsideWidth} /> by{' '}
          <Length of={box.outsideHeight} /> outside. It is near a cube, and a cube has the least wall around
          what it holds.
        </>
      );
    },
  },
};

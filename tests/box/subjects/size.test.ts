/** Sizes of the current box, added up by hand. */
import { describe, expect, test } from 'vitest';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { evaluate } from '../../../src/box/whole/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const sizesOf = (inputs: Partial<Box> = {}) => {
  const v = evaluate({ ...exampleBox, ...inputs });
  return {
    inside: [v.insideLength, v.insideWidth, v.insideHeight],
    outside: [v.outsideLength, v.outsideWidth, v.outsideHeight],
  };
};

describe('the size of a box', () => {
  test('follows from its contents: two rooms and two walls on each side, and a stack of five upward', () => {
    // Contents 175 × 100 × 18, room 3, headroom 9.5, walls 9.5; stack 5 + 3.5 + 27.5 + 5.5 + 3.5.
    expect(sizesOf()).toEqual({ inside: [181, 106, 27.5], outside: [200, 125, 45] });
  });

  test('grows by linings, dividers and finger room before it is cut', () => {
    // Length 175 + 6 + 20 + 2 × 1.5 + 1 × (4 + 0.25); width 100 + 6 + 3 + 2 × 4.25; height 18 + 9.5 + 1.5.
    const { inside } = sizesOf({ fingerRoom: 20, lining: 1.5, dividersAcross: 1, dividersAlong: 2 });
    expect(inside[0]).toBeCloseTo(208.25, 9);
    expect(inside[1]).toBeCloseTo(117.5, 9);
    expect(inside[2]).toBeCloseTo(29, 9);
  });

  test('follows from a wanted inside', () => {
    const wanted = {
      sizeFrom: 'inside',
      wantedLength: 203,
      wantedWidth: 70,
      wantedHeight: 40,
      wall: 8,
    } as const;
    expect(sizesOf(wanted)).toEqual({ inside: [203, 70, 40], outside: [219, 86, 57.5] });
  });

  test('follows from a wanted outside, which comes out as wanted', () => {
    // 150 × 100 outside in 19 mm stock leaves 112 × 62: the box that was too small for its cards.
    const wanted = {
      sizeFrom: 'outside',
      wantedLength: 150,
      wantedWidth: 100,
      wantedHeight: 60,
      wall: 19,
    } as const;
    expect(sizesOf(wanted)).toEqual({ inside: [112, 62, 42.5], outside: [150, 100, 60] });
  });
});

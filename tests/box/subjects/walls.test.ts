/** What the lesson on wall thickness finds in a box. */
import { describe, expect, test } from 'vitest';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { evaluate, verdicts } from '../../../src/box/whole/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const inch = 25.4;
const state = (rule: string, box: Partial<Box>) =>
  verdicts(evaluate({ ...exampleBox, ...box })).find(({ check }) => check.rule === rule)?.state;
const outside = (length: number, width: number, wall: number) =>
  state('wall-thickness', { sizeFrom: 'outside', wantedLength: length, wantedWidth: width, wall });

describe('wall thickness', () => {
  // Common practice, no source.
  test('3/8 in is usual on a box 5 by 8 in, and unusual on one half the size', () => {
    expect(outside(8 * inch, 5 * inch, (3 / 8) * inch)).toBe('usual');
    expect(outside(4 * inch, 2.5 * inch, (3 / 8) * inch)).toBe('unusual');
  });

  test('looks at the longest side, whichever it is', () => {
    expect(outside(5 * inch, 8 * inch, (3 / 8) * inch)).toBe('usual');
    expect(
      state('wall-thickness', {
        sizeFrom: 'outside',
        wantedLength: 100,
        wantedWidth: 100,
        wantedHeight: 200,
      }),
    ).toBe('usual');
  });

  test('1/8 in is thin and 3/4 in thick on the example', () => {
    expect(state('wall-thickness', {})).toBe('usual');
    expect(state('wall-thickness', { wall: inch / 8 })).toBe('unusual');
    expect(state('wall-thickness', { wall: (3 / 4) * inch })).toBe('unusual');
  });
});

describe('bottom thickness', () => {
  // Common practice, no source.
  test('a solid bottom of 6 mm or 1/4 in passes, up to 8 mm or 5/16 in, less is flagged', () => {
    const solid = (bottomThickness: number) =>
      state('bottom-thickness', { bottom: 'solid', bottomThickness });
    expect(solid(inch / 4)).toBe('usual');
    expect(solid((5 / 16) * inch)).toBe('usual');
    expect(solid(8)).toBe('usual');
    expect(solid((7 / 32) * inch)).toBe('unusual');
    expect(solid(6)).toBe('usual');
    expect(solid(5.9)).toBe('unusual');
    expect(solid((1 / 8) * inch)).toBe('unusual');
  });

  // Common practice, no source.
  test('plywood of 3 mm or 1/8 in passes on a short span; beyond 200 mm (8 in) it takes 6 mm or 1/4 in', () => {
    const plywood = (bottomThickness: number, size: number) =>
      state('bottom-thickness', {
        bottom: 'plywood',
        bottomThickness,
        sizeFrom: 'inside',
        wantedLength: size,
        wantedWidth: size,
      });
    for (const short of [3, inch / 8, 4, 6, inch / 4]) expect(plywood(short, 180)).toBe('usual');
    expect(plywood(2.5, 180)).toBe('unusual');
    expect(plywood(4, 250)).toBe('unusual');
    for (const long of [6, inch / 4]) expect(plywood(long, 250)).toBe('usual');
  });
});

describe('mass', () => {
  test('the example in cherry is its parts weighed one by one', () => {
    // Outside 200 × 125 × 45 mm, inside 181 × 106: by hand (200 · 125 − 181 · 106) · 45 + 181 · 106 · (6.5 + 5.5)
    // = 491 862 mm³; cherry 0.50 · 1.12 g/cm³ (Wood Handbook, Table 5-3a).
    const sizes = { sizeFrom: 'outside', wantedLength: 200, wantedWidth: 125, wantedHeight: 45 } as const;
    expect(evaluate({ ...exampleBox, ...sizes }).emptyMass).toBeCloseTo(491.862 * 0.56, 6);
  });

  test('a wood without a figure gets no number', () => {
    const without = evaluate({ ...exampleBox, species: 'no-such-wood' });
    expect(without.emptyMass).toBeNaN();
    expect(without.sidePushFree).toBeNaN();
  });

  test('an imported wood is denser dry than its green specific gravity says', () => {
    const teak = evaluate({ ...exampleBox, species: 'teak' });
    // Wood Handbook, Table 5-5: 0.55 on the green volume; eq. 4-13 and 4-14 by hand: 0.6027 · 1120 = 675.
    expect(teak.woodDensity).toBeCloseTo(675, 0);
  });
});

test('6 by 4 in outside in 3/4 in boards is too small for 6 by 4 in cards', () => {
  // Common practice, no source: a first box that failed; 150 × 100 mm outside leaves 114 × 63 mm inside.
  const cards = { contentsLength: 6 * inch, contentsWidth: 4 * inch, sizeFrom: 'outside' } as const;
  const box = { ...cards, wantedLength: 6 * inch, wantedWidth: 4 * inch, wantedHeight: 60 };
  expect(state('walls-cost-inside-volume', { ...box, wall: (3 / 4) * inch })).toBe('breaks');
  expect(state('walls-cost-inside-volume', {})).toBe('usual');
});

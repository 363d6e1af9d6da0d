/** What the rules of proportion say about a box, and where they change their mind. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { isInForce } from '../../../src/box/subjects/inputs.ts';
import { evaluate, verdicts } from '../../../src/box/whole/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const values = (changes: Partial<Box> = {}) => evaluate({ ...exampleBox, ...changes });
const state = (rule: string, changes: Partial<Box> = {}, label?: string) =>
  verdicts(values(changes)).find(
    ({ check }) => check.rule === rule && (label === undefined || check.label === label),
  )?.state;
const outside = (length: number, width: number, height = 45): Partial<Box> => ({
  sizeFrom: 'outside',
  wantedLength: length,
  wantedWidth: width,
  wantedHeight: height,
});

describe('the example, a domino box', () => {
  // 175 + 2 × 3 + 2 × 9.5 = 200; 100 + 6 + 19 = 125; 5 + 4 + 27 + 5.5 + 3.5 = 45: by hand.
  test('is 200 by 125 by 45 mm: 8 to 5, and 36 hundredths of its width high', () => {
    expect(values().outsideRatio).toBeCloseTo(1.6, 9);
    expect(values().heightShare).toBeCloseTo(0.36, 9);
  });

  test('is 181 by 106 mm inside, so longer for its width than outside', () => {
    expect(values().insideRatio).toBeCloseTo(181 / 106, 9);
  });

  test.each([
    'design-from-the-inside',
    'outside-is-inside-plus-two-walls',
    'simple-ratio',
    'height-from-width',
  ])('keeps the rule %s', (rule) => {
    expect(state(rule)).toBe('usual');
  });

  test('has neither lining nor dividers, so their rule is silent', () => {
    expect(state('linings-and-dividers-first')).toBeUndefined();
  });
});

describe('verdicts', () => {
  test('a wanted outside that is too small breaks the first rule: the 6 by 4 in box in 3/4 in stock', () => {
    // An actual case: 150 by 100 mm outside leaves 112 by 62 inside, too small for cards of 88.9 by 63.5 mm.
    const cards = { contentsLength: 88.9, contentsWidth: 63.5, wall: 19, ...outside(150, 100) };
    expect(state('design-from-the-inside', cards)).toBe('breaks');
    expect(state('design-from-the-inside', { ...cards, wall: 9.5 })).not.toBe('breaks');
  });

  test('room on each side is unusual below 3 mm and above 6 mm', () => {
    const at = (clearance: number) =>
      state('design-from-the-inside', { clearance }, 'room on each side of the contents');
    expect([0, 2.5, 3, 6, 6.5].map(at)).toEqual(['unusual', 'unusual', 'usual', 'usual', 'unusual']);
  });

  test('no room above the contents is unusual, less than none breaks', () => {
    const at = (headroom: number) => state('design-from-the-inside', { headroom }, 'room above the contents');
    expect([0, 1, 9].map(at)).toEqual(['unusual', 'usual', 'usual']);
    expect(state('design-from-the-inside', outside(200, 125, 30), 'room above the contents')).toBe('breaks');
  });

  test('lining and dividers are counted into an inside made for the contents', () => {
    expect(state('linings-and-dividers-first', { lining: 1.5, dividersAcross: 2 })).toBe('usual');
  });

  test('lining that was not counted into a given inside breaks the fit', () => {
    // 3 mm on each side of the contents: felt of 1.5 mm leaves 3 mm in all, of 3 mm none, of 3.5 mm 1 mm too few.
    const given: Partial<Box> = { sizeFrom: 'inside', wantedLength: 181, wantedWidth: 106, wantedHeight: 27 };
    const at = (lining: number) => state('linings-and-dividers-first', { ...given, lining });
    expect([1.5, 3, 3.5].map(at)).toEqual(['usual', 'unusual', 'breaks']);
    expect(state('linings-and-dividers-first', { ...given, dividersAcross: 2 })).toBe('breaks');
  });

  test('walls that meet break the box', () => {
    expect(state('outside-is-inside-plus-two-walls', { wall: 25, ...outside(200, 50) })).toBe('breaks');
    expect(values({ wall: 25, ...outside(200, 50) }).insideRatio).toBeNaN();
  });

  test('a ratio is usual from 3:2 to 9:5, whichever side is called the length', () => {
    const at = (length: number, width: number) => state('simple-ratio', outside(length, width));
    expect(at(149, 100)).toBe('unusual');
    expect(at(150, 100)).toBe('usual');
    expect(at(100, 150)).toBe('usual');
    expect(at(180, 100)).toBe('usual');
    expect(at(181, 100)).toBe('unusual');
  });

  test('a height is usual from a third to a half of the width', () => {
    const at = (height: number) => state('height-from-width', outside(200, 120, height));
    expect([39, 40, 60, 61].map(at)).toEqual(['unusual', 'usual', 'usual', 'unusual']);
  });
});

describe('what it would take', () => {
  test('a golden inside 100 mm wide in 10 mm walls: an outside 181.8 mm long', () => {
    // 100 × 1.618 + 2 × 10: by hand.
    const found = values({ ...outside(200, 120), wall: 10, wantedRatio: 1.618 });
    expect(found.lengthForInside).toBeCloseTo(181.8, 6);
    expect(found.lengthForRatio).toBeCloseTo(1.618 * 120, 6);
    expect(found.widthForRatio).toBeCloseTo(200 / 1.618, 6);
  });

  test('making the outside so long does give the wanted inside ratio', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 400, noNaN: true }),
        fc.double({ min: 3, max: 25, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (width, wall, wantedRatio) => {
          const { lengthForInside } = values({ ...outside(200, width), wall, wantedRatio });
          const made = values({ ...outside(lengthForInside, width), wall });
          expect(made.insideRatio).toBeCloseTo(wantedRatio, 9);
        },
      ),
    );
  });

  test('two dividers of 4 mm share 181 mm into three compartments of 57.5 mm', () => {
    // (181 − 2 × 4.25) / 3 = 57.5: by hand.
    const given: Partial<Box> = { sizeFrom: 'inside', wantedLength: 181, wantedWidth: 106, wantedHeight: 27 };
    expect(values({ ...given, dividersAcross: 2 }).compartmentLength).toBeCloseTo(57.5, 9);
  });
});

test('only the inputs that give the size are in force', () => {
  expect(isInForce('contentsLength', exampleBox)).toBe(true);
  expect(isInForce('wantedLength', exampleBox)).toBe(false);
  expect(isInForce('contentsLength', { ...exampleBox, sizeFrom: 'outside' })).toBe(false);
  expect(isInForce('wantedLength', { ...exampleBox, sizeFrom: 'inside' })).toBe(true);
  expect(isInForce('wall', exampleBox)).toBe(true);
});

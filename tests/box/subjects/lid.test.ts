/** The run of the box's own lid: numbers worked by hand, and what the checks say. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { evaluate, verdicts } from '../../../src/box/whole/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const of = (inputs: Partial<Box> = {}) => evaluate({ ...exampleBox, ...inputs });
const stateOf = (rule: string, inputs: Partial<Box> = {}) =>
  verdicts(of(inputs)).find(({ check }) => check.rule === rule)?.state;

describe('the lid of the example, 181 mm long inside, 112.8 mm wide, friction 0.46, pulled 10 mm off the middle', () => {
  test('is held over 97 mm half open, jams at 9.2 mm and drags 1.10 times as hard', () => {
    // (181 + 9.5 + 4)/2; 2 · 0.46 · 10; 1/(1 − 9.2/97.25); 0.46 · (106 + 8 − 1.2).
    const v = of();
    expect(v.lidHeldHalfOpen).toBeCloseTo(97.25, 9);
    expect(v.jamLength).toBeCloseTo(9.2, 9);
    expect(v.dragFactor).toBeCloseTo(1.1, 2);
    expect(v.jamLengthAtEdge).toBeCloseTo(51.9, 1);
  });
  test('is usual for both rules', () => {
    expect(stateOf('pull-in-the-middle')).toBe('usual');
    expect(stateOf('long-lids-run-short-ones-jam')).toBe('usual');
  });
});

test('half open is half of the lid as it is drawn', () => {
  const size = fc.integer({ min: 60, max: 300 });
  fc.assert(
    fc.property(size, size, fc.integer({ min: 8, max: 14 }), (wantedLength, wantedWidth, wall) => {
      const { lidRun, values } = designBox({
        ...exampleBox,
        sizeFrom: 'inside',
        wantedLength,
        wantedWidth,
        wall,
      });
      expect(values.lidHeldHalfOpen).toBeCloseTo(lidRun!.guided / 2, 9);
    }),
    { numRuns: 30 },
  );
});

/** 60 mm long and 120 mm wide inside: (60 + 9.5 + 4)/2 = 36.75 mm held half open, a lid of 126.8 mm. */
const wide = { sizeFrom: 'inside', wantedLength: 60, wantedWidth: 120 } as const;

describe('a lid wider than it is long', () => {
  test.each([
    // Jam lengths 2 · 0.46 · e: 9.2, 23, 46 mm against 36.75 mm.
    [10, 'usual'],
    [25, 'unusual'],
    [50, 'breaks'],
  ] as const)('pulled %d mm off the middle: %s', (pullOffset, state) => {
    expect(stateOf('pull-in-the-middle', { ...wide, pullOffset })).toBe(state);
  });
  test('jams pulled at its edge, and waxed does not', () => {
    // 0.46 · 126.8 = 58 mm, 0.2 · 126.8 = 25 mm.
    expect(stateOf('long-lids-run-short-ones-jam', wide)).toBe('unusual');
    expect(stateOf('long-lids-run-short-ones-jam', { ...wide, friction: 0.2 })).toBe('usual');
  });
  test('that jams has no drag to give', () => {
    expect(of({ ...wide, pullOffset: 50 }).dragFactor).toBeNaN();
  });
  test('is not cured by more play', () => {
    for (const lidPlay of [0.5, 2, 4])
      expect(stateOf('pull-in-the-middle', { ...wide, pullOffset: 50, lidPlay })).toBe('breaks');
  });
});

test('a lid that does not slide is not judged', () => {
  expect(stateOf('pull-in-the-middle', { kind: 'sawn' })).toBeUndefined();
  expect(stateOf('long-lids-run-short-ones-jam', { kind: 'lift-off' })).toBeUndefined();
});

describe('where the box opens', () => {
  test('the front of the example ends 8 mm below its sides, and its thin lid leaves 1.2 mm for a notch', () => {
    // 3.5 mm above a groove of 4.5 mm; 4.5 − 0.3 − 3.
    const v = of({ lidLip: 3.5, lidThickness: 4.5 });
    expect(v.frontLowered).toBeCloseTo(8, 9);
    expect(v.notchDepth).toBeCloseTo(1.2, 9);
    expect(of({ lidThickness: 8 }).notchDepth).toBe(4);
  });
  test.each([
    // A sawn box 100 mm high outside: 15, 30 and 50 mm are 0.15, 0.3 and 0.5 of it.
    [15, 'unusual'],
    [30, 'usual'],
    [50, 'unusual'],
  ] as const)('a lid of %d mm on a box 100 mm high: %s', (lidHeight, state) => {
    const inputs = { kind: 'sawn', sizeFrom: 'outside', wantedHeight: 100, lidHeight } as const;
    expect(of(inputs).lidShare).toBeCloseTo(lidHeight / 100, 9);
    expect(stateOf('lid-line', inputs)).toBe(state);
  });
  test('a sliding lid has no lid line to choose', () => {
    expect(stateOf('lid-line')).toBeUndefined();
  });
});

describe('the fit of a lift-off lid', () => {
  test.each([
    [0.1, 'unusual'],
    [0.3, 'usual'],
    [0.8, 'unusual'],
  ] as const)('with %d mm of room at each side: %s', (lidRoom, state) => {
    expect(stateOf('lift-off-fit', { kind: 'lift-off', lidRoom })).toBe(state);
  });
  test('is not judged where a lid slides', () => {
    expect(stateOf('lift-off-fit')).toBeUndefined();
  });
});

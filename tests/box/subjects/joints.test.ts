/** What the notebook says about the corners of a box. Limits are common practice, no source, unless named. */
import { describe, expect, test } from 'vitest';
import { judge } from '../../../src/box/core/verdict.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { jointsChecks } from '../../../src/box/subjects/joints/verdicts.ts';
import { evaluate, verdicts } from '../../../src/box/whole/index.ts';
import { exampleBox } from '../reckoned-box.ts';

/** State by rule, for the example with these changes. */
function states(changes: Partial<Box> = {}): Record<string, string> {
  const values = evaluate({ ...exampleBox, ...changes });
  return Object.fromEntries(
    jointsChecks.flatMap((check) => {
      const verdict = judge(check, values);
      return verdict ? [[check.id, verdict.state]] : [];
    }),
  );
}
const tall = (wantedHeight: number): Partial<Box> => ({ sizeFrom: 'outside', wantedHeight });

describe('the example box', () => {
  const values = evaluate(exampleBox);

  // 5 + 4 + (18 + 9) + 5.5 + 3.5 = 45 mm high, five fingers of 9 mm.
  test('is five whole fingers high', () => {
    expect(values.outsideHeight).toBe(45);
    expect(values.fingerCount).toBe(5);
    expect(values.edgeSliver).toBe(0);
    expect(values.oddCount).toBe(5);
  });

  // Five fingers: the jig steps twice; four cheeks of 9.5 mm square are 361 mm².
  test('takes two steps of the jig and has four cheeks', () => {
    expect(values.jigSteps).toBe(2);
    expect(values.addedStepError).toBeCloseTo(0.06, 9);
    expect(values.longGrainArea).toBe(361);
  });

  // Black cherry, tangential 0.00248 (Wood Handbook Table 13-5): 9 × 0.00248 × 5 = 0.1116 mm.
  test('swells by about a tenth of a millimeter a finger when the glue wets it', () => {
    expect(values.fingerSwelling).toBeCloseTo(0.1116, 4);
  });

  test('passes every check of its joints', () => {
    expect(new Set(Object.values(states()))).toEqual(new Set(['usual']));
    expect(Object.keys(states())).toHaveLength(7);
  });
});

describe('checks flip where they should', () => {
  test('a box one millimeter higher is left with a sliver and no odd whole number', () => {
    expect(states(tall(46))).toMatchObject({
      'no-sliver-at-the-edge': 'unusual',
      'odd-finger-count': 'unusual',
    });
  });

  test('an even whole number has no sliver but is not odd', () => {
    expect(states(tall(54))).toMatchObject({
      'no-sliver-at-the-edge': 'usual',
      'odd-finger-count': 'unusual',
    });
  });

  test('nine quarter-inch fingers in 2 1/4 in are whole and odd, in spite of rounding', () => {
    expect(states({ ...tall(2.25 * 25.4), fingerWidth: 6.35 })).toMatchObject({
      'no-sliver-at-the-edge': 'usual',
      'odd-finger-count': 'usual',
    });
  });

  test.each([
    [4.5, 'unusual'],
    [4.75, 'usual'],
    [9.5, 'usual'],
    [10, 'unusual'],
  ])('a finger of %s mm in a wall of 9.5 mm is %s', (fingerWidth, state) => {
    expect(states({ fingerWidth })['finger-width']).toBe(state);
  });

  test.each([
    [0, 'unusual'],
    [0.05, 'usual'],
    [0.1, 'usual'],
    [0.11, 'unusual'],
    [0.31, 'breaks'],
  ])('a fit of %s mm is %s', (fingerFit, state) => {
    expect(states({ fingerFit })['finger-fit']).toBe(state);
  });

  // Two steps: 2 × 0.05 = 0.10 mm is all the play there is, 2 × 0.06 is more.
  test.each([
    [0.05, 'usual'],
    [0.06, 'unusual'],
  ])('steps that are off by %s mm against a play of 0.1 mm are %s', (stepError, state) => {
    expect(states({ stepError })['step-error-adds-up']).toBe(state);
  });

  test('a plain miter, a rabbet and a butt joint have no long grain to glue, and no finger checks', () => {
    for (const joint of ['mitre', 'rabbet', 'butt'] as const)
      expect(states({ joint, fingerWidth: 20, fingerFit: 0.5 })).toEqual({
        'long-grain-to-long-grain': 'unusual',
      });
  });

  // Four tails have eight slanted cheeks: 8 × 9.5² × √(1 + 1/49) = 729 mm², against half the end face, 214 mm².
  test('dovetails count their slanted cheeks', () => {
    expect(states({ joint: 'dovetail', tailCount: 4 })['long-grain-to-long-grain']).toBe('usual');
    expect(evaluate({ ...exampleBox, joint: 'dovetail', tailCount: 4 }).longGrainArea).toBeCloseTo(729.3, 1);
  });

  test('tails with a neck finer than half the wall are named, in the box and in a low lid', () => {
    const tails: Partial<Box> = { joint: 'dovetail', wall: 9.5, tailCount: 2, pinWidth: 5, dovetailSlope: 7 };
    // 45 / 2 − 5 − 2·9.5/7 = 14.79 at the root, and 20 / 2 − 5 − 2.71 = 2.29 in a lid 20 high.
    const judged = (box: Partial<Box>) =>
      Object.fromEntries(
        verdicts(evaluate({ ...exampleBox, ...box })).map(({ check, state, measured }) => [
          check.id,
          [state, measured.toFixed(2)],
        ]),
      );
    expect(judged(tails)['finger-width-tail']).toEqual(['usual', '14.79']);
    expect(
      judged({ ...tails, kind: 'lift-off', lidHeight: 20, headroom: 29.5 })['finger-width-tail-lid'],
    ).toEqual(['unusual', '2.29']);
  });

  test('a plain miter is told to take keys, not finer fingers; the walls of five heights hear the right direction', () => {
    const because = (box: Partial<Box>, id: string) =>
      verdicts(evaluate({ ...exampleBox, ...box })).find(({ check }) => check.id === id)!.because;
    expect(because({ joint: 'mitre' }, 'long-grain-to-long-grain')).toMatch(/keys or a spline/);
    expect(because({ joint: 'mitre' }, 'long-grain-to-long-grain')).not.toMatch(/fingers/);
    for (const wantedHeight of [37, 40, 43, 47, 50, 52]) {
      const box = { ...exampleBox, sizeFrom: 'outside', wantedHeight, fingerWidth: 9 } as const;
      const { oddCount, jointedHeight } = evaluate(box);
      const higher = oddCount * 9 > jointedHeight;
      expect(because(box, 'odd-finger-count')).toMatch(higher ? /more height/ : /less height/);
      // Taken at its word, it comes out: the odd count fills the height that way.
      expect(Math.sign(oddCount * 9 - wantedHeight)).toBe(higher ? 1 : -1);
    }
  });

  test('the long grain of keys and splines is not counted, so that rule says nothing about them', () => {
    expect(states({ joint: 'splined-mitre' })).toEqual({});
    expect(Object.keys(states({ joint: 'keyed-mitre' }))).toEqual(['keys-and-splines']);
  });

  // 45 mm: two keys have 22.5 mm each, one has all of it. 90 mm: two have 45, three 30, four 22.5.
  test.each([
    [45, 1, 'unusual'],
    [45, 2, 'usual'],
    [90, 2, 'unusual'],
    [90, 3, 'usual'],
    [90, 4, 'unusual'],
  ])('a corner %s mm high with %s keys is %s', (wantedHeight, keyCount, state) => {
    const box = { joint: 'keyed-mitre', sizeFrom: 'outside', wantedHeight, keyCount } as const;
    expect(states(box)['keys-and-splines']).toBe(state);
  });

  // 60 mm and pins of 5 mm: three tails of 15 mm are 3 pins wide, two of 25 mm are 5, four of 10 mm are 2, six are 1.
  test.each([
    [2, 5, 'unusual'],
    [3, 5, 'usual'],
    [4, 5, 'usual'],
    [6, 5, 'unusual'],
  ])('%s tails beside pins of %s mm in 60 mm are %s', (tailCount, pinWidth, state) => {
    const box = { joint: 'dovetail', sizeFrom: 'outside', wantedHeight: 60, tailCount, pinWidth } as const;
    expect(states(box)['half-pins-tails']).toBe(state);
  });

  // A chisel of 3 mm or 1/8 in clears its socket; the slope is usual from 1 in 5 to 1 in 8.
  test('pins finer than a chisel, and slopes outside 1 in 5 to 1 in 8, are named', () => {
    expect(states({ joint: 'dovetail', pinWidth: 2.5 })['half-pins']).toBe('unusual');
    expect(states({ joint: 'dovetail', pinWidth: 3 })['half-pins']).toBe('usual');
    for (const [dovetailSlope, state] of [
      [4, 'unusual'],
      [5, 'usual'],
      [8, 'usual'],
      [9, 'unusual'],
    ] as const)
      expect(states({ joint: 'dovetail', dovetailSlope })['dovetail-slope']).toBe(state);
  });

  test('two very wide fingers glue too little long grain', () => {
    expect(states({ fingerWidth: 25 })['long-grain-to-long-grain']).toBe('unusual');
  });
});

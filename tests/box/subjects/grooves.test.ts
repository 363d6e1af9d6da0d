/** The verdicts on groove margins, for the example box and where they have to change. */
import { describe, expect, test } from 'vitest';
import { judge } from '../../../src/box/core/verdict.ts';
import { groovesChecks } from '../../../src/box/subjects/grooves/verdicts.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { evaluate } from '../../../src/box/whole/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const inch = 25.4;
/** State of the check with this label for the example with these changes; `undefined` where it does not apply. */
function state(label: string, changes: Partial<Box> = {}) {
  const check = groovesChecks.find((one) => one.label === label);
  if (!check) throw new Error(`no check is called “${label}”`);
  return judge(check, evaluate({ ...exampleBox, ...changes }))?.state;
}

describe('the lip beside the lid’s groove', () => {
  const label = 'wood above the lid’s groove';

  // Common practice, no source: 1/8 in is the least accepted.
  test('of 1/8 in is accepted and anything less is flagged', () => {
    expect(state(label, { lidLip: inch / 8 })).toBe('usual');
    expect(state(label, { lidLip: inch / 8 - 0.01 })).toBe('unusual');
    expect(state(label, { lidLip: 3 })).toBe('unusual');
  });

  test('of the example, 3.5 mm of cherry at a 4 mm groove, takes 35.8 N: less than a firm thumb', () => {
    // By hand: 3.9 MPa (Wood Handbook Table 5-3a) × 3.5² / (6 × 4) × (10 + 2 × 4) = 35.83 N.
    expect(evaluate(exampleBox).lidLipPush).toBeCloseTo(35.83, 2);
    expect(state('push the lid’s lip takes')).toBe('unusual');
    expect(state('push the lid’s lip takes', { push: 35 })).toBe('usual');
  });

  test('gets no push where the strength of the wood across the grain is not known, and the verdict says why', () => {
    expect(evaluate({ ...exampleBox, species: 'sugar-maple' }).lidLipPush).toBeNaN();
    expect(state('push the lid’s lip takes', { species: 'sugar-maple' })).toBe('unknown');
    expect(
      judge(
        groovesChecks.find(({ id }) => id === 'lip-beside-lid-groove-push')!,
        evaluate({ ...exampleBox, species: 'sugar-maple' }),
      )?.because,
    ).toMatch(/no strength across the grain/);
  });

  test('is asked about for a lid held in four walls as well', () => {
    expect(state(label, { kind: 'lift-off', lidLip: 2 })).toBe('unusual');
  });
});

describe('the lip below the bottom’s groove', () => {
  const label = 'wood below the bottom’s groove';

  // Common practice, no source: at least the groove's depth, and 3/16 to 1/4 in.
  test('is usual from 3/16 in up, and never less than the groove is deep', () => {
    expect(state(label, { bottomLip: (inch * 3) / 16 })).toBe('usual');
    expect(state(label, { bottomLip: 4.5 })).toBe('unusual');
    expect(state(label, { bottomLip: 5, grooveDepth: 5.5 })).toBe('unusual');
    expect(state(label, { bottomLip: 15 })).toBe('unusual');
  });

  test('of the example takes a firm thumb', () => {
    // By hand: 3.9 × 5² / (6 × 4) × 18 = 73.125 N.
    expect(evaluate(exampleBox).bottomLipPush).toBeCloseTo(73.125, 2);
    expect(state('push the bottom’s lip takes')).toBe('usual');
  });

  test('is counted as twice the groove’s depth once it is thicker than that', () => {
    // By hand: 3.9 × 8² / (6 × 4) = 10.4 N/mm, as for a lip of 8 mm.
    const load = (bottomLip: number) => evaluate({ ...exampleBox, bottomLip, grooveDepth: 4 }).bottomLipLoad;
    expect(load(8)).toBeCloseTo(10.4, 9);
    expect(load(20)).toBeCloseTo(10.4, 9);
  });
});

describe('the depth of a groove', () => {
  // Common practice, no source: a third of the wall, never over half.
  test('is usual from about a third to a half, and breaks something beyond a half', () => {
    const label = 'depth of the bottom’s groove, share of the wall';
    expect(state(label)).toBe('usual');
    expect(state(label, { wall: 10, grooveDepth: 2 })).toBe('unusual');
    expect(state(label, { wall: 10, grooveDepth: 5 })).toBe('usual');
    expect(state(label, { wall: 10, grooveDepth: 5.5 })).toBe('breaks');
  });

  test('counts the deeper of the two grooves: a lid held in four walls has one as well', () => {
    expect(evaluate({ ...exampleBox, grooveDepth: 3, lidGrooveDepth: 5 }).web).toBeCloseTo(4.5, 9);
    for (const changes of [{ kind: 'lift-off' }, { bottomSeat: 'rabbet' }] as const)
      expect(evaluate({ ...exampleBox, grooveDepth: 5, lidGrooveDepth: 3, ...changes }).web).toBeCloseTo(
        4.5,
        9,
      );
  });
});

describe('a groove at fingers', () => {
  const label = 'finger left above the bottom’s groove';

  test('inside the lowest finger of the example needs one pair stopped', () => {
    expect(state(label)).toBe('usual');
  });

  test('that crosses into the next finger shows on both pairs', () => {
    expect(state(label, { fingerWidth: 8 })).toBe('unusual');
  });

  test('is not asked about where the corners have no fingers or the bottom no groove', () => {
    expect(state(label, { joint: 'mitre' })).toBeUndefined();
    expect(state(label, { bottomSeat: 'rabbet' })).toBeUndefined();
  });
});

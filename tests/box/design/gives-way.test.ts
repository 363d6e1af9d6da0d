/** What gives way when one number of the box changes: reckoned by hand for the example in inches. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { givingWay } from '../../../src/box/design/gives-way.ts';
import { inchExample } from '../../../src/box/subjects/example.ts';
import type { Box, NumberName } from '../../../src/box/subjects/inputs.ts';
import { evaluate } from '../../../src/box/whole/index.ts';
import { INCH, rulers, usualRuler } from '../../../src/units/index.ts';

const ruler = usualRuler.inch;
const changed = (name: NumberName, inches: number, box: Box = inchExample) =>
  evaluate({ ...box, ...givingWay(evaluate(box), name, inches * INCH, ruler) });
const inches = (mm: number) => mm / INCH;

describe('the example: seven fingers of 5/16 in, 2 3/16 in high, with 5/16 in above the contents', () => {
  test('a lip a sixteenth thicker comes out of the room above the contents: 1/4 in is left, and the height stays', () => {
    const made = changed('lidLip', 3 / 16);
    expect(inches(made.headroom)).toBeCloseTo(1 / 4, 9);
    expect(inches(made.outsideHeight)).toBeCloseTo(2 + 3 / 16, 9);
  });
  test('what is more than that room makes the box two fingers higher', () => {
    // 3/8 in more than now, and only 5/16 in is there: 2 3/16 + 10/16 = 2 13/16, and 5/16 - 3/8 + 10/16 = 9/16 stay.
    const made = changed('lidLip', 1 / 2);
    expect(inches(made.outsideHeight)).toBeCloseTo(2 + 13 / 16, 9);
    expect(inches(made.headroom)).toBeCloseTo(9 / 16, 9);
  });
  test('fingers of 1/4 in: nine of them are the odd number nearest to 2 3/16 in, so the box is 2 1/4 in high', () => {
    const made = changed('fingerWidth', 1 / 4);
    expect(made.fingerCount).toBeCloseTo(9, 9);
    expect(inches(made.outsideHeight)).toBeCloseTo(2 + 1 / 4, 9);
    expect(inches(made.headroom)).toBeCloseTo(5 / 16 + 1 / 16, 9);
  });
  test('walls of 3/8 in keep grooves of half their thickness, and of 11/32 in grooves of 5/32 in, at most half', () => {
    expect([changed('wall', 3 / 8), changed('wall', 11 / 32)].map((v) => inches(v.grooveDepth))).toEqual([
      expect.closeTo(3 / 16, 9),
      expect.closeTo(5 / 32, 9),
    ]);
  });
  test('a lift-off lid gets whole odd fingers too', () => {
    const box: Box = { ...inchExample, kind: 'lift-off', headroom: 2 * INCH };
    const made = changed('fingerWidth', 1 / 4, box);
    expect([made.fingerCount % 2, made.lidFingerCount % 2]).toEqual([
      expect.closeTo(1, 9),
      expect.closeTo(1, 9),
    ]);
  });
  test('a given inside gives way itself, a given outside does not', () => {
    // 2 3/16 less lips, tongue and lid of 7/8 in leave 1 5/16 in inside.
    const box: Box = { ...inchExample, sizeFrom: 'inside', wantedHeight: (1 + 5 / 16) * INCH };
    const made = changed('lidLip', 3 / 16, box);
    expect([inches(made.outsideHeight), inches(made.insideHeight)]).toEqual([
      expect.closeTo(2 + 3 / 16, 9),
      expect.closeTo(1 + 1 / 4, 9),
    ]);
    const outside = evaluate({ ...inchExample, sizeFrom: 'outside' });
    expect(givingWay(outside, 'lidLip', 5, ruler)).toEqual({ lidLip: 5 });
  });
  test('fingers that do not come out whole hold nothing', () => {
    const made = changed('lidLip', 3 / 16, { ...inchExample, headroom: 0.3 * INCH });
    expect(inches(made.headroom)).toBeCloseTo(0.3, 9);
  });
  test('other numbers move nothing but themselves, and a dovetailed box nothing at all', () => {
    expect(givingWay(evaluate(inchExample), 'bottomGap', 1, ruler)).toEqual({ bottomGap: 1 });
    expect(givingWay(evaluate({ ...inchExample, joint: 'dovetail' }), 'lidLip', 5, ruler)).toEqual({
      lidLip: 5,
    });
  });
});

test('whatever the number, whole fingers stay whole and odd, and the contents go in', () => {
  const names = ['bottomLip', 'bottomTongue', 'lidThickness', 'lidLip', 'fingerWidth'] as const;
  fc.assert(
    fc.property(
      fc.constantFrom(...names),
      fc.integer({ min: 4, max: 24 }),
      fc.constantFrom(...Object.values(rulers)),
      (name, marks, one) => {
        const v = evaluate(inchExample);
        const made = evaluate({ ...inchExample, ...givingWay(v, name, (marks * INCH) / 32, one) });
        expect(Math.abs(made.fingerCount - Math.round(made.fingerCount))).toBeLessThan(1e-6);
        expect(Math.round(made.fingerCount) % 2).toBe(1);
        expect(made.headroom).toBeGreaterThanOrEqual(1 - 1e-9);
      },
    ),
  );
});

/** Sizes given directly: the box has them afterward, its other sizes stay, and what gives way is told truly. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type GivenSize, givenSizes, giveSize } from '../../../src/box/design/given-size.ts';
import { exampleBox } from '../../../src/box/subjects/example.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { evaluate } from '../../../src/box/whole/index.ts';
import { isRefused } from '../../../src/calc/core/refusal.ts';

const names = Object.keys(givenSizes) as GivenSize[];
const give = (box: Box, name: GivenSize, size: number) => {
  const found = giveSize(evaluate(box), name, size);
  if (isRefused(found)) throw new Error(found.refused);
  return { ...found, after: evaluate({ ...box, ...found.inputs }) };
};

const boxes: Readonly<Record<string, Partial<Box>>> = {
  'the example': {},
  'a lift-off lid': { kind: 'lift-off', headroom: 30 },
  'a sawn lid of plywood': { kind: 'sawn', lid: 'plywood', headroom: 30 },
  'an outside given': { sizeFrom: 'outside' },
  'an inside given': { sizeFrom: 'inside', wantedHeight: 40 },
};

describe.each(Object.entries(boxes))('%s', (_, changes) => {
  const box: Box = { ...exampleBox, ...changes };
  test.each(names)('has the %s that is given, and every size across it as before', (name) => {
    const before = evaluate(box);
    fc.assert(
      fc.property(fc.double({ min: -8, max: 30, noNaN: true }), (more) => {
        const wanted = before[name] + more;
        const { after } = give(box, name, wanted);
        expect(after[name]).toBeCloseTo(wanted, 6);
        const { axis } = givenSizes[name];
        for (const other of ['Length', 'Width', 'Height'] as const)
          if (other !== axis) {
            expect(after[`outside${other}`]).toBeCloseTo(before[`outside${other}`], 6);
            expect(after[`inside${other}`]).toBeCloseTo(before[`inside${other}`], 6);
          }
        expect(after.wall).toBe(before.wall);
        expect(after.lidPlay).toBe(before.lidPlay);
      }),
      { numRuns: 25 },
    );
  });
});

test('a lid from a piece 100 mm wide, reckoned by hand: the inside grows by what the lid grows', () => {
  // 96 mm inside, grooves of 4 mm, 1.2 mm of play: a lid of 96 + 2 × 4 − 1.2 = 102.8 mm.
  expect(evaluate(exampleBox).lidWidth).toBeCloseTo(102.8, 9);
  const { after, says } = give(exampleBox, 'lidWidth', 100);
  expect(after.insideWidth).toBeCloseTo(93.2, 9);
  expect(after.outsideWidth).toBeCloseTo(109.2, 9);
  expect(says).toContain('The outside width goes from 112\u00a0mm');
  expect(says).toContain('to 109.2\u00a0mm');
  expect(says).toContain('What goes in no longer sets the size of the box.');
});

test('what the inside cannot be is refused with its limits, and the box stays', () => {
  const found = giveSize(evaluate(exampleBox), 'clearLength', 900);
  expect(isRefused(found) && found.refused).toMatch(
    /inside length would be 900\u00a0mm .* it can be 40\u00a0mm .* to 600\u00a0mm/,
  );
});

/** What the reader's own errors are counted on, and how the boxes are counted. */
import { expect, test } from 'vitest';
import { type Design, designBox } from '../../../src/box/design/design.ts';
import { cutOf, errorsOf } from '../../../src/box/design/expected.ts';
import type { Plan } from '../../../src/box/design/plan.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { counted } from '../../../src/figures/square/Histogram.tsx';
import { exampleBox } from '../reckoned-box.ts';

const cut = (changes: Partial<Box> = {}) =>
  cutOf(designBox({ ...exampleBox, ...changes }) as Design & { readonly plan: Plan });

test('the example: 45 mm high, 9.5 mm thick, square ends; five fingers are two steps of the jig', () => {
  expect(cut().cut).toMatchObject({ height: 45, wall: 9.5, mitered: false, steps: 2 });
});

test('only finger joints have a jig, only miters close at 45°', () => {
  expect(cut({ joint: 'keyed-mitre' }).cut).toMatchObject({ mitered: true, steps: 0 });
  expect(cut({ joint: 'dovetail' }).cut).toMatchObject({ mitered: false, steps: 0 });
});

test('a lift-off lid has its room on both sides of the liner, a hinged lid none that could jam', () => {
  expect(cut({ kind: 'lift-off', lidRoom: 0.3 })).toMatchObject({ lid: 'today', cut: { lidClearance: 0.6 } });
  expect(cut({ kind: 'sawn' }).lid).toBe('none');
});

test('a sliding lid of solid wood is judged on the dampest day, when less is left than today', () => {
  const { lid, cut: of } = cut();
  expect(lid).toBe('on the dampest day');
  expect(of.lidClearance).toBeLessThan(exampleBox.lidPlay);
});

test('the errors are the reader’s own', () => {
  expect(errorsOf(designBox({ ...exampleBox, angleError: 0.25, lengthError: 0.4, stepError: 0.07 }))).toEqual(
    {
      angle: 0.25,
      length: 0.4,
      step: 0.07,
    },
  );
});

test('a histogram counts every box once; what lies beyond the end stands in the last bar', () => {
  // 24 bars from 0 to 24: one value in each of the first three, and one far out.
  const bars = counted([0.5, 1.5, 2.5, 99], 24);
  expect(bars.slice(0, 4)).toEqual([1, 1, 1, 0]);
  expect(bars.at(-1)).toBe(1);
  expect(bars.reduce((sum, count) => sum + count, 0)).toBe(4);
});

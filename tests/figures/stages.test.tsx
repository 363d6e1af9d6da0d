/** The small drawing of each stage of the work comes from the numbers of a box, and follows those that the stage is about. */
import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Box } from '../../src/box/subjects/inputs.ts';
import { evaluate } from '../../src/box/whole/index.ts';
import { stageDrawings } from '../../src/prose/stage-drawings.ts';
import { exampleBox } from '../box/reckoned-box.ts';

type Stage = keyof typeof stageDrawings;
const draw = (stage: Stage, changes: Partial<Box> = {}) => {
  const Figure = stageDrawings[stage]!;
  return renderToString(<Figure values={evaluate({ ...exampleBox, ...changes })} />);
};

/** Those that no lesson has: `small.test.tsx` follows the others. */
const moves: Readonly<Partial<Record<Stage, readonly Partial<Box>[]>>> = {
  'contents and size': [{ contentsLength: 200 }, { wall: 12 }],
  stock: [{ boardLength: 1300 }, { contentsLength: 200 }, { boardWidth: 200 }],
  bottom: [{ bottomGap: 2 }, { grooveDepth: 2 }, { bottomLip: 12 }, { bottomThickness: 4 }],
  'glue-up': [{ contentsWidth: 60 }, { wall: 12 }],
};

describe.each(Object.entries(moves) as [Stage, readonly Partial<Box>[]][])(
  'the drawing of %s',
  (stage, changes) => {
    test.each(changes)('moves with %j', (change) => {
      expect(draw(stage, change)).not.toBe(draw(stage));
    });
  },
);

test('the gap beside the bottom is as wide in the drawing as the box has it, and the groove as deep', () => {
  fc.assert(
    fc.property(fc.integer({ min: 3, max: 6 }), fc.integer({ min: 0, max: 3 }), (grooveDepth, bottomGap) => {
      const [, wall, panel] = /<path class="wood-end" d="([^"]*)".*<path class="wood" d="([^"]*)"/.exec(
        draw('bottom', { grooveDepth, bottomGap, wall: 12 }),
      )!;
      const levels = [...wall!.matchAll(/H(-?[\d.]+)/g)].map(([, x]) => Number(x));
      const [face, end] = levels as [number, number];
      expect(face - end).toBeCloseTo(grooveDepth, 6);
      expect(Number(/^M(-?[\d.]+)/.exec(panel!)![1]) - end).toBeCloseTo(bottomGap, 6);
    }),
  );
});

test('both diagonals of the four walls run from inner corner to inner corner, and are of one length', () => {
  const { wall, outsideLength, outsideWidth } = evaluate(exampleBox);
  const lines =
    /<path class="curve" d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)"/
      .exec(draw('glue-up'))!
      .slice(1)
      .map(Number) as [number, number, number, number, number, number, number, number];
  const inside = Math.hypot(outsideLength - 2 * wall, outsideWidth - 2 * wall);
  expect(Math.hypot(lines[2] - lines[0], lines[3] - lines[1])).toBeCloseTo(inside, 6);
  expect(Math.hypot(lines[6] - lines[4], lines[7] - lines[5])).toBeCloseTo(inside, 6);
});

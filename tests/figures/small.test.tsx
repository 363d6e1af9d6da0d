/** The small drawing of each lesson comes from the numbers of a box: other numbers, another drawing, in proportion. */
import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Box } from '../../src/box/subjects/inputs.ts';
import { evaluate } from '../../src/box/whole/index.ts';
import { smallDrawings } from '../../src/prose/small-drawings.ts';
import { exampleBox } from '../box/reckoned-box.ts';

const draw = (slug: string, changes: Partial<Box> = {}) => {
  const Figure = smallDrawings[slug]!;
  return renderToString(<Figure values={evaluate({ ...exampleBox, ...changes })} />);
};

/** The numbers that a lesson is about: each must be seen in its drawing. */
const moves: Readonly<Record<string, readonly Partial<Box>[]>> = {
  'start-from-what-goes-in-it': [{ contentsLength: 200 }, { wall: 12 }, { clearance: 8 }],
  proportion: [{ contentsLength: 200 }, { wall: 12 }],
  'wall-thickness': [{ contentsWidth: 60 }, { wall: 12 }],
  'groove-margins': [{ grooveDepth: 2 }, { lidLip: 6 }, { bottomLip: 12 }],
  'where-the-groove-shows': [{ grooveDepth: 2 }, { bottomLip: 12 }, { fingerWidth: 6 }, { wall: 12 }],
  'wood-movement': [{ lidPlay: 2 }, { humidityDamp: 80 }, { ringAngle: 90 }],
  'turn-it-round': [{ fingerWidth: 6 }, { wall: 12 }],
  'which-corner-joint': [{ tailCount: 3 }, { wall: 12 }],
  'joint-spacing': [{ fingerWidth: 6 }, { wall: 12 }],
  'reading-the-board': [{ boardWidth: 100 }, { boardThickness: 40 }],
  'thickness-from-thickness': [{ boardThickness: 40 }, { kerf: 1 }],
  'grain-round-the-corner': [{ contentsLength: 200 }, { wallsFrom: 'bookmatched' }],
  'air-and-wood': [{ humidityToday: 60 }, { temperature: 35 }],
  'glue-up-without-surprises': [{ contentsLength: 200 }, { wall: 12 }],
  'is-it-square': [{ contentsLength: 200 }, { wall: 12 }, { diagonalsApart: 2 }],
  'a-lid-that-runs': [{ contentsLength: 200 }, { wall: 12 }, { lidPlay: 6 }],
  'lift-off-and-hinged-lids': [{ lidHeight: 30 }, { hingeLength: 15 }, { wall: 12 }],
  'the-bottom-you-can-hear': [{ bottomThickness: 4 }, { contentsLength: 200 }],
  'flat-smooth-and-kind': [{ contentsLength: 200 }, { rock: 2 }],
  'ten-years': [{ humidityDamp: 80 }, { ringAngle: 90 }, { lidPlay: 2 }],
  'a-year-of-a-panel': [{ bottomGap: 1 }, { ringAngle: 90 }, { contentsWidth: 150 }],
};
/** Drawn from a published table alone. */
const ofATable = ['what-a-finish-does'];

test('every lesson has a small drawing', () => {
  const lessons = readdirSync('content/lessons').map((file) => file.replace(/\.mdx$/, ''));
  expect(Object.keys(smallDrawings)).toEqual(expect.arrayContaining(lessons));
});

test('what each drawing must follow is listed here', () => {
  expect([...Object.keys(moves), ...ofATable].sort()).toEqual(Object.keys(smallDrawings).sort());
});

describe.each(Object.entries(moves))('the small drawing of %s', (slug, changes) => {
  test.each(changes)('moves with %j', (change) => {
    expect(draw(slug, change)).not.toBe(draw(slug));
  });
});

test('a number that a lesson is not about leaves its drawing alone', () => {
  expect(draw('proportion', { species: 'hard-maple', humidityDamp: 80 })).toBe(draw('proportion'));
});

test('the finish race stands on the published figures: 90, 64 and 44 % for three coats of varnish after 1, 7 and 14 days', () => {
  const heights = [...draw('what-a-finish-does').matchAll(/<circle[^>]* cy="([\d.]+)"/g)].map(([, y]) =>
    Number(y),
  );
  const [first, week, fortnight] = heights as [number, number, number];
  // Equal steps of effectiveness are equal steps of height.
  expect((week - first) / (fortnight - first)).toBeCloseTo((90 - 64) / (90 - 44), 3);
});

test('of any box of these sizes the box from above keeps its proportions', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 90, max: 400 }),
      fc.integer({ min: 60, max: 90 }),
      fc.integer({ min: 3, max: 20 }),
      (contentsLength, contentsWidth, wall) => {
        const sizes = [
          ...draw('proportion', { contentsLength, contentsWidth, wall }).matchAll(/<rect[^>]*?>/g),
        ].map(([rect]) =>
          ['width', 'height'].map((name) => Number(new RegExp(` ${name}="([\\d.]+)"`).exec(rect)?.[1])),
        );
        const [outside, inside] = sizes as [number[], number[]];
        // Two walls are all that the inside lacks, in either direction.
        expect(outside[0]! - inside[0]!).toBeCloseTo(2 * wall, 6);
        expect(outside[1]! - inside[1]!).toBeCloseTo(2 * wall, 6);
        expect(inside[0]!).toBeGreaterThanOrEqual(contentsLength);
        expect(inside[1]!).toBeGreaterThanOrEqual(contentsWidth);
      },
    ),
  );
});

test('of any air and any cut the drawings hold numbers only', () => {
  fc.assert(
    fc.property(
      fc.record({
        humidityToday: fc.integer({ min: 10, max: 90 }),
        humidityDamp: fc.integer({ min: 10, max: 95 }),
        ringAngle: fc.integer({ min: 0, max: 90 }),
        boardWidth: fc.integer({ min: 40, max: 400 }),
      }),
      (changes) => {
        for (const slug of Object.keys(smallDrawings))
          expect(draw(slug, changes)).not.toMatch(/NaN|undefined|Infinity/);
      },
    ),
    { numRuns: 30 },
  );
});

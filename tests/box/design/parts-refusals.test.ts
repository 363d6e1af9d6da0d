/** What cannot be built is named, the first thing first, with the change that mends it. */
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { exampleBox } from '../reckoned-box.ts';

const first = (changes: Partial<Box>) => designBox({ ...exampleBox, ...changes }).refusals[0];

test('the example can be built', () => expect(designBox(exampleBox).refusals).toEqual([]));

describe('the first impossible thing and its cure', () => {
  test.each<[string, Partial<Box>, string, keyof Box, number | string]>([
    // Outside 15 less two walls of 9.5 is −4; 10 mm of room need 15 + 14 = 29.
    [
      'an outside narrower than its two walls',
      { sizeFrom: 'outside', wantedWidth: 15 },
      'no-width-inside',
      'wantedWidth',
      29,
    ],
    // Of 30 mm, 5 + 3.5 and a lip of 3.5 leave 18 for lid and inside; 10 for the inside leave 8.
    [
      'a lid thicker than the space',
      { sizeFrom: 'outside', wantedHeight: 30, lidThickness: 20 },
      'lid-thicker-than-space',
      'lidThickness',
      8,
    ],
    // A third of a wall of 9.5 is 3.17, to tenths 3.1.
    ['a groove deeper than the wall', { grooveDepth: 12 }, 'groove-through-wall', 'grooveDepth', 3.1],
    [
      'a lid’s groove deeper than the wall',
      { lidGrooveDepth: 9.5 },
      'lid-groove-through-wall',
      'lidGrooveDepth',
      3.1,
    ],
    ['no lip above the lid', { lidLip: 0 }, 'no-lip-above-lid', 'lidLip', 3.2],
    ['no lip below the bottom', { bottomLip: 0, bottomThickness: 4 }, 'no-lip-below-bottom', 'bottomLip', 5],
    [
      'an edge thicker than its panel',
      { bottomTongue: 7 },
      'tongue-thicker-than-bottom',
      'bottomTongue',
      6.5,
    ],
    // Lip 1 and edge 3.5 carry 4.5 mm; 6.5 would hang out by 2.
    ['a bottom below the table', { bottomLip: 1 }, 'bottom-hangs-below', 'bottomLip', 3],
    ['a bottom that floats in a rabbet', { bottomSeat: 'rabbet' }, 'rabbet-floating', 'bottomFit', 'glued'],
    // A front 36 high: a third is 12.
    ['a finger as high as the front', { fingerWidth: 36 }, 'fingers-do-not-fit', 'fingerWidth', 12],
    // Each tail needs its pin of 5 and twice 9.5/7 = 2.71, 7.71 in all: 36/7.71 = 4.7, so four.
    [
      'more tails than fit the front',
      { joint: 'dovetail', tailCount: 6 },
      'tails-do-not-fit',
      'tailCount',
      4,
    ],
    // Between the bottom's groove at 9.25 and the front's edge at 36 are 26.75: four keys of 3 with as much between.
    ['more keys than fit', { joint: 'keyed-mitre', keyCount: 6 }, 'keys-do-not-fit', 'keyCount', 4],
    // In the miter (9.5 − 4)·1.414 − 0.5 = 7.28; 2 of it hold the spline's least depth.
    [
      'a spline too thick',
      { joint: 'splined-mitre', keyThickness: 6 },
      'spline-does-not-fit',
      'keyThickness',
      5.2,
    ],
    // Lid walls of 20 less lip 3.5 and panel 5.5.
    [
      'a liner higher than the lid',
      { kind: 'lift-off', clearance: 8, linerRise: 15 },
      'liner-too-high',
      'linerRise',
      11,
    ],
    // The liner takes 4 on each side, the clearance gives 3.
    // Outside 200 less two walls of 9.5 and two liners of 4 leaves 173 for 175.
    [
      'a liner that crowds the contents of a given outside',
      { kind: 'lift-off', sizeFrom: 'outside' },
      'contents-too-long',
      'wantedLength',
      202,
    ],
    [
      'lid walls lower than their panel',
      { kind: 'sawn', lidHeight: 8 },
      'lid-walls-too-low',
      'lidHeight',
      12,
    ],
    // A quarter of 200.
    ['hinges too long for the back', { kind: 'sawn', hingeLength: 60 }, 'hinges-too-long', 'hingeLength', 50],
    ['a notch through the lid', { lidThickness: 4 }, 'notch-through-lid', 'lidThickness', 4.3],
    ['a number that is none', { wall: Number.NaN }, 'not-a-usable-number', 'wall', 3],
  ])('%s', (_, changes, id, field, to) => {
    expect(first(changes)).toMatchObject({ id, field, to });
  });
});

test('a refusal says what is wrong and what to do, in both units', () => {
  const { what, fix } = first({ grooveDepth: 12 })!;
  // Numbers and units are held together by spaces that do not break.
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  expect({ what: plain(what), fix: plain(fix) }).toEqual({
    what: 'The bottom’s groove is 12 mm (15/32 in) deep and the wall 9.5 mm (3/8 in) thick: it comes out of the other face.',
    fix: 'Make the depth of the bottom groove at most 3.1 mm (7/64 in).',
  });
});

test('what can still be drawn is drawn', () => {
  const { parts, refusals } = designBox({ ...exampleBox, grooveDepth: 12, lidThickness: 0 });
  expect(refusals.map(({ id }) => id)).toEqual(['groove-through-wall', 'no-lid']);
  expect(parts.map(({ name }) => name)).toEqual(['front', 'back', 'left', 'right', 'bottom']);
});

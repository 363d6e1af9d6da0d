/** What the example box is told about its air, its wait and its finish, and where that turns. */
import { describe, expect, test } from 'vitest';
import { diffusionOf } from '../../../src/box/subjects/air/wait.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { evaluate, verdicts } from '../../../src/box/whole/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const of = (inputs: Partial<Box> = {}) => evaluate({ ...exampleBox, ...inputs });
const state = (rule: string, inputs: Partial<Box> = {}) =>
  verdicts(of(inputs)).find(({ check }) => check.rule === rule)?.state;

describe('the wait for the wood', () => {
  test('is days for walls and more than a month for a board of 26 mm', () => {
    // Physics note B3: 9.4 days at 10 mm and 35 at 20 mm for 3e-11 m²/s, a wood a little denser than cherry.
    expect(of({ wall: 10 }).waitWall).toBeGreaterThan(7);
    expect(of({ wall: 10 }).waitWall).toBeLessThan(9.4);
    expect(of({ wall: 20 }).waitWall).toBeLessThan(35);
    expect(of().waitBoard).toBeGreaterThan(35);
  });

  test('is longer in a heavy wood than in a light one', () => {
    expect(of({ species: 'hard-maple' }).waitWall).not.toBeLessThan(of({ species: 'black-cherry' }).waitWall);
    expect(of({ species: 'eastern-white-pine' }).waitWall).toBeLessThan(of().waitWall);
  });

  test('is not given for a wood without a density, or one beyond the table', () => {
    expect(of({ species: 'live-oak' }).waitWall).toBeNaN();
    expect(of({ species: 'apple' }).waitWall).toBeNaN();
    expect(diffusionOf(of({ species: 'apple' }), 8)).toEqual({
      refused: expect.stringMatching(/no density/),
    });
    expect(state('thickness-squared', { species: 'apple' })).toBe('unknown');
  });
});

describe('the checks', () => {
  test('a week or two is enough for the walls of the example and too short for walls of 15 mm', () => {
    expect(state('thickness-squared')).toBe('usual');
    expect(state('thickness-squared', { wall: 15 })).toBe('unusual');
  });

  test('1.5 to 3 mm are left to plane off in all: common practice', () => {
    expect(state('cut-oversize-and-rest')).toBe('usual');
    expect(state('cut-oversize-and-rest', { planing: 0.5 })).toBe('unusual');
    expect(state('cut-oversize-and-rest', { planing: 2 })).toBe('unusual');
  });

  test('three coats on the edges leave the lid of the example some play, and jam one that was fitted close', () => {
    // 1.2 mm of play, 2.5 points of swelling of 112.8 mm at 0.00248: 0.5 mm left, less 2 × 3 × 0.03 mm.
    expect(state('no-finish-on-running-surfaces')).toBe('usual');
    expect(state('no-finish-on-running-surfaces', { lidPlay: 0.85 })).toBe('unusual');
    expect(state('no-finish-on-running-surfaces', { kind: 'lift-off' })).toBeUndefined();
  });
});

/** What the guesses of the lesson on joint spacing hold for true, against arithmetic by hand. */
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../../src/figures/joints/AreaPick.tsx';
import { faceOf } from '../../../src/figures/joints/FacePick.tsx';
import { playPattern, playsOf } from '../../../src/figures/joints/PlayPick.tsx';
import { placeErrors } from '../../../src/figures/joints/TurnedWall.tsx';
import { cornersOf } from '../../../src/figures/joints/WhatMeets.tsx';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['joint-spacing']!;
const valuesOf = (id: string, system: 'mm' | 'inch') => valuesOfGuess(guesses![id]!, model, system);
const truth = (id: string, system: 'mm' | 'inch') => guesses![id]!.truth(valuesOf(id, system), system);

describe('the guesses on finger joints', () => {
  // 48 − 5 · 9 = 3 mm; 2 − 5 · 3/8 = 1/8 in.
  test('five fingers of 9 mm leave 3 mm of 48, and five of 3/8 in leave 1/8 of 2', () => {
    expect(truth('left-at-edge', 'mm')).toBeCloseTo(3, 9);
    expect(truth('left-at-edge', 'inch')).toBeCloseTo(25.4 / 8, 9);
  });

  // 3 · 0.03 is still within 0.1 mm, 4 · 0.03 is not; 4 · 0.001 just fills 0.004 in, 5 · 0.001 does not go in.
  // Fingers count from the edge, two to a step: 8 and 10.
  test('the first finger to bind is the one behind the first step that uses up the play', () => {
    expect(truth('binding-finger', 'mm')).toBe(8);
    expect(truth('binding-finger', 'inch')).toBe(10);
  });

  // 70 mm high and 10 thick: 7 fingers touch on 6 faces of 1 cm², 14 on 13; the miter is 7 · 1 · √2 cm².
  test('fingers as wide as the wall have less area than a miter, and fingers half as wide have more', () => {
    const values = valuesOf('least-area', 'mm');
    expect(areaOf(values, 'wide')).toBeCloseTo(600, 6);
    expect(areaOf(values, 'narrow')).toBeCloseTo(1300, 6);
    expect(areaOf(values, 'miter')).toBeCloseTo(989.95, 1);
    for (const system of ['mm', 'inch'] as const) expect(truth('least-area', system)).toBe('wide');
  });
});

describe('the guesses on corner joints', () => {
  const { guesses: corners, model: corner } = lessons['which-corner-joint']!;
  const of = (id: string, system: 'mm' | 'inch') => valuesOfGuess(corners![id]!, corner, system);
  const truthOf = (id: string, system: 'mm' | 'inch') => corners![id]!.truth(of(id, system), system);

  // 30 mm high and 10 thick: 300 mm² at the butt, half as much again in the rabbet, 1.414 times in the miter.
  test('a rabbet has the largest face of the three, and a butt joint the smallest', () => {
    const values = of('largest-face', 'mm');
    expect(faceOf(values, 'butt')).toBeCloseTo(300, 6);
    expect(faceOf(values, 'rabbet')).toBeCloseTo(450, 6);
    expect(faceOf(values, 'miter')).toBeCloseTo(424.3, 1);
    for (const system of ['mm', 'inch'] as const) expect(truthOf('largest-face', system)).toBe('rabbet');
  });

  // √(36 + 1) is 6.0828: 1.38 % more than 6. A diagonal of 14.14 mm less 10; of 0.5303 in less 0.375.
  test('a slope of 1 in 6 adds 1.4 %, and behind a key stand 4.1 mm, or 0.155 in', () => {
    expect(truthOf('slope-adds', 'mm')).toBeCloseTo(1.38, 2);
    expect(truthOf('behind-the-key', 'mm')).toBeCloseTo(4.14, 2);
    expect(Number(truthOf('behind-the-key', 'inch')) / 25.4).toBeCloseTo(0.155, 3);
  });

  // Both faces were cut at 45°; less thickness over the same length turns the cut away from the other at its inner end.
  test('a dry miter opens on the inside', () => {
    for (const system of ['mm', 'inch'] as const) expect(truthOf('dry-miter', system)).toBe('inside');
  });

  // 60 mm high and 10 thick: 5 fingers of 12 mm touch on 4 cheeks of 1 cm², 2 keys hold each wall by 1 cm² each.
  test('the bars of the six corners are the areas one would measure', () => {
    const six = cornersOf({
      ...of('largest-face', 'mm'),
      jointedHeight: 60,
      fingerWidth: 12,
      keyCount: 2,
      tailCount: 3,
      dovetailSlope: 6,
    });
    expect(six.map(({ joint, long }) => [joint, Math.round(long)])).toEqual([
      ['butt', 0],
      ['rabbet', 0],
      ['mitre', 0],
      ['keyed-mitre', 200],
      ['finger', 400],
      ['dovetail', 608],
    ]);
    expect(six.map(({ cut }) => Math.round(cut))).toEqual([600, 900, 849, 849, 600, 600]);
  });
});

describe('the guesses on cutting fingers', () => {
  const { guesses: cutting, model: cut } = lessons['turn-it-round']!;
  const of = (id: string, system: 'mm' | 'inch') => valuesOfGuess(cutting![id]!, cut, system);
  const truthOf = (id: string, system: 'mm' | 'inch') => Number(cutting![id]!.truth(of(id, system), system));

  // Slot 8.05 and finger 7.95; the pin 0.075 mm nearer makes fingers of 7.875, and 8.05 less that is 0.175.
  test('a pin that stands too near makes every finger looser by as much', () => {
    const { set, cut: found } = playsOf(of('pin-too-near', 'mm'));
    expect(set).toBeCloseTo(0.1, 9);
    expect(found).toBeCloseTo(0.175, 9);
    expect(playPattern()).toBe('all');
  });

  // The root of nine; 1.5 mm times tan 15°, 0.26795, and 1/16 in times it.
  test('nine chances come to three, and teeth of 15° leave a ridge of 0.40 mm, or 0.017 in', () => {
    expect(truthOf('nine-chances', 'mm')).toBe(3);
    expect(truthOf('tooth-ridge', 'mm')).toBeCloseTo(0.402, 3);
    expect(truthOf('tooth-ridge', 'inch') / 25.4).toBeCloseTo(0.0167, 4);
  });

  // 35 mm and fingers of 5: seven. From one edge 0, 1, 1, 2, 2, 3, 3 steps; from both the nearer edge counts.
  test('a wall of seven fingers is off by three steps from one edge, and by two in its middle from both', () => {
    const wall = { ...of('pin-too-near', 'mm'), outsideHeight: 35, fingerWidth: 5, stepError: 0.01 };
    const steps = (from: 'one' | 'both') => placeErrors(wall, from).map((error) => Math.round(error * 100));
    expect(steps('one')).toEqual([0, 1, 1, 2, 2, 3, 3]);
    expect(steps('both')).toEqual([0, 1, 1, 2, 1, 1, 0]);
  });
});

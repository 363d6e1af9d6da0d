/** The growth-ring figure of a face: against straight lines, circles and arches that plain geometry gives. */
import { describe, expect, test } from 'vitest';
import { madeUpLog, ringField } from '../../../src/calc/board/rings.ts';
import { unfolded } from '../../../src/figures/board/BoardFace.tsx';
import { endGrain } from '../../../src/figures/board/DriedPiece.tsx';
import { type FacePlacement, grainLines, grainPath } from '../../../src/figures/board/grain-lines.ts';

const cylinder = madeUpLog(1, { ringWidth: 5, taper: 0, waviness: 0 });
const cone = madeUpLog(1, { ringWidth: 4, taper: 0.02, waviness: 0 });
/** A face along the log, its middle `y` beside and `z` above the pith. */
const level = (y: number, z: number, width: number): FacePlacement => ({
  origin: [0, y - width / 2, z],
  along: [1, 0, 0],
  across: [0, 1, 0],
  length: 300,
  width,
});
const pointOf = ({ origin, along, across }: FacePlacement, u: number, v: number) =>
  [0, 1, 2].map((i) => origin[i]! + u * along[i]! + v * across[i]!) as [number, number, number];

describe('the lines on a face', () => {
  test('of a quarter-sawn board are straight, from end to end, one for each ring', () => {
    // Level with the pith, from 20 to 80 mm beside it: rings at 20, 25, … 80 mm. Those on its two edges may be left out.
    const lines = grainLines(level(50, 0, 60), cylinder);
    expect(lines.length).toBeGreaterThanOrEqual(11);
    expect(lines.length).toBeLessThanOrEqual(13);
    for (const line of lines) {
      const depths = line.map(([, v]) => v);
      expect(depths[0]! / 5).toBeCloseTo(Math.round(depths[0]! / 5), 3);
      expect(Math.max(...depths) - Math.min(...depths)).toBeLessThan(0.01);
      expect(Math.abs(line.at(-1)![0] - line[0]![0])).toBeCloseTo(300, 6);
    }
  });

  test('of a flat-sawn board of a tapering log close to an arch where the face touches a ring', () => {
    // Right above the pith, 70 mm up, ring i is touched at x = (4 i − 70)/0.02: ring 18 at 100 mm, ring 19 at 300 mm.
    const lines = grainLines(level(0, 70, 100), cone);
    const arch = lines.find((line) => line.some(([, v]) => Math.abs(v - 50) < 3))!;
    expect(Math.max(...arch.map(([u]) => u))).toBeGreaterThan(94);
    expect(Math.max(...arch.map(([u]) => u))).toBeLessThan(106);
  });

  test('of an end are arcs about the pith', () => {
    const face = endGrain({ center: [10, 60], width: 80, thickness: 30, turn: 20 });
    const lines = grainLines(face, cylinder);
    expect(lines.length).toBeGreaterThan(5);
    for (const [u, v] of lines.flat()) {
      const [, y, z] = pointOf(face, u, v);
      const ring = Math.hypot(y, z) / 5;
      expect(Math.abs(ring - Math.round(ring))).toBeLessThan(0.05);
    }
  });

  test('lie on whole rings of a wavy log too, and are few points', () => {
    const log = madeUpLog(5);
    const face = level(20, 70, 100);
    const lines = grainLines(face, log);
    for (const [u, v] of lines.flat()) {
      const ring = ringField(pointOf(face, u, v), log);
      expect(Math.abs(ring - Math.round(ring))).toBeLessThan(0.06);
    }
    expect(lines.flat().length).toBeLessThan(300);
    expect(grainPath(face, log)).toMatch(/^M[\d. L M-]+$/);
  });

  test('are at most forty, however close the rings', () => {
    const lines = grainLines(level(80, 0, 120), madeUpLog(1, { ringWidth: 1, taper: 0, waviness: 0 }));
    expect(lines.length).toBeLessThanOrEqual(41);
    expect(lines.length).toBeGreaterThan(20);
  });
});

describe('a board unfolded', () => {
  test.each([
    ['flat-sawn', [0, 70], 0],
    ['turned over', [0, -70], 0],
    ['rift-sawn and turned', [50, 60], -35],
  ] as const)('has end and face meet in one edge, on the side of the bark: %s', (_, center, turn) => {
    const { end, face } = unfolded({ center, width: 100, thickness: 20, turn }, 300);
    for (const v of [0, 37, 100]) {
      const [onEnd, onFace] = [pointOf(end, end.length, v), pointOf(face, 0, v)];
      for (const i of [0, 1, 2] as const) expect(onEnd[i]).toBeCloseTo(onFace[i], 9);
    }
    const [, y, z] = pointOf(face, 0, 50);
    expect(Math.hypot(y, z)).toBeGreaterThan(Math.hypot(...center));
  });
});

/** Growth rings: against circles and cones where they are known, and against what any log must do. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LogPiece, turned } from '../../../src/calc/board/log-map.ts';
import { cutOf, madeUpLog, reachOf, ringAngle, ringField } from '../../../src/calc/board/rings.ts';

const across = fc.double({ min: -250, max: 250, noNaN: true });
const along = fc.double({ min: 0, max: 1000, noNaN: true });
const log = fc
  .record({
    seed: fc.integer({ min: 0, max: 1000 }),
    ringWidth: fc.double({ min: 1, max: 10, noNaN: true }),
    taper: fc.double({ min: 0, max: 0.02, noNaN: true }),
    waviness: fc.double({ min: 0, max: 3, noNaN: true }),
  })
  .map(({ seed, ...rest }) => madeUpLog(seed, rest));

describe('the rings of a made-up log', () => {
  test('are circles on the end that is seen: 5 mm rings, 30 mm by 40 mm from the pith, is ring 10', () => {
    // 3-4-5 triangle: 50 mm from the pith.
    expect(ringField([0, 30, 40], madeUpLog(7, { ringWidth: 5 }))).toBeCloseTo(10, 9);
  });

  test('without waves are cones: with 10 mm of taper a meter, the ring 50 mm out is 48 mm out 200 mm further on', () => {
    const cone = madeUpLog(1, { ringWidth: 5, taper: 0.01, waviness: 0 });
    expect(ringField([200, 0, 48], cone)).toBeCloseTo(ringField([0, 50, 0], cone), 9);
  });

  test('are the same for the same seed and different for another', () => {
    expect(madeUpLog(3)).toEqual(madeUpLog(3));
    expect(ringField([150, 40, 20], madeUpLog(3))).not.toBeCloseTo(ringField([150, 40, 20], madeUpLog(4)), 3);
  });

  test('follow each other outwards: no ring crosses another', () => {
    fc.assert(
      fc.property(
        along,
        fc.double({ min: 10, max: 250, noNaN: true }),
        fc.double({ min: 0, max: 6.28, noNaN: true }),
        log,
        (x, r, angle, made) => {
          const at = (reach: number) =>
            ringField([x, reach * Math.cos(angle), reach * Math.sin(angle)], made);
          expect(at(r + 1)).toBeGreaterThan(at(r));
        },
      ),
    );
  });

  test('stay near the plain cone: by no more than 2√2 times the waviness', () => {
    fc.assert(
      fc.property(along, across, across, log, (x, y, z, made) => {
        const plain = ringField([x, y, z], { ...made, waviness: 0 });
        // Both directions, each twice the sum of the strengths.
        expect(Math.abs(ringField([x, y, z], made) - plain) * made.ringWidth).toBeLessThanOrEqual(
          2 * Math.SQRT2 * made.waviness + 1e-9,
        );
      }),
    );
  });
});

const board = (x: number, y: number, turn = 0): LogPiece => ({
  center: [x, y],
  width: 100,
  thickness: 20,
  turn,
});

describe('the angle of the rings to the face', () => {
  test.each([
    ['right above the pith', board(0, 80), 0],
    ['beside the pith', board(80, 0), 90],
    ['up and to the side by as much', board(60, 60), 45],
    ['above the pith and stood on edge', board(0, 80, 90), 90],
    ['above the pith and turned by a third', board(0, 80, 30), 30],
  ])('of a board %s', (_, piece, angle) => {
    expect(ringAngle(piece)).toBeCloseTo(angle, 9);
  });

  test('grows towards the edges of a flat-sawn board: 45 degrees where the edge is as far out as up', () => {
    expect(ringAngle(board(0, 50), [50, 0])).toBeCloseTo(45, 9);
    expect(ringAngle(board(0, 50), [-50, 0])).toBeCloseTo(45, 9);
  });

  test('does not change when log and board turn together', () => {
    fc.assert(
      fc.property(across, across, fc.double({ min: -180, max: 180, noNaN: true }), (x, y, turn) => {
        fc.pre(Math.hypot(x, y) > 1);
        const [turnedX, turnedY] = turned([x, y], (turn * Math.PI) / 180);
        expect(ringAngle(board(turnedX, turnedY, turn))).toBeCloseTo(ringAngle(board(x, y)), 4);
      }),
    );
  });

  test('is no number at the pith itself', () => {
    expect(ringAngle(board(0, 0))).toBeNaN();
  });

  test('names the cut: below 30 flat, from 60 quarter, between rift', () => {
    // Common practice, no source.
    expect([0, 29, 30, 59, 60, 90].map(cutOf)).toEqual([
      'flat-sawn',
      'flat-sawn',
      'rift-sawn',
      'rift-sawn',
      'quarter-sawn',
      'quarter-sawn',
    ]);
  });
});

test('the farthest corner of a board 100 by 20 mm, 110 mm above the pith, is 130 mm out', () => {
  // Half the width and the upper face: 50 and 120 mm, a 5-12-13 triangle.
  expect(reachOf(board(0, 110))).toBeCloseTo(130, 9);
  expect(reachOf({ ...board(0, 110), turn: 180 })).toBeCloseTo(130, 9);
});

/** Room around the contents: worked by hand, and against things laid side by side. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roomBeside, roomEachSide, roomOver, smallestInside } from '../../../src/calc/proportion/room.ts';
import { tightestRoom } from '../../../src/calc/walls/walls.ts';

describe('room beside the contents', () => {
  test('181 mm of inside, 150 of contents, 1.5 of lining each side, two dividers of 4 and a slip of 0.25 leave 19.5 mm', () => {
    // 181 − 150 − 3 − 2 × 4.25 = 19.5.
    const given = { l: 181, c: 150, f: 1.5, n: 2, d: 4, s: 0.25 };
    expect(roomBeside.compute(given)).toBeCloseTo(19.5, 12);
    expect(roomEachSide.compute(given)).toBeCloseTo(9.75, 12);
  });

  test('is what is left when lining, dividers and contents are laid in one by one', () => {
    const size = fc.double({ min: 0, max: 12, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 100, max: 400, noNaN: true }), size, fc.nat(6), size, (l, f, n, d) => {
        const laid = [f, f, ...Array.from({ length: n }, () => d), 40];
        expect(roomBeside.compute({ l, c: 40, f, n, d, s: 0 })).toBeCloseTo(
          laid.reduce((left, one) => left - one, l),
          9,
        );
      }),
    );
  });
});

test('35 mm of height over 25 mm of contents on 2 mm of lining leave 8 mm', () => {
  expect(roomOver.compute({ h: 35, c: 25, f: 2 })).toBeCloseTo(8, 12);
});

test('the tightest of three directions speaks', () => {
  expect(tightestRoom.compute({ l: 156, w: 96, h: 35, c_l: 150, c_w: 90, c_h: 31 })).toBe(4);
  expect(smallestInside.compute({ l: 156, w: 96, h: 35 })).toBe(35);
});

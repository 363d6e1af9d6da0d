/** Linings and dividers against a sum done by hand. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { outsideRange } from '../../../src/calc/core/working.ts';
import { compartment } from '../../../src/calc/size/dividers.ts';

test('three dividers of 4 mm with 0.25 mm of slip and 1.5 mm of felt share 195.75 mm into four times 45 mm', () => {
  // 2 × 1.5 = 3; 3 × 4.25 = 12.75; 195.75 − 15.75 = 180 = 4 × 45. Felt and slip: common practice, no source.
  expect(compartment.compute({ l: 195.75, f: 1.5, n: 3, d: 4, s: 0.25 })).toBeCloseTo(45, 9);
});

test('compartments, dividers and lining put side by side fill the inside again', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 200, max: 600 }),
      fc.nat(12),
      fc.double({ min: 0, max: 10, noNaN: true }),
      (l, n, d) => {
        const c = compartment.compute({ l, f: 1.5, n, d, s: 0.3 });
        let filled = 1.5;
        for (let place = 0; place <= n; place++) filled += c + (place < n ? d + 0.3 : 0);
        expect(filled + 1.5).toBeCloseTo(l, 9);
      },
    ),
  );
});

test('an inside that dividers and lining use up has no compartments', () => {
  const full = { l: 40, f: 2, n: 8, d: 5, s: 0.3 };
  expect(outsideRange(compartment, full)?.symbol).toBe('l');
});

/** Linings and dividers against a sum done by hand. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compartment, insideForCompartments } from '../../src/calc/dividers.ts';
import { outsideRange } from '../../src/calc/relation.ts';

test('three dividers of 4 mm with 0.25 mm of slip and 1.5 mm of felt take 15.75 mm: 4 × 45 mm needs 195.75 mm', () => {
  // 4 × 45 = 180; 2 × 1.5 = 3; 3 × 4.25 = 12.75. Felt and slip: common practice, no source.
  expect(insideForCompartments.compute({ c: 45, f: 1.5, n: 3, d: 4, s: 0.25 })).toBeCloseTo(195.75, 9);
});

test('the compartments are what the inside was made for', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 400, noNaN: true }),
      fc.double({ min: 0, max: 5, noNaN: true }),
      fc.nat(12),
      fc.double({ min: 0, max: 10, noNaN: true }),
      (c, f, n, d) => {
        const l = insideForCompartments.compute({ c, f, n, d, s: 0.3 });
        expect(compartment.compute({ l, f, n, d, s: 0.3 })).toBeCloseTo(c, 9);
      },
    ),
  );
});

test('an inside that dividers and lining use up has no compartments', () => {
  const full = { l: 40, f: 2, n: 8, d: 5, s: 0.3 };
  expect(outsideRange(compartment, full)?.symbol).toBe('l');
});

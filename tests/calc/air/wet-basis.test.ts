/** The two ways to tell moisture, with water and wood weighed. */
import { expect, test } from 'vitest';
import { dryFromWet } from '../../../src/calc/air/wet-basis.ts';

// 100 g of wet wood: 20 g of water on 80 g of wood, 50 on 50, 60 on 40.
test.each([
  [20, 25],
  [50, 100],
  [60, 150],
  [0, 0],
])('%d %% of the wet wood is %d %% of the dry', (wet, dry) => {
  expect(dryFromWet.compute({ M_w: wet })).toBeCloseTo(dry, 9);
});

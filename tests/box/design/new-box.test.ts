/** A new box from three answers can always be built, breaks no rule and lies on its reader's ruler. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newBox } from '../../../src/box/design/new-box.ts';
import { offRuler } from '../../../src/box/design/ruler-sizes.ts';
import { standingOf } from '../../../src/box/design/standing.ts';
import { evaluate } from '../../../src/box/whole/index.ts';
import { isRefused } from '../../../src/calc/core/refusal.ts';
import { answers, anyRuler } from './new-box-answers.ts';

describe('a new box', () => {
  test('can be built, breaks no rule and lies on the ruler, for a thousand mixes of answers and rulers', () => {
    let built = 0;
    fc.assert(
      fc.property(answers, anyRuler, (given, ruler) => {
        const box = newBox(given, ruler);
        if (isRefused(box)) return;
        built += 1;
        const { ranks, refused } = standingOf(box);
        expect([...refused]).toEqual([]);
        expect([...ranks].filter(([, rank]) => rank === 2)).toEqual([]);
        expect(offRuler(evaluate(box), ruler).map(({ name, value }) => [name, value])).toEqual([]);
      }),
      { numRuns: 1000 },
    );
    expect(built).toBeGreaterThan(900);
  }, 600_000);
});

/** What the guesses of the lesson on air and wood hold for true, against tables and another way to the same number. */
import { describe, expect, test } from 'vitest';
import { diffusionOf } from '../../../src/box/subjects/air/wait.ts';
import { fractionDone } from '../../../src/calc/air/diffusion-series.ts';
import { ROOM_SURFACE } from '../../../src/calc/air/slab.ts';
import { isRefused } from '../../../src/calc/core/refusal.ts';
import { daysOf } from '../../../src/figures/air/ThickWait.tsx';
import { lessons } from '../../../src/prose/lessons.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const { guesses, model } = lessons['air-and-wood']!;
const valuesOf = (id: string, system: 'mm' | 'inch' = 'mm') => valuesOfGuess(guesses![id]!, model, system);
const truth = (id: string) => guesses![id]!.truth(valuesOf(id), 'mm');

describe('the guesses on air and wood', () => {
  // Wood Handbook, Table 4-2, at 21.1 °C (70 °F): 12.0 % at 65 % relative humidity, 5.4 % at 25 %.
  test('a board from a shop at 65 % holds 12 % moisture, and comes to 5.4 % at 25 %', () => {
    expect(valuesOf('winter-moisture').moistureToday).toBeCloseTo(12, 0);
    expect(Math.abs((truth('winter-moisture') as number) - 5.4)).toBeLessThan(0.15);
  });

  // Steam tables: 611 Pa at 0 °C and 2487 Pa at 21 °C. 85 · 611 / 2487 = 20.9.
  test('air of 0 °C and 85 % has 21 % once it is heated to 21 °C', () => {
    expect(truth('heated-indoors')).toBeCloseTo(20.9, 1);
  });

  // The truth adds two delays; the series of the slab is summed without that shortcut.
  test.each(['mm', 'inch'] as const)(
    'a board twice as thick has come nine tenths of its way on that day, by the series (%s)',
    (system) => {
      const values = valuesOf('twice-as-thick-waits', system);
      const D = diffusionOf(values, values.moistureToday);
      if (isRefused(D)) throw new Error(D.refused);
      const slab = { thickness: system === 'mm' ? 12 : 12.7, diffusion: D.middle, surface: ROOM_SURFACE };
      expect(Math.abs((fractionDone(slab, daysOf(values, system, 2)) as number) - 0.9)).toBeLessThan(0.01);
    },
  );

  test('twice the thickness takes more than three times as long, and less than four', () => {
    const values = valuesOf('twice-as-thick-waits');
    const times = daysOf(values, 'mm', 2) / daysOf(values, 'mm', 1);
    expect(times).toBeGreaterThan(3);
    expect(times).toBeLessThan(4);
  });
});

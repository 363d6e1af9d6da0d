/** Two native grids, and the first choice between them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  format,
  isExact,
  type Kind,
  snap,
  stepDown,
  steps,
  stepUp,
  systemFromLocale,
  toField,
  type UnitSystem,
} from '../../src/units/index.ts';
import { kinds } from '../../src/units/kinds.ts';
import { parse } from '../../src/units/parse.ts';

describe('a control', () => {
  test('steps in half millimeters for one reader and in 1/32 in for another', () => {
    expect(stepUp(9.5, steps('length', 'mm'))).toBe(10);
    expect(stepUp(9.525, steps('length', 'inch'))).toBe(10.31875); // 13/32 in
    expect(stepDown(9.525, steps('length', 'inch'))).toBe(8.73125); // 11/32 in
  });
  test('takes a value from the other grid to the next point of its own', () => {
    expect(stepUp(9.525, steps('length', 'mm'))).toBe(10);
    expect(stepDown(9.525, steps('length', 'mm'))).toBe(9.5);
    expect(snap(9.5, steps('length', 'inch'))).toBe(9.525);
  });
  test('steps in another size where it is told to', () => {
    expect(stepUp(0.3, steps('length', 'mm', 0.1))).toBe(0.4);
    expect(stepUp(25.4, steps('length', 'inch', 1 / 64))).toBe(25.796875);
  });
  test('has a coarse step that is a whole number of fine ones', () => {
    expect(steps('length', 'inch').coarse).toBe(6.35); // 1/4 in
    for (const kind of Object.keys(kinds) as Kind[])
      for (const system of ['mm', 'inch'] as const) {
        const { step, coarse } = steps(kind, system);
        expect(coarse / step).toBeCloseTo(Math.round(coarse / step), 9);
      }
  });
  test('steps in whole degrees of the scale that is shown', () => {
    const fahrenheit = steps('temperature', 'inch');
    expect(format(stepUp(21, fahrenheit), 'temperature', { system: 'inch' })).toBe('70\u00a0°F'); // from 69.8
    expect(stepDown(0, fahrenheit)).toBeCloseTo((31 - 32) / 1.8, 10);
    expect(stepUp(21.4, steps('temperature', 'mm'))).toBe(22);
    const fives = stepUp((71 - 32) / 1.8, steps('temperature', 'inch', 5));
    expect(fives).toBeCloseTo((75 - 32) / 1.8, 10);
  });
  test('always moves, by no more than a step, and a snapped value stays', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1000, max: 1000, noNaN: true }),
        fc.constantFrom(steps('length', 'mm'), steps('length', 'inch'), steps('temperature', 'inch')),
        (value, grid) => {
          const slack = grid.step * 1e-6;
          for (const moved of [stepUp(value, grid) - value, value - stepDown(value, grid)]) {
            expect(moved).toBeGreaterThan(0);
            expect(moved).toBeLessThanOrEqual(grid.step + slack);
          }
          const snapped = snap(value, grid);
          expect(Math.abs(snapped - value)).toBeLessThanOrEqual(grid.step / 2 + slack);
          expect(snap(snapped, grid)).toBe(snapped);
          expect(stepDown(stepUp(snapped, grid), grid)).toBe(snapped);
        },
      ),
    );
  });
  test('a grid point in one system is printed there without rounding', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), (value) => {
        for (const system of ['mm', 'inch'] as const)
          expect(isExact(snap(value, steps('length', system)), system)).toBe(true);
      }),
    );
    expect(isExact(9.5, 'inch')).toBe(false);
    expect(isExact(9.525, 'mm')).toBe(false);
    expect(isExact(12.7, 'mm')).toBe(true);
  });
});

describe('a change of units', () => {
  const anyLength = fc.double({ min: -1000, max: 1000, noNaN: true });
  const system = fc.constantFrom<UnitSystem>('mm', 'inch');

  test('never moves a value: a point of either grid comes back from its own field exactly', () => {
    fc.assert(
      fc.property(anyLength, system, (value, native) => {
        const stored = snap(value, steps('length', native));
        expect(parse(toField(stored, 'length', native), 'length', native)).toEqual({
          ok: true,
          value: stored,
        });
      }),
    );
  });
  test('does not change what a text with its unit means', () => {
    fc.assert(
      fc.property(anyLength, system, (value, written) => {
        const text = format(value, 'length', { system: written });
        expect(parse(text, 'length', 'mm')).toEqual(parse(text, 'length', 'inch'));
        expect(parse(text, 'length', 'mm').ok).toBe(true);
      }),
    );
  });
});

describe('the first choice of units', () => {
  test.each([
    [['en-US'], 'inch'],
    [['en-US', 'en'], 'inch'],
    [['en', 'en-US'], 'inch'],
    [['es-US'], 'inch'],
    [['en-LR'], 'inch'],
    [['my'], 'inch'],
    [['my-MM'], 'inch'],
    [['en-Latn-US-u-ca-gregory'], 'inch'],
    [['en'], 'mm'],
    [['en-GB', 'en-US', 'en'], 'mm'],
    [['en-CA'], 'mm'],
    [['de', 'en-US', 'en'], 'mm'],
    [['de-DE'], 'mm'],
    [[], 'mm'],
    [['', 'not a tag', 'en-US'], 'inch'],
    [['_'], 'mm'],
  ] as const)('%j is %s', (languages, system) => {
    expect(systemFromLocale(languages)).toBe(system);
  });
});

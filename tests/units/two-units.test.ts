/** Two native units, and the first choice between them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { format, INCH, systemFromLocale, toField, type UnitSystem } from '../../src/units/index.ts';
import { parse } from '../../src/units/parse.ts';
import { clean } from '../../src/units/rounding.ts';

describe('a change of units', () => {
  const step = { mm: 0.5, inch: INCH / 32 };
  const anyLength = fc.double({ min: -1000, max: 1000, noNaN: true });
  const system = fc.constantFrom<UnitSystem>('mm', 'inch');

  test('never moves a value: a point of either grid comes back from its own field exactly', () => {
    fc.assert(
      fc.property(anyLength, system, (value, native) => {
        const stored = clean(Math.round(value / step[native]) * step[native]) + 0;
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

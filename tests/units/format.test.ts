/**
 * How numbers are printed and spoken. `~` stands for the space that does not break.
 * Over 150 lines: one printer, all its kinds.
 */
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  type Denominator,
  type FormatOptions,
  fieldUnit,
  format,
  type Kind,
  type Rounding,
  toField,
  type UnitSystem,
} from '../../src/units/index.ts';
import { kinds } from '../../src/units/kinds.ts';
import { parse } from '../../src/units/parse.ts';

const allKinds = Object.keys(kinds) as Kind[];
const show = (value: number, kind: Kind, options: FormatOptions) =>
  format(value, kind, options).replaceAll('\u00a0', '~');
const mm = (value: number, options: Partial<FormatOptions> = {}) =>
  show(value, 'length', { system: 'mm', ...options });
const inch = (inches: number, options: Partial<FormatOptions> = {}) =>
  show(inches * 25.4, 'length', { system: 'inch', ...options });
const read = (text: string, kind: Kind, system: UnitSystem): number => {
  const parsed = parse(text, kind, system);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.message}`);
  return parsed.value;
};

describe('millimeters', () => {
  test('have one decimal, which is dropped when it is 0', () => {
    expect([mm(9.525), mm(114), mm(114.04), mm(0)]).toEqual(['9.5~mm', '114~mm', '114~mm', '0~mm']);
  });
  test('have two decimals below a tenth', () => expect(mm(0.034)).toBe('0.03~mm'));
  test('have no, one or two decimals when asked', () => {
    expect([0, 1, 2].map((digits) => mm(9.525, { digits: digits as 0 | 1 | 2 }))).toEqual([
      '10~mm',
      '9.5~mm',
      '9.53~mm',
    ]);
  });
  test('round up, down, or to the nearest with a tie away from zero', () => {
    const all = (value: number) =>
      (['up', 'down', 'nearest'] as const).map((round) => mm(value, { round, digits: 1 }));
    expect(all(1.23)).toEqual(['1.3~mm', '1.2~mm', '1.2~mm']);
    expect(all(0.25)).toEqual(['0.3~mm', '0.2~mm', '0.3~mm']);
    expect(all(-0.25)).toEqual(['−0.2~mm', '−0.3~mm', '−0.3~mm']);
  });
  test('a tie that arithmetic has bent is still a tie, and a value on the step stays on it', () => {
    expect(mm(1.005, { digits: 2 })).toBe('1.01~mm'); // 1.005 × 100 is 100.49999999999999 in binary
    expect(mm(0.1 + 0.2, { round: 'up' })).toBe('0.3~mm');
    expect(mm(0.7 + 0.1, { round: 'down' })).toBe('0.8~mm');
  });
  test('from five digits on are set apart in threes', () => {
    expect([mm(1234), mm(12345.6), mm(1234567)]).toEqual([
      '1234~mm',
      '12\u202f345.6~mm',
      '1\u202f234\u202f567~mm',
    ]);
  });
});

describe('inches', () => {
  test('are reduced fractions, in 64ths below one inch and 32nds above', () => {
    expect([0.375, 1.375, 4.5, 2, 63 / 64, 1 + 1 / 64].map((value) => inch(value))).toEqual([
      '3/8~in',
      '1~3/8~in',
      '4~1/2~in',
      '2~in',
      '63/64~in',
      '1~1/32~in',
    ]);
  });
  test('round to the parts the caller names', () => {
    expect(inch(0.4, { denominator: 8 })).toBe('3/8~in');
    expect(inch(0.4, { denominator: 8, round: 'up' })).toBe('1/2~in');
    expect(inch(5.49, { denominator: 16, round: 'down' })).toBe('5~7/16~in');
    expect(inch(0.999)).toBe('1~in');
  });
  test('are thousandths below 1/64 in, and where the fraction would be 0', () => {
    expect([0.004, 0.01, 0.015].map((value) => inch(value))).toEqual(['0.004~in', '0.010~in', '0.015~in']);
    expect(inch(0.03, { denominator: 8 })).toBe('0.030~in');
    expect(inch(1 / 64)).toBe('1/64~in');
    expect([inch(0.0001), inch(0)]).toEqual(['0~in', '0~in']);
  });
  test('are decimals for a caliper where thousandths are asked for, above an inch too', () => {
    expect(inch(3 / 64, { denominator: 1000 })).toBe('0.047~in');
    expect(inch(1.18, { denominator: 1000 })).toBe('1.18~in');
  });
  test('a positive length never rounds up to 0', () => {
    expect([inch(1e-9, { round: 'up' }), mm(0.0001, { round: 'up' })]).toEqual(['0.001~in', '0.01~mm']);
    expect(mm(0.0001, { round: 'up', digits: 0 })).toBe('1~mm');
  });
  test('what arithmetic leaves of 0, less than a ten-millionth of a step, is 0', () => {
    expect([inch(1e-12, { round: 'up' }), mm(0.3 - 0.1 - 0.2, { round: 'down' })]).toEqual(['0~in', '0~mm']);
  });
  test('below zero have the minus sign, and zero never has', () => {
    expect([inch(-1.375), inch(-0.00001), mm(-0.001)]).toEqual(['−1~3/8~in', '0~in', '0~mm']);
  });
  test('every 1/64 in from 0 to 12 in is what fraction.js makes of it, forth and back', () => {
    for (let count = 0; count <= 12 * 64; count++) {
      const millimeters = (count * 254) / 640;
      const expected = new Fraction(count, 64).toFraction(true);
      for (const round of ['up', 'down', 'nearest'] as const) {
        const found = format(millimeters, 'length', { system: 'inch', round, denominator: 64 });
        expect(found.replaceAll('\u00a0', ' ')).toBe(`${expected} in`);
      }
      expect(read(`${expected} in`, 'length', 'mm')).toBe(millimeters);
    }
  });
});

test('other kinds have their own units in each system', () => {
  const both = (value: number, kind: Kind) =>
    (['mm', 'inch'] as const).map((system) => show(value, kind, { system }));
  expect(both(45, 'percent')).toEqual(['45~%', '45~%']);
  expect(both(2.54, 'points')).toEqual(['2.5~points', '2.5~points']);
  expect(both(1, 'points')).toEqual(['1~point', '1~point']);
  expect(both(25, 'temperature')).toEqual(['25~°C', '77~°F']);
  expect(both(-40, 'temperature')).toEqual(['−40~°C', '−40~°F']);
  expect(both(22.5, 'angle')).toEqual(['22.5°', '22.5°']);
  expect(both((1 + Math.sqrt(5)) / 2, 'ratio')).toEqual(['1.618', '1.618']);
  expect(both(9, 'count')).toEqual(['9', '9']);
  expect(both(1, 'days')).toEqual(['1~day', '1~day']);
  expect(both(0.0625, 'number')).toEqual(['0.0625', '0.0625']);
  expect(both(0.00248, 'number')).toEqual(['0.00248', '0.00248']);
  // 40 N / 4.448222 = 8.992; 1 N/mm = 5.710 lbf/in; 1 MPa = 145.0 psi (NIST SP 811, appendix B, from memory)
  expect(both(40, 'force')).toEqual(['40~N', '8.99~lbf']);
  expect(both(1, 'lineLoad')).toEqual(['1~N/mm', '5.71~lbf/in']);
  expect(both(1, 'stress')).toEqual(['1~MPa', '145~psi']);
  expect(both(350, 'mass')).toEqual(['350~g', '12.3~oz']);
  expect(both(1360.77711, 'mass')).toEqual(['1.36~kg', '3~lb']);
  expect(both(16387.064 * 30, 'volume')).toEqual(['492~cm³', '30~in³']);
  expect(both(2.5e6, 'volume')).toEqual(['2.5~L', '153~in³']);
  expect(both(64516, 'area')).toEqual(['645~cm²', '100~in²']);
});

test('what is not a number prints as a dash', () => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e300])
    for (const kind of allKinds) {
      expect(format(value, kind, { system: 'inch' })).toBe('–');
      expect(format(value, kind, { system: 'mm', spoken: true })).toBe('no value');
      expect(toField(value, kind, 'mm')).toBe('');
    }
});

describe('for the ear', () => {
  test.each<[number, string]>([
    [3 / 8, '3 eighths of an inch'],
    [1 / 8, '1 eighth of an inch'],
    [1.375, '1 and 3 eighths inches'],
    [4.5, '4 and 1 half inches'],
    [1, '1 inch'],
    [2, '2 inches'],
    [5 / 32, '5 thirty-seconds of an inch'],
    [0.004, '4 thousandths of an inch'],
    [-0.75, 'minus 3 quarters of an inch'],
  ])('%d in is spoken "%s"', (inches, words) => {
    expect(format(inches * 25.4, 'length', { system: 'inch', spoken: true })).toBe(words);
  });
  test('units are spoken in full, one of it in the singular', () => {
    const say = (value: number, kind: Kind, system: UnitSystem = 'mm') =>
      format(value, kind, { system, spoken: true });
    expect(say(9.5, 'length')).toBe('9.5 millimeters');
    expect(say(1, 'length')).toBe('1 millimeter');
    expect(say(45, 'percent')).toBe('45 percent');
    expect(say(1, 'points')).toBe('1 percentage point');
    expect(say(25, 'temperature', 'inch')).toBe('77 degrees Fahrenheit');
    expect(say(-3, 'temperature')).toBe('minus 3 degrees Celsius');
    expect(say(6, 'lineLoad')).toBe('6 newtons per millimeter');
    expect(say(4.4482216152605, 'force', 'inch')).toBe('1 pound-force');
    expect(say(1.6, 'ratio')).toBe('1.6');
    expect(format(34.925, 'length', { system: 'inch', spoken: true, unit: false })).toBe('1 and 3 eighths');
  });
});

describe('over all lengths', () => {
  const anyLength = fc.double({ min: -5000, max: 5000, noNaN: true });
  const anyRound = fc.constantFrom<Rounding>('up', 'down', 'nearest');
  const noise = 1e-5;

  test('what is printed reads back within the rounding, never below when up, never above when down', () => {
    fc.assert(
      fc.property(
        fc.oneof(anyLength, fc.double({ min: -1, max: 1, noNaN: true })),
        anyRound,
        fc.constantFrom<Denominator>(8, 16, 32, 64),
        fc.constantFrom<0 | 1 | 2>(0, 1, 2),
        (value, round, denominator, digits) => {
          for (const system of ['mm', 'inch'] as const) {
            const back = read(
              format(value, 'length', { system, round, denominator, digits }),
              'length',
              system,
            );
            const step = system === 'mm' ? 10 ** -digits : 25.4 / denominator;
            expect(Math.abs(back - value)).toBeLessThanOrEqual(
              (round === 'nearest' ? step / 2 : step) + noise,
            );
            if (round === 'up') expect(back).toBeGreaterThanOrEqual(value - noise);
            if (round === 'down') expect(back).toBeLessThanOrEqual(value + noise);
          }
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('a fraction is always reduced, proper, and in parts of 64 or fewer', () => {
    fc.assert(
      fc.property(anyLength, anyRound, (value, round) => {
        const text = format(value, 'length', { system: 'inch', round });
        const [, above, below] = /(\d+)\/(\d+)/.exec(text) ?? [];
        if (!above) return;
        expect([2, 4, 8, 16, 32, 64]).toContain(Number(below));
        expect(Number(above) % 2).toBe(1);
        expect(Number(above)).toBeLessThan(Number(below));
      }),
    );
  });

  test('eye and ear get the same number', () => {
    fc.assert(
      fc.property(anyLength, (value) => {
        const spoken = format(value * 10, 'length', { system: 'mm', spoken: true }).replace('minus ', '-');
        expect(read(spoken, 'length', 'mm')).toBe(
          read(format(value * 10, 'length', { system: 'mm' }), 'length', 'mm'),
        );
      }),
    );
  });
});

describe('the number field', () => {
  test('is named by its unit', () => {
    expect([
      fieldUnit('length', 'mm'),
      fieldUnit('length', 'inch'),
      fieldUnit('temperature', 'inch'),
    ]).toEqual(['mm', 'in', '°F']);
    expect(fieldUnit('ratio', 'mm')).toBe('');
  });
  test('holds what can be typed: plain spaces, a hyphen, no unit', () => {
    expect(toField(34.925, 'length', 'inch')).toBe('1 3/8');
    expect(toField(-34.925, 'length', 'inch')).toBe('-1 3/8');
    expect(toField(9.525, 'length', 'mm')).toBe('9.53');
    expect(toField(123456, 'length', 'mm')).toBe('123456');
    expect(toField(1500, 'mass', 'mm')).toBe('1500');
  });
  test('reads back within half of its last step, for every kind and system', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        fc.constantFrom(...allKinds),
        fc.constantFrom<UnitSystem>('mm', 'inch'),
        (value, kind, system) => {
          const { size, digits } = kinds[kind][system][0]!;
          const back = read(toField(value, kind, system), kind, system);
          const step =
            kind === 'length'
              ? system === 'mm'
                ? 0.01
                : 25.4 / 64
              : digits !== undefined
                ? size / 10 ** digits
                : Math.max(1e-3 * size, Math.min(size, value / 100));
          expect(Math.abs(back - value)).toBeLessThanOrEqual(step / 2 + 1e-6 * step);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

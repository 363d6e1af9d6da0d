/** Sizes on each ruler, and what is left beside a part. `_` stands for the space that does not break. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type FormatOptions,
  format,
  type RulerName,
  rulerNames,
  rulers,
  usualRuler,
} from '../../src/units/index.ts';
import { parse } from '../../src/units/parse.ts';

const on = (name: RulerName, mm: number, options: Partial<FormatOptions> = {}) =>
  format(mm, 'length', {
    system: rulers[name].system,
    as: 'size',
    ruler: rulers[name],
    ...options,
  }).replaceAll('\u00a0', '_');
const inch = (value: number) => value * 25.4;
const read = (text: string) => {
  const parsed = parse(text.replaceAll('_', ' '), 'length', 'mm');
  if (!parsed.ok) throw new Error(`${text}: ${parsed.message}`);
  return parsed.value;
};

describe('a size', () => {
  // 4 17/64 in lies between 4 1/4 and 4 5/16 (4.2656; the nearer is 4 1/4), and between 4.26 and 4.27.
  test.each<[RulerName, string]>([
    ['1/16 in', '~4_1/4_in'],
    ['1/32 in', '~4_9/32_in'],
    ['1/64 in', '4_17/64_in'],
    ['0.01 in', '~4.27_in'],
  ])('of 4 17/64 in on a rule in %s reads %s', (name, text) =>
    expect(on(name, inch(4 + 17 / 64))).toBe(text),
  );

  test.each<[RulerName, number, string]>([
    ['1 mm', 103, '103_mm'],
    ['1 mm', 102.8, '~103_mm'],
    ['0.5 mm', 102.8, '~103_mm'],
    ['0.5 mm', 102.7, '~102.5_mm'],
    ['0.5 mm', 4.5, '4.5_mm'],
  ])('on a rule in %s, %d mm, reads %s', (name, value, text) => expect(on(name, value)).toBe(text));

  test('on a decimal rule has no fractions', () => {
    expect([on('0.01 in', inch(4.25)), on('0.01 in', inch(2)), on('0.01 in', inch(5 / 16))]).toEqual([
      '4.25_in',
      '2_in',
      // 0.3125 is 31.25 hundredths.
      '~0.31_in',
    ]);
  });

  test('of a panel goes down: to a mark of the ruler that it lies on, else to the next finer one, by intent and so without ~', () => {
    const down = { round: 'down' } as const;
    expect(on('1/16 in', inch(4.25), down)).toBe('4_1/4_in');
    // 4.27 in is 273.28 of 1/64.
    expect(on('1/16 in', inch(4.27), down)).toBe('4_17/64_in');
    expect(on('1 mm', 102.87, down)).toBe('102.8_mm');
    expect(on('0.01 in', inch(4.2789), down)).toBe('4.27_in');
  });

  test('of a rough board goes up to a mark', () => {
    expect([on('1/16 in', inch(4.27), { round: 'up' }), on('1 mm', 102.2, { round: 'up' })]).toEqual([
      '4_5/16_in',
      '103_mm',
    ]);
  });

  test('too small for a mark is written exactly, and nothing is nothing', () => {
    expect([on('1 mm', 0.3), on('1/16 in', inch(0.012)), on('1 mm', 0)]).toEqual([
      '0.3_mm',
      '0.012_in',
      '0_mm',
    ]);
  });

  test('is heard with "about" where it is seen with ~', () =>
    expect(on('1/32 in', inch(4 + 17 / 64), { spoken: true })).toBe('about 4 and 9 thirty-seconds inches'));

  test('that a reader copies from the page with its ~ can be typed', () => expect(read('~103_mm')).toBe(103));
});

describe('what is left beside a part', () => {
  const left = (name: RulerName, mm: number) => on(name, mm, { as: 'left' });
  test('goes up to 1/64 in or 0.1 mm, with the exact number beside it', () => {
    // 0.04 in is 2.56 of 1/64; 3/128 in is 0.0234 in, and up to a thousandth 0.024.
    expect([
      left('1/32 in', inch(0.04)),
      left('1/16 in', inch(3 / 128)),
      left('1/32 in', inch(3 / 64)),
    ]).toEqual(['3/64_in (0.040_in)', '1/32_in (0.024_in)', '3/64_in']);
    expect([left('1 mm', 1.14), left('0.5 mm', 0.6)]).toEqual(['1.2_mm (1.14_mm)', '0.6_mm']);
    expect(left('0.01 in', inch(0.037))).toBe('0.04_in (0.037_in)');
  });
  test('of less than half a mark stands alone', () => {
    expect([left('1/32 in', inch(0.005)), left('0.5 mm', 0.03), left('0.5 mm', -0.2)]).toEqual([
      '0.005_in',
      '0.03_mm',
      '−0.2_mm',
    ]);
  });
});

test('who has chosen no ruler has one in 32nds, or in half millimeters', () => {
  expect([usualRuler.inch.name, usualRuler.mm.name]).toEqual(['1/32 in', '0.5 mm']);
  expect(format(102.8, 'length', { system: 'mm', as: 'size' })).toBe('~103\u00a0mm');
});

describe('for any length and ruler', () => {
  const name = fc.constantFrom(...rulerNames);
  const length = fc.double({ min: 0.6, max: 700, noNaN: true });

  test('a size is a whole number of marks, no further off than half of one, and has ~ just where it is off', () => {
    fc.assert(
      fc.property(name, length, (ruler, value) => {
        const { mark } = rulers[ruler];
        if (value < mark / 2) return;
        const text = on(ruler, value);
        const shown = read(text);
        expect(Math.abs(shown / mark - Math.round(shown / mark)), text).toBeLessThan(1e-6);
        expect(Math.abs(shown - value)).toBeLessThanOrEqual(mark / 2 + 1e-6);
        expect(text.startsWith('~')).toBe(Math.abs(shown - value) > 1e-6 * mark);
      }),
      { numRuns: 1000 },
    );
  });

  test('a whole number of marks has no ~, whatever arithmetic did to it', () => {
    fc.assert(
      fc.property(
        name,
        fc.integer({ min: 1, max: 2000 }),
        fc.integer({ min: 1, max: 2000 }),
        (ruler, a, b) => {
          const { mark } = rulers[ruler];
          expect(on(ruler, a * mark + b * mark - 0.1 + 0.1)).not.toContain('~');
        },
      ),
    );
  });

  test('a panel is never shown larger, a rough size and a gap never smaller, each by less than its mark', () => {
    fc.assert(
      fc.property(name, length, (ruler, value) => {
        const { mark, fit } = rulers[ruler];
        const panel = value - read(on(ruler, value, { round: 'down' }));
        expect(panel).toBeGreaterThan(-1e-5);
        expect(panel).toBeLessThan(fit);
        const rough = read(on(ruler, value, { round: 'up' })) - value;
        expect(rough).toBeGreaterThan(-1e-5);
        expect(rough).toBeLessThan(mark);
        const gap = read(on(ruler, value, { as: 'left' }).replace(/ \(.*/, '')) - value;
        expect(gap).toBeGreaterThan(-1e-5);
        expect(gap).toBeLessThan(fit);
      }),
      { numRuns: 1000 },
    );
  });
});

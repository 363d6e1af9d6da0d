/** Small lengths in thousandths with the mark of the rule beside them. `~` stands for the space that does not break. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FormatOptions, format, type Rounding } from '../../src/units/index.ts';
import { parse } from '../../src/units/parse.ts';

const fine = (mm: number, options: Partial<FormatOptions> = {}) =>
  format(mm, 'length', { system: 'inch', as: 'fine', ...options }).replaceAll('\u00a0', '~');
const inches = (value: number, options: Partial<FormatOptions> = {}) => fine(value * 25.4, options);

describe('in text', () => {
  // By hand: 1/32 is 0.03125, so 0.040 is 1.28 of it, 0.026 is 0.832, 0.152 is 4.864; 1/64 is 0.015625.
  test.each([
    [0.04, '0.040~in, a strong~1/32'],
    [0.026, '0.026~in, a scant~1/32'],
    [0.038, '0.038~in, a strong~1/32'],
    [0.152, '0.152~in, a scant~5/32'],
    // 1.056 of 1/32, and 0.928: within 8 %.
    [0.033, '0.033~in, 1/32'],
    [0.029, '0.029~in, 1/32'],
    // 1.088 and 0.912: no longer.
    [0.034, '0.034~in, a strong~1/32'],
    [0.0285, '0.029~in, 1/32'],
    // 1.44 and 1.568 of 1/32 are half way, 1.408 and 1.6 are not.
    [0.045, '0.045~in, half way from~1/32 to~1/16'],
    [0.049, '0.049~in, half way from~1/32 to~1/16'],
    [0.044, '0.044~in, a strong~1/32'],
    [0.05, '0.050~in, a scant~1/16'],
    // Under 0.0234 in 64ths: 0.020 is 1.28 of them, 0.016 is 1.02, 0.022 is 1.41, 0.023 is 1.47.
    [0.02, '0.020~in, a strong~1/64'],
    [0.016, '0.016~in, 1/64'],
    [0.022, '0.022~in, a strong~1/64'],
    [0.023, '0.023~in, half way from~1/64 to~1/32'],
    [0.024, '0.024~in, a scant~1/32'],
    // 0.008 is 0.51 of 1/64, 0.010 is 0.64; 0.007 is less than half.
    [0.008, '0.008~in, half of~1/64'],
    [0.01, '0.010~in, a scant~1/64'],
    [0.007, '0.007~in'],
    [0.0623, '0.062~in, 1/16'],
    [0.2499, '0.250~in, 1/4'],
    [0, '0~in'],
    [-0.04, '−0.040~in, a strong~1/32'],
  ])('%d in is "%s"', (value, text) => expect(inches(value)).toBe(text));

  test('0.97 and 0.65 mm, both 1/32 in on a rule, read differently', () => {
    // 0.97 / 25.4 = 0.03819; 0.65 / 25.4 = 0.02559.
    expect([fine(0.97), fine(0.65)]).toEqual(['0.038~in, a strong~1/32', '0.026~in, a scant~1/32']);
    const mm = (value: number) => format(value, 'length', { system: 'mm', as: 'fine' });
    expect([mm(0.97), mm(0.65)]).toEqual(['0.97\u00a0mm', '0.65\u00a0mm']);
  });
  test('gaps go up and panels down to the next thousandth, and the mark is that of the number shown', () => {
    // 0.0333 in is 1.066 of 1/32, which is on the mark; its 0.034 is 1.088, which is not.
    expect(inches(0.0333, { round: 'up' })).toBe('0.034~in, a strong~1/32');
    expect(inches(0.0333, { round: 'down' })).toBe('0.033~in, 1/32');
    expect(inches(1e-6, { round: 'up' })).toBe('0.001~in');
  });
});

test('in a drawing the mark is short', () => {
  expect([0.04, 0.026, 0.031, 0.047, 0.008].map((one) => inches(one, { short: true }))).toEqual([
    '0.040~in~(1/32~+)',
    '0.026~in~(1/32~−)',
    '0.031~in~(1/32)',
    '0.047~in~(1/32~to~1/16)',
    '0.008~in~(half~1/64)',
  ]);
});

test('for the ear the mark is said in words', () => {
  expect(inches(0.04, { spoken: true })).toBe('0.04 inches, a strong 1 thirty-second');
  expect(inches(0.152, { spoken: true })).toBe('0.152 inches, a scant 5 thirty-seconds');
  expect(inches(-0.001, { spoken: true })).toBe('minus 0.001 inches');
});

test('from a quarter of an inch on it is a length like any other, in both units', () => {
  expect(inches(0.26)).toBe('17/64~in');
  expect(format(6.6, 'length', { system: 'mm', as: 'fine' })).toBe('6.6\u00a0mm');
  expect(format(6.34, 'length', { system: 'mm', as: 'fine' })).toBe('6.34\u00a0mm');
});

test('a number in a field has no mark beside it', () => expect(inches(0.04, { unit: false })).toBe('0.040'));

describe('over all small lengths', () => {
  const small = fc.double({ min: 0.001, max: 6.3, noNaN: true });
  const read = (text: string) => {
    const parsed = parse(text, 'length', 'inch');
    if (!parsed.ok) throw new Error(`${text}: ${parsed.message}`);
    return parsed.value;
  };

  test('the number reads back within its thousandth, on the side it was rounded to', () => {
    fc.assert(
      fc.property(small, fc.constantFrom<Rounding>('up', 'down', 'nearest'), (value, round) => {
        const [number] = format(value, 'length', { system: 'inch', as: 'fine', round }).split(', ');
        const off = read(number!) - value;
        expect(Math.abs(off)).toBeLessThanOrEqual((round === 'nearest' ? 0.0127 : 0.0254) + 1e-5);
        if (round === 'up') expect(off).toBeGreaterThanOrEqual(-1e-5);
        if (round === 'down') expect(off).toBeLessThanOrEqual(1e-5);
      }),
      { numRuns: 1000 },
    );
  });

  test('strong lies above its mark, scant below it, by less than half a division, and none lies nearer to another mark', () => {
    fc.assert(
      fc.property(small, (value) => {
        const [number, mark] = fine(value).replaceAll('~', ' ').split(', ');
        const found = /^(a strong |a scant |)(\d+)\/(\d+)$/.exec(mark ?? '');
        if (!found) return;
        const shown = Number(number!.replace(' in', ''));
        const [, word, above, below] = found;
        const off = shown - Number(above) / Number(below);
        const division = shown < 0.0234375 ? 1 / 64 : 1 / 32;
        if (word === 'a strong ') expect(off).toBeGreaterThan(0.08 * division);
        else if (word === 'a scant ') expect(off).toBeLessThan(-0.08 * division);
        else expect(Math.abs(off)).toBeLessThanOrEqual(0.08 * division + 1e-9);
        expect(Math.abs(off)).toBeLessThan(0.42 * division + 1e-9);
      }),
      { numRuns: 1000 },
    );
  });
});

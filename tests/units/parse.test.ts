/** What a reader may type in a number field, and what the page answers when it cannot be read. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Kind, UnitSystem } from '../../src/units/index.ts';
import { kinds } from '../../src/units/kinds.ts';
import { parse } from '../../src/units/parse.ts';

const allKinds = Object.keys(kinds) as Kind[];
const systems: readonly UnitSystem[] = ['mm', 'inch'];
const readOrWhy = (text: string, kind: Kind = 'length', system: UnitSystem = 'inch') => {
  const parsed = parse(text, kind, system);
  return parsed.ok ? parsed.value : parsed.message;
};

describe('a length in a field for inches', () => {
  // Expected in 1/64 in, counted by hand; 1 in = 25.4 mm by definition.
  test.each([
    ['4 1/2', 288],
    ['4-1/2 in', 288],
    ['4 - 1/2', 288],
    ['4 and 1/2 inches', 288],
    ['4½"', 288],
    ['4½”', 288],
    ['4 ½ in.', 288],
    ['4.5', 288],
    ['4,5', 288],
    ['.5', 32],
    ['5.', 320],
    ['3/8', 24],
    ['3⁄8 in', 24],
    ['⅜ in', 24],
    [' ⅜\u00a0IN ', 24],
    ['41/2', 41 * 32],
    ['-1 1/2', -96],
    ['−1 1/2', -96],
    ['1\' 2 1/4"', 14.25 * 64],
    ['1′ 2¼″', 14.25 * 64],
    ["1'2", 14 * 64],
    ['1 ft 2 in', 14 * 64],
    ['1 foot - 2 1/4 inches', 14.25 * 64],
    ["1' 2 1/4''", 14.25 * 64],
    ["-1' 2", -14 * 64],
    ["2'", 24 * 64],
    ['1/2 ft', 6 * 64],
    ['４ １/２', 288],
    // A fraction in small digits, as some keyboards write it.
    ['1¹/₂', 96],
    ['1 ¹⁄₂ in', 96],
    ['³/₈', 24],
    ['4³/₁₆"', 4 * 64 + 12],
    ["12'6", 150 * 64],
  ])('%s', (text, sixtyFourths) => {
    expect(readOrWhy(text)).toBeCloseTo((sixtyFourths / 64) * 25.4, 10);
  });
});

describe('a length in a field for mm', () => {
  test.each([
    ['114', 114],
    ['114 mm', 114],
    ['114mm', 114],
    ['114 millimetres', 114],
    ['1 millimeter', 1],
    ['11.4 cm', 114],
    ['11,4 cm', 114],
    ['0.5m', 500],
    ['0,125', 0.125],
    ['9 1/2', 9.5],
    ['3/8 in', 9.525],
    ['10\u202f000', 10000],
  ])('%s', (text, millimeters) => {
    expect(parse(text, 'length', 'mm')).toEqual({ ok: true, value: millimeters });
  });
});

describe('other kinds take the unit of their field, or another unit of the kind', () => {
  test.each<[string, Kind, UnitSystem, number]>([
    ['45', 'percent', 'mm', 45],
    ['45 %', 'percent', 'inch', 45],
    ['2.5', 'points', 'mm', 2.5],
    ['2.5 points', 'points', 'mm', 2.5],
    ['2,5 %', 'points', 'mm', 2.5],
    ['1 percentage point', 'points', 'mm', 1],
    ['45°', 'angle', 'mm', 45],
    ['45 deg', 'angle', 'mm', 45],
    ['22 1/2 degrees', 'angle', 'mm', 22.5],
    ['21', 'temperature', 'mm', 21],
    ['21 C', 'temperature', 'inch', 21],
    ['21 °C', 'temperature', 'inch', 21],
    ['−5 °C', 'temperature', 'mm', -5],
    // Fixed points of the scales: ice 32 °F, steam 212 °F, equal at −40, 77 °F = 25 °C.
    ['32', 'temperature', 'inch', 0],
    ['212 F', 'temperature', 'mm', 100],
    ['-40°F', 'temperature', 'mm', -40],
    ['77 ℉', 'temperature', 'mm', 25],
    ['50°', 'temperature', 'inch', 10],
    ['1.6', 'ratio', 'mm', 1.6],
    ['8:5', 'ratio', 'mm', 1.6],
    ['8 to 5', 'ratio', 'mm', 1.6],
    ['8/5', 'ratio', 'mm', 1.6],
    ['1.6:1', 'ratio', 'mm', 1.6],
    ['9', 'count', 'mm', 9],
    ['14 days', 'days', 'mm', 14],
    ['1 day', 'days', 'mm', 1],
    ['1 kg', 'mass', 'inch', 1000],
    ['2 cm³', 'volume', 'mm', 2000],
    ['2 cm3', 'volume', 'mm', 2000],
    ['1 litre', 'volume', 'mm', 1e6],
    ['2 cm²', 'area', 'mm', 200],
    ['800 mm²', 'area', 'mm', 800],
    ['800 mm2', 'area', 'inch', 800],
    ['5 MPa', 'stress', 'inch', 5],
    ['5 N/mm²', 'stress', 'inch', 5],
  ])('%s as %s in %s is %d', (text, kind, system, value) => {
    expect(readOrWhy(text, kind, system)).toBe(value);
  });

  // NIST SP 811 (2008), appendix B.8, printed to seven figures (from memory).
  test.each<[string, Kind, number]>([
    ['1 lbf', 'force', 4.448222],
    ['1 lbf/in', 'lineLoad', 175.1268 / 1000],
    ['1 psi', 'stress', 6.894757e-3],
    ['1 oz', 'mass', 28.34952],
    ['1 lb', 'mass', 453.5924],
    ['1 in³', 'volume', 16387.06],
    ['1 in²', 'area', 645.16],
  ])('%s as %s agrees with the table of NIST SP 811', (text, kind, value) => {
    expect(Math.abs(Number(readOrWhy(text, kind, 'mm')) / value - 1)).toBeLessThan(5e-7);
  });

  test('a pound-force is a pound under standard gravity, and sixteen ounces are a pound', () => {
    expect(readOrWhy('1 lbf', 'force')).toBeCloseTo(0.45359237 * 9.80665, 11);
    expect(readOrWhy('16 oz', 'mass')).toBe(453.59237);
  });
});

describe('bad text gets a message with an example in the unit of the field', () => {
  const inMm = ' Write a length, such as 9.5 mm or 3/8 in.';
  test.each([
    ['', `Nothing is written here.${inMm}`],
    ['  \t ', `Nothing is written here.${inMm}`],
    ['abc', `This does not start with a number.${inMm}`],
    ['-', `This does not start with a number.${inMm}`],
    ['NaN', `This does not start with a number.${inMm}`],
    ['Infinity', `This does not start with a number.${inMm}`],
    ['12 C', `°C belongs to a temperature.${inMm}`],
    ['12 kg', `kg belongs to a mass.${inMm}`],
    ['12 %', `% belongs to a percentage.${inMm}`],
    ['45°', `° belongs to an angle.${inMm}`],
    ['12 furlongs', `The text after the number is not a unit for a length.${inMm}`],
    ['1/2/3', `The text after the number is not a unit for a length.${inMm}`],
    ['4.5 1/2', `The text after the number is not a unit for a length.${inMm}`],
    ['1e3', `The text after the number is not a unit for a length.${inMm}`],
    ['3/0', `A fraction cannot have 0 below the line.${inMm}`],
    ['1 3/0 in', `A fraction cannot have 0 below the line.${inMm}`],
    ["1' 3/0", `A fraction cannot have 0 below the line.${inMm}`],
    // A power and a thousands mark are no part of a length: 3² is not 32, and 1'000 is not 1 ft 0 in.
    ['3²', `The text after the number is not a unit for a length.${inMm}`],
    ['10³ mm', `The text after the number is not a unit for a length.${inMm}`],
    ['3₂', `The text after the number is not a unit for a length.${inMm}`],
    ["1'000", `Write 1000, or add the unit of the last number, because 1'000 can mean both.${inMm}`],
    ['1’250', `Write 1250, or add the unit of the last number, because 1'250 can mean both.${inMm}`],
    ['1,250', `Write 1250 or 1.250, because 1,250 can mean both.${inMm}`],
    ['9'.repeat(30), `This number is too large.${inMm}`],
    ['9'.repeat(61), `This is too long to be a number.${inMm}`],
  ])('%s', (text, message) => {
    expect(parse(text, 'length', 'mm')).toEqual({ ok: false, message });
  });

  test.each<[string, Kind, string]>([
    ['', 'length', 'Nothing is written here. Write a length, such as 3/8 in or 9.5 mm.'],
    ['x', 'temperature', 'This does not start with a number. Write a temperature, such as 70 °F.'],
    ['x', 'angle', 'This does not start with a number. Write an angle, such as 45°.'],
    ['2.5', 'count', 'This is not a whole number. Write a whole number, such as 9.'],
    ['2 eggs', 'count', 'No unit is wanted here. Write a whole number, such as 9.'],
    ['3 in', 'count', 'in belongs to a length. Write a whole number, such as 9.'],
    ['999999999:.0000001', 'ratio', 'This number is too large. Write a ratio, such as 1.6 or 8:5.'],
    ['8:0', 'ratio', 'A ratio cannot end in 0. Write a ratio, such as 1.6 or 8:5.'],
  ])('%s as %s in a field for inches', (text, kind, message) => {
    expect(readOrWhy(text, kind)).toBe(message);
  });
});

describe('no text can break it', () => {
  const anyText = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 80 }),
    fc.string({ unit: fc.constantFrom(...'0123456789/.,-+ \'"½⅜′″°%:CFinftmm\u202f\u00a0'), maxLength: 70 }),
  );
  test('any string gives a finite value or a message, for every kind and system', () => {
    fc.assert(
      fc.property(
        anyText,
        fc.constantFrom(...allKinds),
        fc.constantFrom(...systems),
        (text, kind, system) => {
          const parsed = parse(text, kind, system);
          if (parsed.ok) expect(Math.abs(parsed.value)).toBeLessThan(1e12);
          else expect(parsed.message).toMatch(/\. Write an? .+\.$/);
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('the longest text that is read at all, in its most ambiguous forms, is answered at once, and so is a very long one', () => {
    const worst = [
      '9'.repeat(1e6),
      '1 '.repeat(30),
      '1'.repeat(60),
      ' '.repeat(59) + 1,
      "'".repeat(60),
      `${'1'.repeat(58)}/x`,
    ];
    const start = performance.now();
    for (const text of worst) for (const kind of allKinds) parse(text, kind, 'inch');
    expect(performance.now() - start).toBeLessThan(1000);
  });
});

/** Sums with units: the expected values are worked by hand, or are exact by definition. */
import { describe, expect, test } from 'vitest';
import { exampleFor } from '../../../src/box/subjects/example.ts';
import { numbersOf } from '../../../src/notebook/scratch/names.ts';
import { inBoth, said, workAll } from './core.ts';

describe('what a maker types is read as on paper', () => {
  test.each([
    // 12 × 0.00274 × 4 = 0.13152 in, × 25.4 = 3.3406 mm.
    ['12 in * 0.00274 * 4', '3.3406 mm'],
    ['2 3/8 in', '60.325 mm'],
    ['2 3/8" + 1/16"', '61.912 mm'],
    ['1½ in', '38.1 mm'],
    ['1 ft 6 in', '457.2 mm'],
    ['5\' 3 1/2"', '1612.9 mm'],
    ["1' to in", '12 in'],
    ['3 × 4 mm ÷ 2 − 1 mm', '5 mm'],
    ['10 mm²', '10 mm²'],
    ['1 in^2 to mm^2', '645.16 mm²'],
    ['12 in / 3 in', '4'],
    ['6 in / 4', '38.1 mm'],
    ['1 lbf/in to N/mm', '0.17513 N/mm'],
    ['1000 psi to MPa', '6.8948 MPa'],
    ['212 °F to °C', '100 °C'],
    ['-40 degC to degF', '−40 °F'],
    ['sin(30 deg)', '0.5'],
    ['atan(1)', '45°'],
    ['sqrt(9 mm^2)', '3 mm'],
    ['max(1 in, 20 mm, 1 mm)', '25.4 mm'],
    ['round(19 mm, 1/16 in)', '19.05 mm'],
    ['roundDown(20 mm, 1/16 in)', '19.05 mm'],
    ['roundUp(0.3 mm, 0.1 mm)', '0.3 mm'],
    ['abs(-3/8 in)', '9.525 mm'],
    ['2 > 1 ? 3 mm : 4 mm', '3 mm'],
    ['phi * 100 mm', '161.8 mm'],
    ['x = 3 mm; x * 2 # doubled', '6 mm'],
    ['f(x) = x^2; f(3 mm)', '9 mm²'],
    ['f(x) = x^2', 'kept as a function'],
  ])('%s = %s', (text, expected) => {
    expect(said(text)).toBe(expected);
  });

  test('a result stands in both units, in inches with the mark of the rule beside it', () => {
    expect(inBoth('12 in * 0.00274 * 4')).toEqual(['3.3406 mm', '0.1315 in, about 1/8 in']);
    expect(inBoth('60.325 mm')).toEqual(['60.325 mm', '2 3/8 in']);
    expect(inBoth('1 lb')).toEqual(['453.59 g', '16 oz']);
    expect(inBoth('1/3')).toEqual(['0.33333', '0.33333']);
  });

  test('names of the box have its values, with dots or in one word', () => {
    expect(said('box.wall')).toBe('8 mm');
    expect(said('box.outside.width - box.insideWidth')).toBe('16 mm');
    expect(said('box.inside.width / 1.618 to in')).toMatch(/ in, about /);
    // Cherry, tangential: 0.00248 in the table of dimensional change coefficients.
    expect(said('wood.blackCherry.tangential')).toBe('0.00248');
    expect(said('box.wood.tangential')).toBe('0.00248');
  });

  test('a name given in one cell holds below it, and not above', () => {
    expect(said('gap = 2 mm', 'gap * 3')).toBe('6 mm');
    expect(said('gap * 3')).toContain('“gap” is not a name here');
  });
});

describe('an error says what to type', () => {
  test.each([
    ['box.insid.width', 'Did you mean box.inside.width'],
    ['3 mm + 2 N', 'a length and a force'],
    ['3 mm + 2', 'a plain number'],
    ['5 mm to N', 'a length cannot be written in N'],
    ['45 %', 'write 45 for 45 %'],
    ['1,5 mm', 'a point: 1.5'],
    ['(2 + 3', 'closing parenthesis'],
    ['2 +', 'missing at the end'],
    ['20 degC + 5', '70 degF to degC'],
    ['2 mm 3', 'Write + or * between'],
    ['12 in (3)', 'write * before the parenthesis'],
    ['sqrt', 'sqrt(x)'],
    ['round(3 mm)', 'round(x, 1/16 in)'],
    ['wallShar(1)', 'Did you mean wallShare'],
    ['wallShare', 'wallShare(t, L)'],
    ['wallShare(8 mm)', 'wants L (outside length or width) as well, a length'],
    ['wallShare(8, 100 mm)', 'write 5 mm or 3/16 in. Here it is a plain number'],
    ['wallShare(8 N, 100 mm)', 'Here it is a force'],
    ['wallShare(8 mm, 100 mm, 3)', 'no place for 3 values'],
    ['wallShare({t: 8 mm, W: 1 mm})', 'no place for “W”'],
  ])('%s: … %s …', (text, says) => {
    expect(said(text)).toContain(says);
  });
});

test('a plot has points in both units, and a gap where a relation does not hold', () => {
  const [square] = workAll([{ type: 'plot', text: 'w^2', over: 'w', from: '0 in', to: '2 in' }]);
  expect(square).toMatchObject({ type: 'plot' });
  if (square?.type !== 'plot') return;
  const [piece] = square.plot.pieces;
  // 2 in = 50.8 mm, its square 2580.64 mm² = 4 in².
  expect(piece![0]).toEqual([0, 0]);
  expect(piece!.at(-1)![0]).toBeCloseTo(50.8, 9);
  expect(piece!.at(-1)![1] * square.plot.y.inch.by).toBeCloseTo(4, 9);
  expect(square.plot.x.inch.unit).toBe('in');
  const [share] = workAll([
    { type: 'plot', text: 'wallShare(t, 100 mm)', over: 't', from: '-5 mm', to: '10 mm' },
  ]);
  expect(share).toMatchObject({ plot: { gap: expect.stringContaining('wall thickness') } });
});

test('a relation alone says what its plain number counts; in a sum it is a plain number', () => {
  // 8 of 100 is 8 %.
  expect(said('wallShare(8 mm, 100 mm)')).toBe('8 %');
  expect(said('wallShare(8 mm, 100 mm) / 100 * 50 mm')).toBe('4 mm');
});

test('no name stands for two things', () => {
  const names = [...numbersOf(exampleFor('mm')).values()].map(({ name }) => name);
  expect(names.length).toBe(new Set(names.map((name) => name.replaceAll('.', '').toLowerCase())).size);
});

/**
 * Expressions that a cell must survive: what would never end, is huge, reaches outside or gives a new meaning to what has
 * one. Each is told in a sentence, and the same worker works out the next cell.
 */
import { describe, expect, test } from 'vitest';
import { said, workAll } from './core.ts';

const long = (text: string, times: number) => text.repeat(times);

/** What is typed, and words of what the cell says about it. */
const hostile: readonly (readonly [text: string, says: string])[] = [
  // Without an end, or nearly.
  ['1:1e12', 'makes no list'],
  ['f(n) = f(n + 1); f(1)', 'calls itself more than 100 times'],
  ['f(n) = n < 1 ? 1 : f(n - 1) + f(n - 1); f(60)', 'longer than a second'],
  ['f(n) = q(n); q(n) = f(n); f(1)', 'calls itself more than 100 times'],
  ['f(n) = n < 1 ? 1 : max(f(n - 1), f(n - 1), f(n - 1), f(n - 1)); f(50)', 'longer than a second'],
  // Huge.
  ['zeros(1e6, 1e6)', 'not a name'],
  ['ones(1e9)', 'not a name'],
  ['[1, 2; 3, 4]', 'Square brackets'],
  ['[[[[1]]]]', 'Square brackets'],
  ['9^9^9^9', 'too large'],
  ['1e400', 'too large'],
  ['200!', '“!” is not used'],
  ['gamma(1e6)', 'not a name'],
  ['combinations(1000, 500)', 'not a name'],
  ['(1 mm)^1e9', 'up to 6'],
  [long('1 + ', 200), 'characters long'],
  [long('x', 100_000), 'characters long'],
  [`${long('(', 240)}1${long(')', 240)} + 1 N`, 'amounts of one kind'],
  [long('-', 499), 'missing at the end'],
  // Reaching outside.
  ['import({a: 1})', 'not a name'],
  ['evaluate("1 + 1")', 'quotes'],
  ['parse("1")', 'quotes'],
  ['simplify(x)', 'not a name'],
  ['derivative(x, x)', 'not a name'],
  ['resolve(x)', 'not a name'],
  ['compile(x)', 'not a name'],
  ['config({})', 'not a name'],
  ['constructor', 'not a name'],
  ['__proto__', 'underlines'],
  ['box.__proto__', 'underlines'],
  ['box.constructor.constructor', 'not a name'],
  ['cos.constructor', 'not a name'],
  ['toString()', 'not a name'],
  ['self.postMessage(1)', 'not a name'],
  ['globalThis', 'not a name'],
  ['box["wall"]', 'quotes'],
  ['box[1]', 'Square brackets'],
  ['{a: 1}', 'Braces'],
  ['wallShare({__proto__: 1, t: 8 mm, L: 100 mm})', 'underlines'],
  ['wallShare({constructor: 1, t: 8 mm, L: 100 mm})', 'no place for'],
  ['`x`', 'quotes'],
  // New meanings.
  ['createUnit(x)', 'not a name'],
  ['mm = 5', 'keeps its meaning'],
  ['inch(x) = 3', 'keeps its meaning'],
  ['in = 2', 'keeps its meaning'],
  ['pi = 3', 'keeps its meaning'],
  ['sqrt(x) = x', 'keeps its meaning'],
  ['wallShare = 1', 'keeps its meaning'],
  ['wallshare(t) = t', 'keeps its meaning'],
  ['box = 1', 'keeps its meaning'],
  ['box.wall = 1 mm', 'keep their meaning'],
  ['boxWall = 1 mm', 'keeps its meaning'],
  ['__proto__ = 1', 'underlines'],
  ['_x = 1', 'one word'],
  ['f(mm) = mm', 'keeps its meaning'],
  // Signs.
  ['2 + 😀', 'cannot be read'],
  ['ﬀ = 1; \u202e1', 'cannot be read'],
  ['１２ mm', 'cannot be read'],
  ['1 + \u0000', 'cannot be read'],
  ['0/0', 'divides by zero'],
  ['sqrt(-1)', 'no number'],
  ['5 mm + 2', 'one kind'],
  ['true + 1', 'yes or no'],
  ['null', 'is no number'],
  ['undefined + 1', 'nothing to work out'],
  ['NaN', 'is no number'],
  ['Infinity', 'too large'],
  ['# only a remark', 'nothing to work out'],
];

test('there are more than forty', () => {
  expect(hostile.length).toBeGreaterThan(40);
});

describe('a hostile expression is told in a sentence within its time, and the next cell lives', () => {
  test.each(hostile.map(([text, says]) => [JSON.stringify(text.slice(0, 60)), says, text] as const))(
    '%s → %s',
    (_, says, text) => {
      const start = performance.now();
      const [result, next] = workAll([
        { type: 'sum', text },
        { type: 'sum', text: '2 * 3 mm' },
      ]);
      expect(result).toMatchObject({ type: 'trouble', message: expect.stringContaining(says) });
      expect(next).toMatchObject({ shown: { mm: '6\u00a0mm' } });
      expect(performance.now() - start).toBeLessThan(1900);
      expect((result as { message: string }).message.length, 'no flood of words').toBeLessThan(400);
    },
  );
});

test('nothing hostile leaves a trace: units, names and prototypes are as they were', () => {
  expect(Object.keys(Object.prototype)).toEqual([]);
  expect(said('1 in to mm')).toBe('25.4 mm');
  expect(said('sqrt(16)')).toBe('4');
});

test('a plot that does not end is stopped with its cell', () => {
  const [, plot, next] = workAll([
    { type: 'sum', text: 'f(n) = n < 1 ? 1 : f(n - 1) + f(n - 1)' },
    { type: 'plot', text: 'f(x)', over: 'x', from: '40', to: '60' },
    { type: 'sum', text: '1 + 1' },
  ]);
  expect(plot).toMatchObject({ type: 'trouble', message: expect.stringContaining('longer than a second') });
  expect(next).toMatchObject({ shown: { mm: '2' } });
});

test.each([
  ['box = 3', 'over', 'box', '1', '2', 'keeps its meaning'],
  ['x', 'over', 'x', '2 mm', '1 mm', 'below'],
  ['x', 'over', 'x', '1 mm', '2 N', 'one kind'],
  ['x > 1', 'over', 'x', '1', '2', 'yes or no'],
  ['nonsense(x)', 'over', 'x', '1', '2', 'not a name'],
])('the plot of %s %s %s from %s to %s says: %s', (text, _, over, from, to, says) => {
  const [plot] = workAll([{ type: 'plot', text, over, from, to }]);
  expect(plot).toMatchObject({ type: 'trouble', message: expect.stringContaining(says) });
});

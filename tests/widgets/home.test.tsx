/** What the front page says of the reader's box, and the numbers it is built with. */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { exampleBox } from '../../src/box/subjects/example.ts';
import { modelOf } from '../../src/box/subjects/model.ts';
import type { Values } from '../../src/box/whole/index.ts';
import { augustNumbers, augustValues } from '../../src/prose/august.ts';
import { lookAt } from '../../src/widgets/home/look.tsx';
import { inWords } from '../../src/widgets/kit/in-words.ts';
import { valuesOfGuess } from '../../src/widgets/lesson/guess-spec.ts';
import { withNumbers } from '../../src/widgets/subjects/movement/front-page.tsx';

const systems = ['mm', 'inch'] as const;

/** The same values, but asking for one that is not there fails. */
const strict = (values: Values): Values =>
  new Proxy(values, {
    get(target, name) {
      if (typeof name === 'string' && !(name in target)) throw new Error(`${name} is not on the front page`);
      return Reflect.get(target, name);
    },
  });

describe.each(systems)('the guess of the front page in %s', (system) => {
  const spec = withNumbers(augustNumbers);
  const given = strict(valuesOfGuess(spec, modelOf(), system));
  const layouts = [spec, spec.wide!];

  test('has every number its drawings and its sentence ask for, without the calculation', () => {
    for (const { figure: Figure } of layouts)
      for (const open of [false, true])
        expect(renderToString(<Figure values={given} system={system} mark={1} open={open} />)).not.toMatch(
          /NaN|undefined|Infinity/,
        );
    expect(renderToString(<p>{spec.answer(given, system)}</p>)).toContain('it jams');
  });

  test('is drawn as with the calculation', () => {
    const words = (values: Values) =>
      layouts.map(({ figure: Figure }) =>
        renderToString(<Figure values={values} system={system} mark={2} open />).replaceAll(
          /id="[^"]*"|aria-labelledby="[^"]*"/g,
          '',
        ),
      );
    expect(words(given)).toEqual(words(augustValues[system]));
  });

  test('grows by 0.248 % of its width a point, from 6.9 to 11 % moisture, as the published tables have it', () => {
    // Wood Handbook (2010): black cherry along the rings 0.00248, table 13-5; wood at 21 °C in 35 and 60 %, table 4-2.
    const { lidWidth, lidSwelling } = augustValues[system];
    const published = lidWidth * 0.00248 * (11 - 6.9);
    expect(Math.abs(lidSwelling / published - 1)).toBeLessThan(0.03);
    expect(spec.truth(given, system)).toBe(lidSwelling);
  });
});

test('what is said of a box counts what is broken and what is to be looked at, as the bench does', () => {
  expect(lookAt(exampleBox).says).toBe('two things to look at');
  const reasons = { 'quarter-sawn-for-lids': 'none to be had', 'lip-beside-lid-groove-push': 'I lift it' };
  expect(lookAt({ ...exampleBox, accepted: reasons }).says).toBe('every rule is kept');
  const [one] = Object.keys(reasons);
  expect(lookAt({ ...exampleBox, accepted: { [one!]: 'none' } }).says).toBe('one thing to look at');
  // A lid without play is wider than its grooves as soon as it is damp.
  expect(lookAt({ ...exampleBox, lidPlay: 0 }).says).toMatch(/^\w+ broken, /);
  expect(lookAt({ ...exampleBox, sizeFrom: 'outside', wantedHeight: 15 }).says).toBe(
    'it cannot be built yet',
  );
});

test('a box is drawn in true proportion: twice as long, another drawing, never a larger one', () => {
  const draw = (contentsLength: number) =>
    renderToString(<div>{lookAt({ ...exampleBox, contentsLength }).picture}</div>);
  expect(draw(150)).not.toBe(draw(300));
  for (const length of [60, 150, 300, 500]) {
    const places = [...draw(length).matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    const [xs, ys] = [places.map(([x]) => x!), places.map(([, y]) => y!)];
    expect(Math.max(...xs)).toBeLessThanOrEqual(114.01);
    expect(Math.max(...ys)).toBeLessThanOrEqual(74.01);
    // It fills the sheet one way or the other.
    expect(
      Math.max(Math.max(...xs) - Math.min(...xs) - 114, Math.max(...ys) - Math.min(...ys) - 74),
    ).toBeCloseTo(0, 1);
  }
});

test('counts are words up to ten', () => {
  expect([0, 1, 9, 10, 11, 21].map(inWords)).toEqual(['no', 'one', 'nine', 'ten', '11', '21']);
});

/** Every lab of every lesson is drawn here, with no more than what its own model computes, at both ends of its sliders. */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { exampleBox } from '../../../src/box/subjects/example.ts';
import type { Values } from '../../../src/box/subjects/index.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { compute } from '../../../src/box/subjects/model.ts';
import { lessons } from '../../../src/prose/lessons.ts';

/** The same values, but asking for one that is not there fails. */
const strict = (values: Values): Values =>
  new Proxy(values, {
    get(target, name) {
      if (typeof name === 'string' && !(name in target)) throw new Error(`${name} is not in this model`);
      return Reflect.get(target, name);
    },
  });

const labs = Object.entries(lessons).flatMap(([lesson, { labs, model }]) =>
  Object.entries(labs).map(([name, spec]) => ({ name: `${lesson}/${name}`, spec, model })),
);

describe.each(labs)('the lab $name', ({ spec, model }) => {
  if ('own' in spec) {
    test('is drawn', () => {
      const { own: Own } = spec;
      expect(renderToString(<Own />)).not.toMatch(/NaN|undefined|Infinity/);
    });
    return;
  }

  const { figure: Figure, says } = spec;
  const draw = (inputs: Partial<Box>) => {
    const values = strict(compute(model.results, { ...exampleBox, ...inputs }));
    return renderToString(
      <>
        <Figure values={values} />
        <p>{says(values)}</p>
      </>,
    );
  };

  test('shows results that its model computes', () => {
    for (const name of spec.results) expect(model.results[name], name).toBeDefined();
  });

  test('is drawn for the example, titled and described, from few elements', () => {
    const html = draw({});
    expect(html).toMatch(/<title/);
    expect(html).toMatch(/class="spoken"><text/);
    expect(html.match(/<(path|line|rect|text|circle|polygon|polyline)\b/g)!.length).toBeLessThanOrEqual(140);
  });

  test('is described in the units of its reader, each text whole', () => {
    const html = draw({});
    const spoken = (units: string) =>
      html.match(new RegExp(`class="spoken">.*?<text class="${units}">([^<]*)<`))?.[1];
    expect(html).not.toMatch(/[{}|]/);
    expect(spoken('inch') ?? '').not.toMatch(/\bmm\b/);
    expect(spoken('mm') ?? '').not.toMatch(/\d\sin\b/);
    if (!spoken('mm')) expect(html.match(/class="spoken"><text>([^<]*)</)?.[1]).not.toMatch(/\d\smm\b/);
  });

  test('is drawn without a number that is none, at both ends of every control', () => {
    for (const name of [...spec.controls, ...(spec.more ?? [])]) {
      const field = fields[name];
      const ends = field.type === 'number' ? [field.low, field.high] : Object.keys(field.options).slice(0, 8);
      for (const end of ends)
        expect(draw({ [name]: end }), `${name} ${end}`).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

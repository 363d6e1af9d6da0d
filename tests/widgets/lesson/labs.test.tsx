/** Every lab of every lesson is drawn here, with no more than what its own model computes, at both ends of its sliders. */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Field } from '../../../src/box/core/field.ts';
import { exampleBox } from '../../../src/box/subjects/example.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { fields, type NumberName } from '../../../src/box/subjects/inputs.ts';
import { compute } from '../../../src/box/subjects/model.ts';
import type { Values } from '../../../src/box/whole/index.ts';
import { isRefused } from '../../../src/calc/core/refusal.ts';
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
  if ('component' in spec) {
    test('is drawn', () => {
      const { component: Sharing } = spec;
      expect(renderToString(<Sharing />)).not.toMatch(/NaN|undefined|Infinity/);
    });
    return;
  }

  const { figure: Figure, says, own = {}, solve } = spec;
  const starts = Object.fromEntries(Object.entries(own).map(([name, { start }]) => [name, start]));
  const draw = (inputs: Readonly<Record<string, unknown>>) => {
    const ofTheBox = compute(model.results, { ...exampleBox, ...(inputs as Partial<Box>) });
    const values = strict({ ...ofTheBox, ...starts, ...inputs } as Values);
    const solved = solve?.(values) ?? {};
    if (isRefused(solved)) return solved.refused;
    const all = strict({ ...values, ...solved } as Values);
    return renderToString(
      <>
        <Figure values={all} />
        <p>{says(all)}</p>
        {spec.results.map(
          (row) => typeof row !== 'string' && (row.when?.(all) ?? true) && row.work(all).value,
        )}
      </>,
    );
  };

  test('shows results that its model computes', () => {
    for (const row of spec.results)
      if (typeof row === 'string') expect(model.results[row], row).toBeDefined();
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
      const field: Field = own[name] ?? fields[name as NumberName];
      const ends =
        field.type === 'number'
          ? [field.low, field.high]
          : field.type === 'choice'
            ? Object.keys(field.options).slice(0, 12)
            : [];
      for (const end of ends)
        expect(draw({ [name]: end }), `${name} ${end}`).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

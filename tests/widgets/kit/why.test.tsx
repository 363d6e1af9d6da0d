/** The numbers in the answer to "why?" carry the unit that the words beside them use. */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Relation } from '../../../src/calc/core/relation.ts';
import { type Working, work } from '../../../src/calc/core/working.ts';
import { relations } from '../../../src/calc/index.ts';
import { changeByCoefficient } from '../../../src/calc/movement/movement.ts';
import { gapPerSide } from '../../../src/calc/movement/panel.ts';
import { equationOf } from '../../../src/prose/equation.ts';
import { Why } from '../../../src/widgets/kit/late/Why.tsx';
import { provideReasons } from '../../../src/widgets/kit/reasons.ts';

/** The answer as text, without its marks of style. */
function answer(working: Working): string {
  const { of } = working;
  const names = Object.fromEntries(Object.entries(of.inputs).map(([symbol, { name }]) => [symbol, name]));
  const said = { title: '', evidence: '', source: '', names, ...equationOf(of as Relation) };
  provideReasons({ [of.id]: said });
  return renderToString(<Why working={working} units="mm" />)
    .replace(/<[^>]*>/g, '')
    .replaceAll('\u00a0', ' ');
}

describe('the answer to “why?”', () => {
  test('gives a moisture content in percent', () => {
    const text = answer(work(changeByCoefficient, { D: 100, C: 0.0025, M_i: 8, M_f: 11 }));
    expect(text).toContain('moisture content now: 8 %');
    expect(text).toContain('moisture content then: 11 %');
    expect(text).not.toContain('points');
  });

  test('gives a rise of the moisture content in points', () => {
    const text = answer(work(gapPerSide, { W: 100, C: 0.0025, u: 3, c: 0.5 }));
    expect(text).toContain('rise in moisture content from today: 3 points');
    expect(text).not.toContain('3 %');
  });
});

test('what is called a rise, a fall or a difference of moisture is in points, and nothing else is', () => {
  for (const { id, inputs, result } of relations.values())
    for (const { name, unit, points } of [result, ...Object.values(inputs)] as {
      name: string;
      unit: string;
      points?: true;
    }[])
      if (unit === '%') {
        const isDifference = /^(rise|fall) in moisture|year’s humidity|minus the other|taken up from/.test(
          name,
        );
        expect(Boolean(points), `${id}: ${name}`).toBe(isDifference);
      }
});

/** What would satisfy a rule: found by search, checked by hand. */
import { describe, expect, test } from 'vitest';
import { printOf, stepOf } from '../../../src/box/core/field.ts';
import { judge } from '../../../src/box/core/verdict.ts';
import { smallestChanges } from '../../../src/box/design/smallest-change.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { evaluate, verdicts, wholeModel } from '../../../src/box/whole/index.ts';
import { format, usualRuler } from '../../../src/units/index.ts';
import { goldenBoxes } from '../golden/boxes.ts';
import { exampleBox } from '../reckoned-box.ts';

const { checks } = wholeModel;

const check = (rule: string, label?: string) =>
  checks.find((one) => one.rule === rule && (!label || one.label === label))!;

describe('the smallest change that satisfies a rule', () => {
  test('for a bottom of 4 mm is the next step to 1/4 in', () => {
    // Usual from 6 mm or 1/4 in: in steps of 0.5 mm the first that passes is 6, in steps of 1/32 in it is 1/4 in.
    const box: Box = { ...exampleBox, bottomThickness: 4, bottomTongue: 4 };
    const [metric] = smallestChanges(box, check('bottom-thickness'), usualRuler.mm);
    expect(metric).toMatchObject({ input: 'bottomThickness', from: 4, to: 6 });
    const [inch] = smallestChanges(box, check('bottom-thickness'), usualRuler.inch);
    expect(inch).toMatchObject({ input: 'bottomThickness', from: 4, to: 6.35 });
  });

  test('is none for a rule that is content', () => {
    expect(smallestChanges(exampleBox, check('bottom-thickness'), usualRuler.mm)).toEqual([]);
  });

  test('steps in the reader’s units, changes what is shown, and makes no other rule stand worse, for any box', () => {
    const rank = { usual: 0, unusual: 1, unknown: 1, breaks: 2 } as const;
    let offered = 0;
    for (const box of goldenBoxes().slice(0, 40)) {
      const before = new Map(verdicts(evaluate(box)).map((one) => [one.check.id, one]));
      for (const { check: one, state } of before.values()) {
        if (state !== 'unusual' && state !== 'breaks') continue;
        for (const system of ['mm', 'inch'] as const)
          for (const { input, to, inputs } of smallestChanges(box, one, usualRuler[system])) {
            offered++;
            const field = fields[input];
            const step = stepOf(field, usualRuler[system]);
            expect(Math.abs(to / step - Math.round(to / step)), `${input} ${to}`).toBeLessThan(1e-6);
            const shown = (value: number) => format(value, field.kind, { ...printOf(field), system });
            expect(shown(to), `${input} ${box[input]}`).not.toBe(shown(box[input]));
            for (const after of verdicts(evaluate({ ...box, ...inputs })))
              expect(
                rank[after.state],
                `${one.id}: ${input} to ${to} and ${after.check.id}`,
              ).toBeLessThanOrEqual(rank[before.get(after.check.id)?.state ?? 'usual']);
          }
      }
    }
    expect(offered).toBeGreaterThan(60);
  }, 180_000);

  test('brings every verdict that is not usual inside its range, and stays inside the field', () => {
    const box: Box = { ...exampleBox, wall: 16, lidLip: 2, bottomLip: 2, grooveDepth: 7, humidityDamp: 75 };
    const values = evaluate(box);
    const asked = checks.filter((one) => ['unusual', 'breaks'].includes(judge(one, values)?.state ?? ''));
    expect(asked.length).toBeGreaterThan(2);
    for (const one of asked) {
      for (const { input, to, inputs } of smallestChanges(box, one, usualRuler.mm)) {
        expect(judge(one, evaluate({ ...box, ...inputs }))?.state, `${one.label}: ${input}`).toBe('usual');
        expect(to).toBeGreaterThanOrEqual(fields[input].low);
        expect(to).toBeLessThanOrEqual(fields[input].high);
      }
    }
  });
});

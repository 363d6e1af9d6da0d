/** What would please a rule: found by search, checked by hand. */
import { describe, expect, test } from 'vitest';
import { type Box, exampleBox } from '../../src/box/box.ts';
import { checks } from '../../src/box/checks/index.ts';
import { evaluate } from '../../src/box/evaluate.ts';
import { fields } from '../../src/box/fields.ts';
import { smallestChanges } from '../../src/box/smallest-change.ts';
import { judge } from '../../src/box/verdict.ts';

const check = (rule: string, label?: string) =>
  checks.find((one) => one.rule === rule && (!label || one.label === label))!;

describe('the smallest change that pleases a rule', () => {
  test('for a bottom of 4 mm is the next step to 1/4 in', () => {
    // 1/4 in is 6.35 mm; in steps of 0.5 mm the first that passes is 6.5.
    const box: Box = { ...exampleBox, bottomThickness: 4, bottomTongue: 4 };
    const [first] = smallestChanges(box, check('bottom-thickness'));
    expect(first).toMatchObject({ input: 'bottomThickness', from: 4, to: 6.5 });
  });

  test('is none for a rule that is content', () => {
    expect(smallestChanges(exampleBox, check('bottom-thickness'))).toEqual([]);
  });

  test('brings every verdict that is not usual inside its range, and stays inside the field', () => {
    const box: Box = { ...exampleBox, wall: 16, lidLip: 2, bottomLip: 2, grooveDepth: 7, humidityDamp: 75 };
    const values = evaluate(box);
    const asked = checks.filter((one) => ['unusual', 'breaks'].includes(judge(one, values)?.state ?? ''));
    expect(asked.length).toBeGreaterThan(2);
    for (const one of asked) {
      for (const { input, to } of smallestChanges(box, one)) {
        expect(judge(one, evaluate({ ...box, [input]: to }))?.state, `${one.label}: ${input}`).toBe('usual');
        expect(to).toBeGreaterThanOrEqual(fields[input].low);
        expect(to).toBeLessThanOrEqual(fields[input].high);
      }
    }
  });
});

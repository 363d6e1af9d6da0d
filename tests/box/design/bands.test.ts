/** The band of a number: by hand for the example, and against single trials for any box. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stepOf } from '../../../src/box/core/field.ts';
import { bandsOf } from '../../../src/box/design/bands.ts';
import { designBox } from '../../../src/box/design/design.ts';
import { givingWay } from '../../../src/box/design/gives-way.ts';
import { standingOf } from '../../../src/box/design/standing.ts';
import { inchExample } from '../../../src/box/subjects/example.ts';
import { type Box, fields, hasInput, type NumberName } from '../../../src/box/subjects/inputs.ts';
import { evaluate } from '../../../src/box/whole/index.ts';
import { INCH, type Ruler, rulers, usualRuler } from '../../../src/units/index.ts';
import { goldenBoxes } from '../golden/boxes.ts';

const inInches = (name: NumberName, box: Box = inchExample) => {
  const { kept, ...bands } = bandsOf(box, name, usualRuler.inch);
  return { ...bands, kept: kept.map((stretch) => stretch.map((end) => end / INCH)) };
};

describe('the example in inches', () => {
  test('a solid bottom is 1/4 to 5/16 in thick: what its rule says', () => {
    const { kept, now, limits } = inInches('bottomThickness');
    expect(kept).toEqual([[1 / 4, 5 / 16]]);
    expect(now).toBe('kept');
    expect(limits.checks).toEqual(['bottom-thickness']);
  });
  test('growth rings from 45° up, and 0° lies outside', () => {
    const bands = bandsOf(inchExample, 'ringAngle', usualRuler.inch);
    expect([bands.kept, bands.now]).toEqual([[[45, 90]], 'outside']);
  });
  test('1/32 to 1/16 in planed off each face: together 1/16 to 1/8 in', () =>
    expect(inInches('planing').kept).toEqual([[1 / 32, 1 / 16]]));
  test('a box measured 1/64 in out of square is as square as asked, and breaks from the first mark past 1/32 in', () => {
    // 1 mm is 2.52 of 1/64 in, so the first mark that breaks is 3/64 in.
    const { kept, breaks } = bandsOf(inchExample, 'diagonalsApart', usualRuler.inch);
    expect(kept[0]!.map((end) => end / INCH)).toEqual([0, 1 / 64]);
    expect(breaks[0]![0] / INCH).toBeCloseTo(3 / 64, 9);
  });
  test('the width of the board moves no rule', () => {
    expect([inInches('boardWidth').isFree, inInches('bottomThickness').isFree]).toEqual([true, false]);
  });
  test('a rule that only another number can cure does not narrow it', () => {
    // The lip over the lid's groove may split whatever the bottom is; only lip, groove, wall and push have to do with it.
    expect(standingOf(inchExample).ranks.get('lip-beside-lid-groove-push')).toBe(1);
    expect(inInches('bottomThickness').now).toBe('kept');
  });
  test('a limit by what cannot be built is told in words', () => {
    const { limits } = inInches('lidThickness');
    expect(limits.refusals.join()).toMatch(/thumb notch leaves less than/);
  });
});

const numbersOf = (box: Box) =>
  (Object.keys(fields) as (keyof Box)[]).filter(
    (name): name is NumberName => fields[name].type === 'number' && hasInput(name, box),
  );
const any = fc
  .record({
    box: fc.constantFrom(...goldenBoxes().filter((box) => designBox(box).refusals.length === 0)),
    ruler: fc.constantFrom(...Object.values(rulers)),
    pick: fc.nat(1000),
    place: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ box, pick, ...rest }) => ({ box, name: numbersOf(box)[pick % numbersOf(box).length]!, ...rest }));
const at = (box: Box, name: NumberName, value: number, ruler: Ruler) =>
  standingOf({ ...box, ...givingWay(evaluate(box), name, value, ruler) });

describe('for any number of any box, and any ruler', () => {
  test('stretches lie on marks within the field, in order, and none overlaps another', () => {
    fc.assert(
      fc.property(any, ({ box, name, ruler }) => {
        const { kept, breaks } = bandsOf(box, name, ruler);
        const { low, high } = fields[name];
        const step = stepOf(fields[name], ruler);
        for (const stretches of [kept, breaks]) {
          const ends = stretches.flat();
          expect(ends).toEqual([...ends].sort((a, b) => a - b));
          for (const end of ends) {
            expect(Math.abs(end / step - Math.round(end / step))).toBeLessThan(1e-6);
            expect(end).toBeGreaterThanOrEqual(low - 1e-9);
            expect(end).toBeLessThanOrEqual(high + 1e-9);
          }
        }
        for (const [from, to] of kept)
          for (const [other, end] of breaks) expect(to < other - 1e-9 || from > end + 1e-9).toBe(true);
      }),
      { numRuns: 150 },
    );
  }, 120_000);

  test('in the band no rule is lost that its limits name, and one mark beyond it one of them is', () => {
    let bands = 0;
    fc.assert(
      fc.property(any, ({ box, name, ruler, place }) => {
        const { kept, limits, now } = bandsOf(box, name, ruler);
        const step = stepOf(fields[name], ruler);
        const near = [...kept].sort(
          (a, b) =>
            Math.max(a[0] - box[name], box[name] - a[1], 0) - Math.max(b[0] - box[name], box[name] - b[1], 0),
        )[0];
        if (!near || limits.checks.length + limits.refusals.length === 0) return;
        bands++;
        const inside = near[0] + Math.round(((near[1] - near[0]) / step) * place) * step;
        // A long band is tried here and there only: its ends and what lies near the present value are sure.
        for (const value of near[1] - near[0] < 12 * step && now === 'kept' ? [inside, ...near] : near) {
          const { ranks } = at(box, name, value, ruler);
          for (const id of limits.checks) expect(ranks.get(id) ?? 0, `${name} ${id} at ${value}`).toBe(0);
        }
        const beyond = [near[0] - step, near[1] + step].filter(
          (value) => value >= fields[name].low - 1e-9 && value <= fields[name].high + 1e-9,
        );
        const lost = beyond.map((value) => at(box, name, value, ruler));
        if (limits.checks.length > 0)
          expect(lost.some(({ ranks }) => limits.checks.some((id) => (ranks.get(id) ?? 0) > 0))).toBe(true);
        if (limits.refusals.length > 0) expect(lost.some(({ refused }) => refused.size > 0)).toBe(true);
      }),
      { numRuns: 150 },
    );
    expect(bands).toBeGreaterThan(40);
  }, 120_000);
});

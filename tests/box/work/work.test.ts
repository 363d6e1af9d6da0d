/** The order of work, set-ups, gaps and amounts of a box. */
import { existsSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { cautions } from '../../../src/box/work/cautions.ts';
import { plainly, say } from '../../../src/box/work/say.ts';
import { workOf } from '../../../src/box/work/work.ts';
import { exampleBox } from '../reckoned-box.ts';

const workFor = (changes: Partial<Box> = {}) => {
  const work = workOf(designBox({ ...exampleBox, ...changes }));
  if (!work) throw new Error('no work');
  return work;
};
const order = (changes: Partial<Box> = {}) => workFor(changes).steps.map(({ id }) => id);
const isBefore = (ids: readonly string[], first: string, second: string) => {
  expect(ids).toContain(first);
  expect(ids).toContain(second);
  expect(ids.indexOf(first), `${first} before ${second}`).toBeLessThan(ids.indexOf(second));
};
const settingOf = (changes: Partial<Box>, setUp: string, what: string) =>
  workFor(changes)
    .setUps.find(({ id }) => id.startsWith(setUp))
    ?.settings.find((setting) => setting.what === what)?.value.value;

const kinds = ['sliding', 'lift-off', 'sawn'] as const;
const joints = ['finger', 'dovetail', 'mitre', 'keyed-mitre', 'splined-mitre', 'rabbet', 'butt'] as const;
const everyKind = kinds.flatMap((kind) => joints.map((joint) => ({ kind, joint })));

describe('order of work', () => {
  test.each(everyKind)('a $kind box with $joint corners: each step once, and each has its check', (box) => {
    const { steps } = workFor(box);
    expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
    for (const { id, check } of steps) expect(check, id).toBeDefined();
  });

  test.each(everyKind)('a $kind box with $joint corners: first ends are checked before the second', (box) => {
    isBefore(order(box), 'first-ends', 'second-ends');
  });

  test.each(everyKind)(
    'a $kind box with $joint corners: bottom, dry fit, glue, surface, in that order',
    (box) => {
      const ids = order(box);
      for (const [first, second] of [
        ['bottom', 'dry-fit'],
        ['inside', 'glue'],
        ['dry-fit', 'glue'],
        ['glue', 'level'],
        ['level', 'finish'],
      ] as const)
        isBefore(ids, first, second);
    },
  );

  test('fingers and dovetails come before the grooves', () => {
    isBefore(order({ joint: 'finger' }), 'joint', 'stopped-grooves');
    isBefore(order({ joint: 'dovetail' }), 'joint', 'grooves');
  });

  test('a strip for miters is grooved before it is cut into walls', () => {
    for (const joint of ['mitre', 'keyed-mitre', 'splined-mitre'] as const)
      isBefore(order({ joint }), 'grooves', 'first-ends');
  });

  test('a butt joint needs stopped grooves in its sides, so they wait until the walls have their length', () => {
    isBefore(order({ joint: 'butt' }), 'second-ends', 'stopped-grooves');
  });

  test('a sliding and a lift-off lid are fitted after the finish', () => {
    isBefore(order({ kind: 'sliding' }), 'finish', 'fit-lid');
    isBefore(order({ kind: 'lift-off' }), 'finish', 'liner');
  });

  test('the front of a dovetailed box is ripped before its pins are spaced, that of a fingered box after', () => {
    isBefore(order({ joint: 'dovetail' }), 'front', 'joint');
    isBefore(order({ joint: 'finger' }), 'joint', 'front');
  });

  test('keys are cut after the glue-up, the lid is sawn off before the surface is leveled', () => {
    isBefore(order({ joint: 'keyed-mitre' }), 'glue', 'keys');
    isBefore(order({ kind: 'sawn' }), 'saw-lid', 'level');
  });

  test('an odd number of fingers is cut from both edges; an even one is not', () => {
    const says = (changes: Partial<Box>) =>
      plainly(workFor(changes).steps.find(({ id }) => id === 'joint')!.does, 'mm');
    // 45 mm in fingers of 9 mm: five. The front is four fingers high and one side finger stands above it: five too.
    expect(says({ fingerWidth: 9 })).toContain('turn the part around');
    // 45 mm in fingers of 7.5 mm: six.
    expect(says({ fingerWidth: 7.5 })).not.toContain('turn the part around');
  });

  test('where a step can hurt there is a caution: saws, joints, grooves, dust and oily rags', () => {
    const caution = Object.fromEntries(workFor().steps.map((step) => [step.id, step.caution]));
    expect(caution).toMatchObject({
      thickness: 'machines',
      'first-ends': 'crosscut',
      joint: 'upright',
      'stopped-grooves': 'stopped',
      level: 'dust',
      finish: 'rags',
    });
    expect(workFor({ kind: 'sawn' }).steps.find(({ id }) => id === 'saw-lid')?.caution).toBe('sawnLid');
  });

  test('every source of a caution and every rule of a step is in the notebook', () => {
    for (const { sources } of Object.values(cautions))
      for (const id of sources) expect(existsSync(`content/sources/${id}.yaml`), id).toBe(true);
    for (const box of everyKind)
      for (const { rule } of workFor(box).steps)
        if (rule) expect(existsSync(`content/rules/${rule}.mdx`), rule).toBe(true);
  });
});

describe('set-ups of the example, re-derived by hand', () => {
  // Walls 9.5 mm; 200 mm by 125 mm by 45 mm outside; fingers 9 mm, fit 0.1 mm; grooves 4 mm deep.
  test('stops: sides as long as the box, ends as wide; between butted sides two walls less; in rabbets one', () => {
    expect(settingOf({}, 'lengths', 'stop for the sides')).toBeCloseTo(200, 6);
    expect(settingOf({}, 'lengths', 'stop for the ends')).toBeCloseTo(125, 6);
    expect(settingOf({ joint: 'butt' }, 'lengths', 'stop for the ends')).toBeCloseTo(125 - 19, 6);
    expect(settingOf({ joint: 'rabbet' }, 'lengths', 'stop for the ends')).toBeCloseTo(125 - 9.5, 6);
  });

  test('finger jig: a pitch of two fingers of 9 mm, shared out as 9.05 mm of slot and 8.95 mm to the pin, as deep as the wall', () => {
    expect(settingOf({}, 'fingers', 'cutter, and pin of the jig')).toBeCloseTo(9.05, 9);
    expect(settingOf({}, 'fingers', 'cutter to pin')).toBeCloseTo(8.95, 9);
    expect(settingOf({}, 'fingers', 'depth')).toBe(9.5);
  });

  test('grooves: fence 5 mm from the lower edge for the bottom, 3.5 mm from the upper for the lid', () => {
    expect(settingOf({}, 'groove-bottom', 'fence, from the lower edge')).toBeCloseTo(5, 6);
    expect(settingOf({}, 'groove-lid', 'fence, from the upper edge')).toBeCloseTo(3.5, 6);
    expect(settingOf({}, 'groove-bottom', 'depth')).toBe(4);
    // Tongue 3.5 mm and 0.25 mm of room.
    expect(settingOf({}, 'groove-bottom', 'width')).toBeCloseTo(3.75, 6);
  });

  test('a stopped groove starts one wall less its depth from the end: 9.5 − 4 = 5.5 mm', () => {
    const note = workFor().setUps.find(({ id }) => id.startsWith('groove-bottom'))!.note;
    expect(plainly(note, 'mm')).toContain(
      'left: starts 5.5\u00a0mm from the left end, stops at 194.5\u00a0mm',
    );
  });

  test('dovetails 1 in 7 slope 8.1°, miters tilt the saw 45°', () => {
    expect(settingOf({ joint: 'dovetail' }, 'dovetails', 'slope')).toBeCloseTo(8.13, 2);
    expect(settingOf({ joint: 'mitre' }, 'lengths', 'saw tilt')).toBe(45);
    expect(settingOf({ joint: 'butt' }, 'lengths', 'saw tilt')).toBeUndefined();
  });
});

describe('glue and clamps of the example', () => {
  test('five fingers of 9.5 mm: four cheeks and the slot bottoms, on four corners', () => {
    // Back, 45 mm: 4 × 9.5² + 45 × 9.5 = 788.5. Front, lowered to 36 mm: 4 × 9.5² + 36 × 9.5 = 703. Two of each.
    expect(workFor().amounts.cornerArea).toBeCloseTo(2 * (788.5 + 703), 6);
    // 2983 mm² at 150 to 250 g/m².
    expect(workFor().amounts.glue.low).toBeCloseTo(0.447, 3);
    expect(workFor().amounts.glue.high).toBeCloseTo(0.746, 3);
  });

  test('the highest corner, 45 mm by 9.5 mm in cherry, wants 440 to 590 N by the glue maker’s guide', () => {
    // 427.5 mm² × 1.03 and 1.38 MPa.
    expect(workFor().amounts.force.low).toBeCloseTo(440.3, 1);
    expect(workFor().amounts.force.high).toBeCloseTo(590, 0);
  });

  test('a plain miter is √2 walls wide, a rabbet one and a half, a butt joint one', () => {
    // 2 × (45 + 36) × 9.5 = 1539; × √2 = 2176.5.
    const face = 2 * (45 + 36) * 9.5;
    expect(workFor({ joint: 'butt' }).amounts.cornerArea).toBeCloseTo(face, 6);
    expect(workFor({ joint: 'rabbet' }).amounts.cornerArea).toBeCloseTo(1.5 * face, 6);
    expect(workFor({ joint: 'mitre' }).amounts.cornerArea).toBeCloseTo(2176.5, 1);
  });
});

test('gaps say which air they assume', () => {
  expect(workFor({ humidityToday: 38 }).gaps.air.today).toBe(38);
  expect(workFor().gaps.gaps.map(({ what }) => what)).toContain('lid, play beside it, both sides together');
});

test('words hold numbers in either unit', () => {
  const words = say`Cut to ${{ value: 25.4, kind: 'length' }}.`;
  expect(plainly(words, 'mm')).toBe('Cut to 25.4\u00a0mm.');
  expect(plainly(words, 'inch')).toBe('Cut to 1\u00a0in.');
});

test('a box without room between its walls has no work, and no box says NaN', () => {
  expect(workOf(designBox({ ...exampleBox, sizeFrom: 'outside', wantedWidth: 15 }))).toBeUndefined();
  const number = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
  const boxes = fc.record({
    kind: fc.constantFrom(...kinds),
    joint: fc.constantFrom(...joints),
    wall: number(-5, 60),
    fingerWidth: number(-1, 80),
    keyThickness: number(-1, 20),
    keyCount: fc.integer({ min: -2, max: 60 }),
    grooveDepth: number(-2, 40),
    bottomTongue: number(-2, 30),
    lidThickness: number(-2, 60),
    dovetailSlope: number(-2, 20),
    humidityToday: number(0, 100),
  });
  fc.assert(
    fc.property(boxes, (changes) => {
      const work = workOf(designBox({ ...exampleBox, ...changes }));
      if (!work) return;
      const { low, high } = work.amounts.glue;
      expect(Number.isFinite(low) && Number.isFinite(high)).toBe(true);
      for (const { settings } of work.setUps)
        for (const { what, value } of settings) expect(Number.isFinite(value.value), what).toBe(true);
      for (const { does, check } of work.steps)
        expect(plainly([...does, ...(check ?? [])], 'mm')).not.toMatch(/NaN|–\s/);
    }),
    { numRuns: 300 },
  );
});

/** "To my ruler": what it makes of a box, and that it costs no rule. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designBox } from '../../../src/box/design/design.ts';
import { toRuler } from '../../../src/box/design/to-ruler.ts';
import { exampleBox, inchExample } from '../../../src/box/subjects/example.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { evaluate, verdicts } from '../../../src/box/whole/index.ts';
import { settle } from '../../../src/notebook/settle.ts';
import { INCH, type Ruler, rulers, usualRuler } from '../../../src/units/index.ts';
import { goldenBoxes } from '../golden/boxes.ts';

const rank = { usual: 0, unusual: 1, unknown: 1, breaks: 2 } as const;
const ranks = (box: Box) =>
  new Map(verdicts(evaluate(box)).map(({ check, state }) => [check.id, rank[state]]));
const isOn = (value: number, mark: number) => Math.abs(value / mark - Math.round(value / mark)) < 1e-5;
const madeOf = (box: Box, ruler: Ruler): Box => ({ ...box, ...toRuler(box, ruler).inputs });

/** Parts whose sizes follow from an angle of 45°, or are sawn off a strip as they come. */
const bySquareRoot = ['keys', 'splines'];
/** Sizes of parts that lie on no mark of the ruler; a panel may lie on the finer one, or is cut to the mark below. */
const offParts = (box: Box, { mark }: Ruler) =>
  designBox(box)
    .parts.filter(({ name, round }) => round !== 'down' && !bySquareRoot.includes(name))
    .flatMap(({ name, finished }) =>
      Object.entries(finished)
        .filter(([, value]) => !isOn(value, mark))
        .map(([side, value]) => `${name} ${side} ${value / mark}`),
    );

describe('a box that lies on the ruler', () => {
  test('stays as it is, to the last digit', () => {
    for (const [box, ruler] of [
      [exampleBox, usualRuler.mm],
      [inchExample, usualRuler.inch],
      [inchExample, rulers['1/64 in']],
    ] as const) {
      const { inputs, moved, stays, farthest } = toRuler(box, ruler);
      expect({ inputs, moved, stays, farthest }).toEqual({ inputs: {}, moved: [], stays: [], farthest: 0 });
    }
  });
  test('and whose panels do so on the finer mark only has that said', () => {
    // 102.8 mm wide: between 104 less two gaps of 0.6. The next half millimeter down would leave the bottom less hold than the rule asks for.
    expect(toRuler(exampleBox, usualRuler.mm).finer.map(({ name, value }) => [name, value])).toEqual([
      ['bottomWidth', expect.closeTo(102.8, 9)],
      ['lidWidth', expect.closeTo(102.8, 9)],
    ]);
  });
});

describe('by hand', () => {
  test('a wall of 0.3 in on a rule in 32nds goes to 5/16 in, and every size with it', () => {
    const box = { ...inchExample, wall: 0.3 * INCH, bottomLip: 0.36 * INCH };
    const { inputs, moved } = toRuler(box, usualRuler.inch);
    // 0.3 is 9.6 of 1/32, 0.36 is 11.52.
    expect(inputs.wall! / INCH).toBeCloseTo(10 / 32, 9);
    expect(inputs.bottomLip! / INCH).toBeCloseTo(12 / 32, 9);
    const wall = moved.find(({ size }) => size.name === 'wall')!;
    expect([wall.size.value / INCH, wall.to / INCH]).toEqual([
      expect.closeTo(0.3, 9),
      expect.closeTo(0.3125, 9),
    ]);
  });
  test('contents between two marks keep their size, and the inside goes up around them', () => {
    const box = { ...inchExample, contentsLength: 6.01 * INCH, contentsWidth: 3.76 * INCH };
    const made = evaluate(madeOf(box, usualRuler.inch));
    expect(made.contentsLength / INCH).toBeCloseTo(6.01, 9);
    // 6.01 + 1/4 + 1/8 is 6.385, and the next 32nd is 6 13/32; 3.76 + 1/4 is 4.01, and the next is 4 1/32.
    expect(made.insideLength / INCH).toBeCloseTo(6 + 13 / 32, 9);
    expect(made.insideWidth / INCH).toBeCloseTo(4 + 1 / 32, 9);
  });
  test('fingers go to a cutter, and the walls to a whole odd number of them', () => {
    const box = { ...inchExample, fingerWidth: 0.29 * INCH, headroom: 0.4 * INCH };
    const made = evaluate(madeOf(box, usualRuler.inch));
    expect(isOn(made.fingerWidth, INCH / 16)).toBe(true);
    expect(made.fingerCount % 2).toBeCloseTo(1, 9);
  });
});

const any = fc.record({
  box: fc.constantFrom(...goldenBoxes().filter((box) => designBox(box).refusals.length === 0)),
  ruler: fc.constantFrom(...Object.values(rulers)),
});

describe('for any box that can be built, and any ruler', () => {
  test('no rule is lost, nothing new breaks, it can still be built, and the box takes every number as it is', () => {
    fc.assert(
      fc.property(any, ({ box, ruler }) => {
        const { inputs } = toRuler(box, ruler);
        const made = { ...box, ...inputs };
        const [was, is] = [ranks(box), ranks(made)];
        for (const [id, now] of is) expect(now, id).toBeLessThanOrEqual(was.get(id) ?? 0);
        expect(designBox(made).refusals).toEqual([]);
        expect(settle(inputs)).toEqual({ inputs, notes: [] });
      }),
      { numRuns: 60 },
    );
  }, 120_000);

  test('what goes in, the wood, the air and the board are left alone', () => {
    const own: readonly (keyof Box)[] = [
      'clearance',
      'headroom',
      'fingerRoom',
      'wantedLength',
      'wantedWidth',
      'wantedHeight',
      'bottomGap',
      'lidPlay',
    ];
    fc.assert(
      fc.property(any, ({ box, ruler }) => {
        const { inputs, moved } = toRuler(box, ruler);
        const names = new Set<string>([...own, ...moved.map(({ size }) => size.name)]);
        expect(Object.keys(inputs).filter((name) => !names.has(name))).toEqual([]);
      }),
      { numRuns: 30 },
    );
  }, 120_000);

  test('what is not named as staying lies on a mark, so that every part does where nothing stays', () => {
    let whole = 0;
    fc.assert(
      fc.property(any, ({ box, ruler }) => {
        const { stays } = toRuler(box, ruler);
        if (stays.length > 0) return;
        whole++;
        expect(offParts(madeOf(box, ruler), ruler)).toEqual([]);
      }),
      { numRuns: 60 },
    );
    expect(whole).toBeGreaterThan(40);
  }, 120_000);

  test('twice is once: a second time changes nothing', () => {
    fc.assert(
      fc.property(any, ({ box, ruler }) => {
        const { stays } = toRuler(box, ruler);
        if (stays.length > 0) return;
        expect(toRuler(madeOf(box, ruler), ruler).moved).toEqual([]);
      }),
      { numRuns: 30 },
    );
  }, 120_000);
});

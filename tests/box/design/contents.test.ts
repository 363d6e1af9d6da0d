/** What typed contents make of the box: they size it at once, keep what stands, and refuse what fits in no way. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Item } from '../../../src/box/core/field.ts';
import { type NewContents, withItems } from '../../../src/box/design/contents.ts';
import { blockOf, isLaid, waysToLie } from '../../../src/box/design/ways-to-lie.ts';
import { exampleBox, inchExample } from '../../../src/box/subjects/example.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { evaluate } from '../../../src/box/whole/index.ts';

const domino = exampleBox.items[0]!;
const sizes = ['contentsLength', 'contentsWidth', 'contentsHeight'] as const;
const block = (box: Box) => sizes.map((name) => box[name]);

const anyItem: fc.Arbitrary<Item> = fc.record({
  name: fc.constant('thing'),
  length: fc.double({ min: 0.1, max: 300, noNaN: true }),
  width: fc.double({ min: 0.1, max: 200, noNaN: true }),
  height: fc.double({ min: 0.1, max: 100, noNaN: true }),
  count: fc.integer({ min: 1, max: 12 }),
});
const anyList = fc.array(anyItem, { minLength: 1, maxLength: 2 });
const anyBox: fc.Arbitrary<Box> = fc
  .record({
    sizeFrom: fc.constantFrom<Box['sizeFrom']>('contents', 'inside', 'outside'),
    kind: fc.constantFrom<Box['kind']>('sliding', 'lift-off', 'sawn'),
    wantedLength: fc.integer({ min: 60, max: 600 }),
    wantedWidth: fc.integer({ min: 50, max: 400 }),
    wantedHeight: fc.integer({ min: 40, max: 300 }),
    lining: fc.integer({ min: 0, max: 3 }),
    fingerRoom: fc.integer({ min: 0, max: 25 }),
    dividersAcross: fc.integer({ min: 0, max: 2 }),
    dividersAlong: fc.integer({ min: 0, max: 2 }),
    items: fc.oneof(fc.constant(exampleBox.items), fc.constant([]), anyList),
  })
  .map((changes) => ({ ...exampleBox, ...changes }));

/** The box after a change; the same where it is refused. */
const boxWith = (box: Box, change: NewContents): Box =>
  'refused' in change ? box : { ...box, ...change.inputs };
const typed = (box: Box, changed: Partial<Item>) => withItems(box, [{ ...box.items[0]!, ...changed }]);

describe('a list of things', () => {
  test('lies within the limits of the fields, and in a box of given size within its walls', () => {
    let laid = 0;
    fc.assert(
      fc.property(anyBox, anyList, (box, items) => {
        const change = withItems(box, items);
        if ('refused' in change || waysToLie(box, items).length === 0) return;
        laid++;
        const next = boxWith(box, change);
        for (const name of sizes) {
          expect(next[name]).toBeGreaterThanOrEqual(fields[name].low);
          expect(next[name]).toBeLessThanOrEqual(fields[name].high);
        }
        // What would be built around the block is no larger than what was given.
        const around = evaluate({ ...next, sizeFrom: 'contents' });
        const given = evaluate(next);
        for (const side of ['insideLength', 'insideWidth', 'insideHeight'] as const)
          expect(around[side]).toBeLessThanOrEqual(given[side] + 0.011);
        // Nothing is larger than the block, and all of it together is no more than its volume.
        const room = block(next).sort((a, b) => a - b);
        for (const { length, width, height } of items)
          [length, width, height]
            .sort((a, b) => a - b)
            .forEach((size, axis) => {
              expect(size).toBeLessThanOrEqual(room[axis]! + 0.01);
            });
        const filled = items.reduce((sum, one) => sum + one.length * one.width * one.height * one.count, 0);
        expect(filled).toBeLessThanOrEqual(room.reduce((product, size) => product * (size + 0.01), 1));
      }),
      { numRuns: 150 },
    );
    expect(laid).toBeGreaterThan(40);
  });

  test('that is taken in twice changes nothing the second time', () => {
    fc.assert(
      fc.property(anyBox, anyList, (box, items) => {
        const once = boxWith(box, withItems(box, items));
        expect(boxWith(once, withItems(once, [...once.items]))).toEqual(once);
        if (once !== box) expect(boxWith(once, withItems(once, items))).toEqual(once);
      }),
      { numRuns: 80 },
    );
  });

  test('keeps the way that the reader has laid it, whichever it is, under another name or with one more where a place is free', () => {
    const ways = waysToLie(exampleBox);
    expect(ways.length).toBeGreaterThan(20);
    for (const way of ways) {
      const box = { ...exampleBox, ...blockOf(way) };
      expect(isLaid(box, way)).toBe(true);
      expect(boxWith(box, typed(box, { name: 'bone' }))).toEqual({
        ...box,
        items: [{ ...domino, name: 'bone' }],
      });
      const [{ places }] = way.groups as [(typeof way.groups)[0]];
      if (places[0] * places[1] * places[2] > domino.count)
        expect(block(boxWith(box, typed(box, { count: domino.count + 1 })))).toEqual(block(box));
    }
  });

  test('changes the inside at once, and no further than it must: rows stay rows', () => {
    // Three rows of ten on edge: 3 × 51 = 153 long, 10 × 9 = 90 wide, 25 high. 3 mm on each side, 10 above.
    const longer = boxWith(exampleBox, typed(exampleBox, { length: 51 }));
    expect(block(longer)).toEqual([153, 90, 25]);
    const { insideLength, insideWidth, insideHeight } = evaluate(longer);
    expect([insideLength, insideWidth, insideHeight]).toEqual([159, 96, 35]);
    // One more row of three: 11 × 9 = 99.
    expect(block(boxWith(exampleBox, typed(exampleBox, { count: 31 })))).toEqual([150, 99, 25]);
    expect(block(boxWith(exampleBox, typed(exampleBox, { count: 27 })))).toEqual([150, 81, 25]);
    // Sixteen by two on edge, one place empty: 16 × 3/8 = 6 in, 2 × 2 = 4 in.
    const inches = block(boxWith(inchExample, typed(inchExample, { count: 31 }))).map((size) => size / 25.4);
    [6, 4, 1].forEach((size, axis) => {
      expect(inches[axis]).toBeCloseTo(size, 9);
    });
  });

  test('that is the first is laid the best way, whatever size stood there', () => {
    const empty = { ...exampleBox, items: [], contentsLength: 400, contentsWidth: 300, contentsHeight: 200 };
    const card = { name: 'card', length: 90, width: 60, height: 20, count: 1 };
    expect(block(boxWith(empty, withItems(empty, [card])))).toEqual([90, 60, 20]);
  });

  test('that is emptied leaves the size', () =>
    expect(withItems(exampleBox, [])).toEqual({ inputs: { items: [] } }));
});

describe('a size that the reader has set', () => {
  const own: Box = { ...exampleBox, contentsLength: 157, contentsWidth: 93 };

  test('of the contents stays while the things fit into it', () => {
    for (const changed of [{ length: 51 }, { count: 27 }, { name: 'bone' }])
      expect(typed(own, changed)).toEqual({ inputs: { items: [{ ...domino, ...changed }] } });
  });

  test('of the contents gives way where they do not, in words', () => {
    const change = typed(own, { length: 60 });
    expect(block(boxWith(own, change))).toEqual([180, 90, 25]);
    expect('note' in change && change.note).toMatch(
      /^The things no longer fit into the 157.mm .*it is now 180.mm/,
    );
  });

  test('of the box is never moved by its contents', () => {
    fc.assert(
      fc.property(anyBox, anyList, (box, items) => {
        fc.pre(box.sizeFrom !== 'contents');
        const [before, now] = [evaluate(box), evaluate(boxWith(box, withItems(box, items)))];
        for (const size of ['outsideLength', 'outsideWidth', 'outsideHeight'] as const)
          expect(now[size]).toBe(before[size]);
      }),
      { numRuns: 60 },
    );
  });
});

describe('what fits in no way', () => {
  test('is refused with what does not fit and by how much', () => {
    expect(typed(exampleBox, { length: 700 })).toEqual({
      refused: expect.stringMatching(/they need 100.mm \(3.15\/16.in\) more length than the 600.mm/),
    });
  });

  test('into a given inside names what is missing there, with the room around', () => {
    // 100 − 2 × 3 = 94 long, 60 − 6 = 54 wide, 45 − 10 = 35 high: a thing of 98 × 54 × 35 is 4 mm too long.
    const given: Box = {
      ...exampleBox,
      items: [{ name: 'card', length: 90, width: 50, height: 20, count: 1 }],
      sizeFrom: 'inside',
      wantedLength: 100,
      wantedWidth: 60,
      wantedHeight: 45,
    };
    expect(typed(given, { length: 98, width: 54, height: 35 })).toEqual({
      refused: expect.stringMatching(
        /size you gave: laid closest, they need 4.mm \(11\/64.in\) more length\. Make/,
      ),
    });
    expect(typed(given, { length: 94, width: 54, height: 35 })).not.toHaveProperty('refused');
  });

  test('of a thing thinner than the least that contents may be, where even that least is not left', () => {
    // 15 − 14.7 above leaves 0.3 mm of height, and contents count as at least 0.5 mm.
    const flat: Box = {
      ...exampleBox,
      items: [],
      sizeFrom: 'inside',
      wantedLength: 100,
      wantedWidth: 60,
      wantedHeight: 15,
    };
    const sheet: Item = { name: 'sheet', length: 50, width: 30, height: 0.1, count: 1 };
    expect(withItems({ ...flat, headroom: 14.7 }, [sheet])).toEqual({
      refused: expect.stringMatching(/they need 0\.2.mm .*more height/),
    });
    expect(withItems({ ...flat, headroom: 14.5 }, [sheet])).not.toHaveProperty('refused');
  });

  test('may be mended row by row where it stands already, the size waiting', () => {
    const long = (length: number): Item => ({ name: 'rod', length, width: 10, height: 5, count: 1 });
    const box: Box = { ...exampleBox, items: [long(900), { ...long(700), width: 11 }] };
    const first = boxWith(box, withItems(box, [long(300), box.items[1]!]));
    expect(first).toEqual({ ...box, items: [long(300), box.items[1]!] });
    expect(block(boxWith(first, withItems(first, [long(300)])))[0]).toBe(300);
  });
});

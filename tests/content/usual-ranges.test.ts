/** A usual range is declared once: what a check judges by is what the page of its rule says, in both units. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { type Check, eitherWay, type NativeRange, type Range, usualOf } from '../../src/box/core/verdict.ts';
import { evaluate, type Values, wholeModel } from '../../src/box/whole/index.ts';

import type { UnitSystem } from '../../src/units/index.ts';
import { goldenBoxes } from '../box/golden/boxes.ts';
import { exampleBox } from '../box/reckoned-box.ts';

const { checks } = wholeModel;

const folder = new URL('../../content/rules/', import.meta.url);
const pages = new Map(
  readdirSync(folder).map((file) => {
    const { usual } = parse(readFileSync(new URL(file, folder), 'utf8').split('---\n')[1]!) as {
      usual: Record<UnitSystem, string>;
    };
    return [file.replace('.mdx', ''), usual] as const;
  }),
);
const usualOn = (rule: string) => pages.get(rule)!;

/** Every number in a text: "1/32", "1 1/2", "0.10", "45". */
const numbersIn = (text: string) =>
  [...text.matchAll(/(?:(\d+) )?(\d+)\/(\d+)|\d+(?:\.\d+)?/g)].map(([all, whole, above, below]) =>
    above ? Number(whole ?? 0) + Number(above) / Number(below) : Number(all),
  );

const isNative = (range: NativeRange | Range): range is NativeRange => 'mm' in range;
/** The range a check's rule must give, in numbers as its page writes them. */
const declared = ({ usual, declares }: Check<Values>) =>
  declares ?? (typeof usual === 'function' ? undefined : usual);

test.each(checks.filter(declared).map((check) => [check.id, check] as const))(
  'the page of the rule gives the range that %s is judged by',
  (_, check) => {
    const range = declared(check)!;
    for (const system of ['mm', 'inch'] as const) {
      const text = usualOn(check.rule)[system];
      const written = numbersIn(text);
      const scale = check.kind === 'percent' ? 100 : 1;
      for (const end of isNative(range) ? range[system] : range)
        if (Number.isFinite(end))
          expect(
            // A share is written as a fraction or in percent.
            written.some((number) => [number, number * scale].some((one) => Math.abs(one - end) < 1e-9)),
            `${end} is not in “${text}”`,
          ).toBe(true);
    }
  },
);

test('a check whose range is the same for every box declares it, unless the range only says that it fits at all', () => {
  const boxes = goldenBoxes()
    .slice(0, 400)
    .flatMap((box) => [box, { ...box, lidHeight: 2 * box.lidHeight }])
    .map(evaluate);
  for (const check of checks) {
    if (declared(check)) continue;
    const ranges = boxes.map((values) => String(usualOf(check, values)));
    if (new Set(ranges).size > 1) continue;
    const [low, high] = usualOf(check, boxes[0]!);
    const fitsAtAll = low === 0 && high === Number.POSITIVE_INFINITY;
    const breaksOutside = String(check.works?.(boxes[0]!)) === ranges[0];
    expect(fitsAtAll || breaksOutside, `${check.id} is judged by ${ranges[0]}, which no page gives`).toBe(
      true,
    );
  }
});

describe('a range that is worked out for the box keeps to the one its page gives', () => {
  const of = (id: string, values: Partial<Values>) =>
    usualOf(checks.find((check) => check.id === id)!, { ...evaluate(exampleBox), ...values });

  test('fingers of a wall of 10 mm, and of 3/8 in, are the ones of the page', () => {
    const { declares } = checks.find(({ id }) => id === 'finger-width')!;
    const { mm, inch } = declares as NativeRange;
    expect(of('finger-width', { wall: 10 })).toEqual(mm);
    expect(of('finger-width', { wall: 9.525 }).map((end) => end / 25.4)).toEqual(
      inch.map((end) => expect.closeTo(end, 9)),
    );
  });

  test('no wall, bottom, lip or step error is called usual beyond the ends the page gives', () => {
    for (const id of ['wall-thickness', 'bottom-thickness-plywood', 'step-error-adds-up']) {
      const check = checks.find((one) => one.id === id)!;
      const [low, high] = eitherWay(check.declares as NativeRange);
      for (const box of goldenBoxes().slice(0, 200)) {
        const [least, most] = usualOf(check, evaluate(box));
        expect(least, id).toBeGreaterThanOrEqual(low - 1e-9);
        expect(most, id).toBeLessThanOrEqual(high + 1e-9);
      }
    }
    // A lip may have to be thicker than the range where the groove is deep, never thinner and never more.
    const lip = checks.find((one) => one.id === 'lip-below-bottom-groove')!;
    const [low, high] = eitherWay(lip.declares as NativeRange);
    expect(of(lip.id, { grooveDepth: 3 })).toEqual([low, high]);
    expect(of(lip.id, { grooveDepth: 6 })).toEqual([6, high]);
  });

  test('a gap that this wood does not need to be larger is judged by the page’s upper end', () => {
    expect(of('lid-clearance', { lidPlayNeeded: 0.6 })).toEqual([0.6, 25.4 / 16]);
    expect(of('gap-beside-the-bottom', { bottomGapNeeded: 0.6 })).toEqual([0.6, 1.6]);
  });
});

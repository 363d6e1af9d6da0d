/** What a verdict prints bears it out: in both units, for any box. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tell } from '../../../src/box/core/tell.ts';
import { type Check, judge, type Verdict } from '../../../src/box/core/verdict.ts';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { evaluate, type Values, verdicts, wholeModel } from '../../../src/box/whole/index.ts';
import type { UnitSystem } from '../../../src/units/index.ts';
import { parse } from '../../../src/units/parse.ts';
import { goldenBoxes } from '../golden/boxes.ts';
import { exampleBox } from '../reckoned-box.ts';

const { checks } = wholeModel;

const systems: readonly UnitSystem[] = ['mm', 'inch'];

/** What a printed number says to a reader, who sees no more digits than are there. */
function read(text: string, { check }: Verdict, system: UnitSystem): number {
  // The mark of the rule beside a small number is another word for it: it is judged in tests/units.
  const number = text.replace(/^just (over|under) /, '').replace(/, .*$/, '');
  const parsed = parse(number, check.kind, system);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.message}`);
  return parsed.value;
}

/** The printed ends of a range: "3 to 6 mm", "at least 2 mm", "at most 14 days". */
function ends(usual: string, verdict: Verdict, system: UnitSystem): [number, number] {
  const [low, high] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  if (usual.startsWith('at least ')) return [read(usual.slice(9), verdict, system), high];
  if (usual.startsWith('at most ')) return [low, read(usual.slice(8), verdict, system)];
  if (usual === '') return [low, high];
  const [least, most] = usual.split(' to ');
  return [read(least!, verdict, system), read(most!, verdict, system)];
}

/** Fails where the words of a verdict do not bear it out. */
function bearsOut(verdict: Verdict, system: UnitSystem): void {
  const { check, state, measured: value, usual: range } = verdict;
  if (state === 'unknown') return;
  const told = tell(verdict, system);
  const about = `${check.id}, ${state}: ${told.measured} (${told.usual}) in ${system}`;
  const shown = read(told.measured, verdict, system);
  const [low, high] = ends(told.usual, verdict, system);
  const noise = 1e-9 * Math.max(1, Math.abs(shown));
  if (state === 'usual' || (value >= range[0] && value <= range[1])) {
    expect(shown, about).toBeGreaterThanOrEqual(low - noise);
    expect(shown, about).toBeLessThanOrEqual(high + noise);
  } else if (told.measured.startsWith('just ')) {
    expect(told.measured, about).toMatch(value < range[0] ? /^just under/ : /^just over/);
    expect(Math.abs(shown - (value < range[0] ? low : high)), about).toBeLessThan(noise);
  } else if (value < range[0]) expect(shown, about).toBeLessThan(low - noise);
  else expect(shown, about).toBeGreaterThan(high + noise);
}

const ofBox = (box: typeof exampleBox) => {
  for (const verdict of verdicts(evaluate(box))) for (const system of systems) bearsOut(verdict, system);
};

describe('the printed numbers of a verdict bear it out', () => {
  test('for a thousand boxes', () => {
    for (const box of goldenBoxes()) ofBox(box);
  }, 60_000);

  test('for boxes with any sizes that may be written', () => {
    const numbers = Object.entries(fields).flatMap(([name, field]) =>
      field.type === 'number' && field.kind !== 'count'
        ? [[name, fc.double({ min: field.low, max: field.high, noNaN: true })] as const]
        : [],
    );
    fc.assert(
      fc.property(fc.record(Object.fromEntries(numbers), { requiredKeys: [] }), (changed) =>
        ofBox({ ...exampleBox, ...changed }),
      ),
      { numRuns: 300 },
    );
  }, 60_000);

  test('however near to a limit the number lies', () => {
    const near = fc.record({
      index: fc.nat(checks.length - 1),
      end: fc.constantFrom(0, 1),
      off: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
      scale: fc.constantFrom(1, 0.1, 0.01, 0.001, 0.0001),
    });
    const values = evaluate(exampleBox);
    fc.assert(
      fc.property(near, ({ index, end, off, scale }) => {
        const check = checks[index]!;
        const now = judge({ ...check, applies: () => true }, values);
        const limit = now?.usual[end];
        if (limit === undefined || !Number.isFinite(limit)) return;
        const moved: Check<Values> = { ...check, applies: () => true };
        const verdict = judge(moved, { ...values, [check.of]: limit + off * scale })!;
        for (const system of systems) bearsOut(verdict, system);
      }),
      { numRuns: 5000 },
    );
  });

  test('a lip of 0.7937 mm against at least 1/32 in is told in finer parts, or as just under it', () => {
    const check: Check<Values> = { ...checks[0]!, usual: () => [25.4 / 32, 5], works: () => [0, 9] };
    const told = (measured: number) =>
      tell(judge(check, { ...evaluate(exampleBox), [check.of]: measured })!, 'inch');
    // 0.77 mm is 0.0303 in; 0.7937 mm is 0.03125 in to five digits.
    expect(told(0.77).measured).toBe('0.03\u00a0in');
    expect(told(0.7937)).toMatchObject({ measured: 'just under 1/32\u00a0in' });
  });

  test('each reader sees the range of the page for their units, where the verdict is the same by it', () => {
    const room = checks.find((one) => one.id === 'design-from-the-inside')!;
    const told = (measured: number, system: UnitSystem) =>
      tell(judge(room, { ...evaluate(exampleBox), [room.of]: measured })!, system).usual;
    expect(told(4, 'mm')).toBe('3\u00a0mm to 6\u00a0mm');
    expect(told(4, 'inch')).toBe('1/8\u00a0in to 1/4\u00a0in');
    // 1/4 in is usual for the one reader, so it is for the other, who is told why.
    expect(told(6.35, 'mm')).toBe('3\u00a0mm to 6.4\u00a0mm');
  });
});

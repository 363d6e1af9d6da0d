/** Every guess of every lesson is drawn here blank, marked and open, in both systems. */
import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { placeIn } from '../../../src/figures/parts/guess-frame.ts';
import { markOf } from '../../../src/notebook/predictions.ts';
import { lessons } from '../../../src/prose/lessons.ts';
import { format } from '../../../src/units/index.ts';
import { compared } from '../../../src/widgets/lesson/compared.ts';
import { valuesOfGuess } from '../../../src/widgets/lesson/guess-spec.ts';

const guesses = Object.entries(lessons).flatMap(([lesson, { guesses = {}, model }]) =>
  Object.entries(guesses).map(([id, spec]) => ({ id, lesson, spec, model })),
);
const systems = ['mm', 'inch'] as const;

test('no two guesses share an id, under which the reader’s mark is kept', () => {
  const ids = guesses.map(({ id, spec }) => `${id} ${spec.event}`);
  const byId = new Map(guesses.map(({ id, spec }) => [id, spec]));
  // The same guess may stand on two pages; then it is the same one.
  for (const { id, spec } of guesses) expect(byId.get(id), id).toBe(spec);
  expect(ids.length).toBeGreaterThan(0);
});

describe.each(guesses)('the guess $id of $lesson', ({ spec, model }) => {
  const words = (of: Parameters<typeof renderToString>[0]) => renderToString(of);

  test.each(systems)('is drawn and answered without a number that is none (%s)', (system) => {
    const values = valuesOfGuess(spec, model, system);
    expect(words(<p>{spec.answer(values, system)}</p>)).not.toMatch(/NaN|undefined|Infinity|–</);
    if (spec.type === 'number') {
      const { figure: Figure, field } = spec;
      for (const mark of [undefined, field.low, field.high])
        for (const open of [false, true])
          expect(words(<Figure values={values} system={system} mark={mark} open={open} />)).not.toMatch(
            /NaN|undefined|Infinity/,
          );
    } else {
      const { option: Option } = spec;
      for (const option of Object.keys(spec.options))
        for (const open of [false, true])
          expect(words(<Option values={values} option={option} open={open} />)).not.toMatch(/NaN|Infinity/);
    }
  });

  test.each(systems)('has its truth within what can be marked or picked (%s)', (system) => {
    const values = valuesOfGuess(spec, model, system);
    if (spec.type === 'pick') {
      expect(Object.keys(spec.options)).toContain(spec.truth(values));
      return;
    }
    const { low, high } = spec.field;
    expect(spec.truth(values, system)).toBeGreaterThanOrEqual(low);
    expect(spec.truth(values, system)).toBeLessThanOrEqual(high);
    expect(spec.start(values)).toBeGreaterThanOrEqual(low);
    // What is drawn at the start is not the answer.
    expect(Math.abs(spec.start(values) - spec.truth(values, system)) / (high - low)).toBeGreaterThan(0.04);
    const { frame } = spec;
    for (const [x, y] of [low, high].map((value) => placeIn(frame, spec.field, value))) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(frame.width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(frame.height);
    }
  });

  test.each(systems)('tells nothing of the truth while it is covered (%s)', (system) => {
    const values = valuesOfGuess(spec, model, system);
    if (spec.type === 'pick') {
      const { option: Option } = spec;
      const covered = (option: string) =>
        words(<Option values={values} option={option} open={false} />).replace(/id="[^"]*"/g, '');
      // Jammed, split or dropped wood is drawn only when the outcome is.
      for (const option of Object.keys(spec.options)) expect(covered(option)).not.toMatch(/jammed|warning/);
      return;
    }
    const { figure: Figure, field } = spec;
    const shown = (open: boolean) =>
      words(<Figure values={values} system={system} mark={undefined} open={open} />);
    const text = format(spec.truth(values, system), field.kind, {
      system,
      ...(field.kind === 'length' ? { as: 'exact' as const } : { digits: field.digits }),
    });
    // As a reader meets it: a coordinate is no truth, and 8 is not in 0.18.
    const read = shown(false).replace(/<[^>]*>/g, ' ');
    expect(read).not.toMatch(new RegExp(`(?<![\\d.])${text.replace(/[.*+?^${}()|/]/g, '\\$&')}(?![\\d.])`));
    expect(shown(false)).not.toBe(shown(true));
  });
});

test('whatever mark is kept is read back, and what is no mark is none', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 6.35, noNaN: true }), (mark) => {
      expect(markOf(String(mark), 0, 6.35)).toBe(mark);
    }),
  );
  for (const text of [undefined, '', 'skipped', 'the flat-sawn strip', '7', '-1', '1/8 in'])
    expect(markOf(text, 0, 6.35)).toBeUndefined();
});

test('a guess within a seventh is well judged, and larger errors are counted in times', () => {
  expect(compared(1, 1.1)).toBe('Well judged.');
  expect(compared(3, 1)).toBe('Your mark was about 3 times that.');
  expect(compared(1, 2)).toBe('That is about twice your mark.');
  expect(compared(0, 1)).toBe('You expected nothing.');
  expect(compared(1, 1.4)).toBe('That is somewhat more than your mark.');
});

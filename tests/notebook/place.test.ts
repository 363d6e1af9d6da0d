/** Where a reader goes on in the course. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeIn } from '../../src/notebook/place.ts';
import type { Progress } from '../../src/notebook/progress.ts';

const course = [
  { id: 'proportion', steps: ['shape', 'inside', 'wanted'] },
  { id: 'walls', steps: ['thin', 'give'] },
  { id: 'uncut', steps: [] },
  { id: 'grooves', steps: ['lip', 'web'] },
];

test('who has not begun has no place', () => {
  expect(placeIn(course, {}, undefined)).toBeUndefined();
  expect(placeIn(course, {}, 'a-lesson-that-is-gone')).toBeUndefined();
});

test('the step reached last is the place, until it is done; then the next one', () => {
  const at = { at: 'inside', steps: { shape: 'done' } } as const;
  expect(placeIn(course, { proportion: at }, 'proportion')).toEqual({ lesson: 0, step: 1 });
  const done = { at: 'inside', steps: { shape: 'done', inside: 'skipped' } } as const;
  expect(placeIn(course, { proportion: done }, 'proportion')).toEqual({ lesson: 0, step: 2 });
});

test('a step passed by is the place once all after it are done', () => {
  const passed = { at: 'wanted', steps: { inside: 'done', wanted: 'done' } } as const;
  expect(placeIn(course, { proportion: passed }, 'proportion')).toEqual({ lesson: 0, step: 0 });
});

test('after a lesson comes the next that is not done, over one without steps and round to what was left out', () => {
  const walls = { steps: { thin: 'done', give: 'done' } } as const;
  expect(placeIn(course, { walls }, 'walls')).toEqual({ lesson: 3, step: 0 });
  const grooves = { steps: { lip: 'done', web: 'skipped' } } as const;
  expect(placeIn(course, { walls, grooves }, 'walls')).toEqual({ lesson: 0, step: 0 });
});

test('a place is always a step that is not done, and there is one until all are', () => {
  const states = fc.record(
    Object.fromEntries(
      course.map(({ id, steps }) => [
        id,
        fc.record(
          {
            at: fc.constantFrom(...steps, 'a-step-that-is-gone'),
            steps: fc.record(
              Object.fromEntries(steps.map((step) => [step, fc.constantFrom('done', 'skipped')])),
              { requiredKeys: [] },
            ),
          },
          { requiredKeys: ['steps'] },
        ),
      ]),
    ),
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(states, fc.constantFrom(...course), (kept, { id: last }) => {
      const progress = kept as Progress;
      const place = placeIn(course, progress, last);
      const undone = course.flatMap(({ id, steps }) => steps.filter((step) => !progress[id]?.steps[step]));
      if (!place) expect(undone).toEqual([]);
      else {
        const { id, steps } = course[place.lesson]!;
        expect(steps).toContain(steps[place.step]);
        expect(progress[id]?.steps[steps[place.step]!]).toBeUndefined();
      }
    }),
  );
});

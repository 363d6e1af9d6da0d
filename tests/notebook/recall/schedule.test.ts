/**
 * When a question comes back. Expected waits come from the published formulas of FSRS-6 with its published weights, worked out
 * here on their own: a first memory lasts w2 (right) or w0 (wrong) days, and nine in ten know it after that time.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Answer } from '../../../src/notebook/recall/answers.ts';
import { dateOf, dayOf, whenOf } from '../../../src/notebook/recall/day.ts';
import { dueOf, pickThree } from '../../../src/notebook/recall/pick.ts';
import { dueOn, longestWait } from '../../../src/notebook/recall/schedule.ts';

/** Published default weights of FSRS-6 that a first and a second right answer need. */
const w = { again: 0.212, good: 2.3065, d: 6.4133, dExp: 0.8334, grow: 1.8722, fade: 0.1666, late: 0.796 };
const decay = 0.1542;

const waitAfter = (...answers: Answer[]) => dueOn(answers, answers.at(-1)![0]) - answers.at(-1)![0];

describe('a question comes back', () => {
  test('two days after a first right answer, and the day after a wrong one or a guess', () => {
    expect(waitAfter([100, 'right'])).toBe(Math.round(w.good));
    expect(waitAfter([100, 'wrong'])).toBe(Math.max(1, Math.round(w.again)));
    expect(waitAfter([100, 'guessed'])).toBe(1);
  });

  test('as the published formula says after a second right answer', () => {
    const difficulty = w.d - Math.exp(w.dExp * 2) + 1;
    const factor = 0.9 ** (-1 / decay) - 1;
    const known = (1 + (factor * 2) / w.good) ** -decay;
    const grown =
      Math.exp(w.grow) * (11 - difficulty) * w.good ** -w.fade * (Math.exp((1 - known) * w.late) - 1);
    expect(waitAfter([100, 'right'], [102, 'right'])).toBe(Math.round(w.good * (1 + grown)));
  });

  const day = fc.integer({ min: 0, max: 40_000 });
  const answer: fc.Arbitrary<Answer> = fc.tuple(day, fc.constantFrom('right', 'guessed', 'wrong'));
  const given = fc.array(answer, { minLength: 1, maxLength: 12 });

  test('after a day at least and a year at most, in whole days, whatever was answered in whatever order', () => {
    fc.assert(
      fc.property(given, day, (answers, now) => {
        const due = dueOn(answers, now);
        const last = answers.at(-1)![0];
        expect(Number.isInteger(due)).toBe(true);
        if (last > now) expect(due).toBe(now);
        else {
          expect(due).toBeGreaterThan(last);
          expect(due).toBeLessThanOrEqual(last + longestWait);
        }
      }),
    );
  });

  test('later after one more right answer on its day than after a wrong one', () => {
    fc.assert(
      fc.property(given, (answers) => {
        const now = dueOn(answers, answers.at(-1)![0]);
        expect(waitAfter(...answers, [now, 'right'])).toBeGreaterThanOrEqual(
          waitAfter(...answers, [now, 'wrong']),
        );
      }),
    );
  });

  test('at once where it was answered under a clock that ran ahead', () => {
    expect(dueOn([[30_000, 'right']], 20_000)).toBe(20_000);
  });

  test('no sooner for a clock that was set back: what was learned stays', () => {
    const learned: Answer[] = [
      [100, 'right'],
      [102, 'right'],
      [113, 'right'],
    ];
    expect(waitAfter(...learned, [90, 'right'])).toBeGreaterThanOrEqual(waitAfter(...learned));
  });
});

describe('a day', () => {
  test('is the date on the reader’s calendar, at any hour of it', () => {
    for (const hour of [0, 2, 12, 23])
      expect(dayOf(new Date(2026, 2, 29, hour, 59))).toBe(Date.UTC(2026, 2, 29) / 86_400_000);
  });
  test('February 29 is one like every other', () => {
    const [before, leap, after] = [
      new Date(2028, 1, 28, 9),
      new Date(2028, 1, 29, 23, 59),
      new Date(2028, 2, 1, 0, 1),
    ].map(dayOf) as [number, number, number];
    expect([leap - before, after - leap]).toEqual([1, 1]);
    expect(dateOf(leap, before)).toBe('February 29');
    expect(dueOn([[before, 'wrong']], before)).toBe(leap);
  });
  test('is said with its year where that is another', () => {
    const now = dayOf(new Date(2026, 11, 30));
    expect(whenOf(now, now)).toBe('today');
    expect(whenOf(now + 1, now)).toBe('tomorrow, December 31');
    expect(whenOf(now + 11, now)).toBe('in 11 days, on January 10, 2027');
  });
});

describe('the three before a lesson', () => {
  const ids = ['a/1', 'a/2', 'a/3', 'b/1', 'b/2', 'b/3'];
  test('are the first never asked, in the order of the course', () => {
    expect(pickThree(dueOf(ids, {}, 100))).toEqual(['a/1', 'a/2', 'a/3']);
  });
  test('are those that are due, the most overdue first, before new ones', () => {
    const answers = {
      'a/1': [[100, 'right']],
      'a/2': [[90, 'right']],
      'b/1': [[95, 'wrong']],
    } as const satisfies Record<string, readonly Answer[]>;
    // Due on days 102, 92 and 96.
    expect(pickThree(dueOf(ids, answers, 101))).toEqual(['a/2', 'b/1', 'a/3']);
    expect(dueOf(ids, answers, 101).next).toBe(102);
    expect(pickThree(dueOf(ids, answers, 102))).toEqual(['a/2', 'b/1', 'a/1']);
  });
  test('are none where all are asked and none is due, and the next day is told', () => {
    const answers = Object.fromEntries(ids.map((id) => [id, [[100, 'right']] as const satisfies Answer[]]));
    expect(pickThree(dueOf(ids, answers, 101))).toEqual([]);
    expect(dueOf(ids, answers, 101).next).toBe(102);
  });
  test('of the first lesson are none', () => {
    expect(pickThree(dueOf([], { 'a/1': [[1, 'right']] }, 100))).toEqual([]);
  });
});

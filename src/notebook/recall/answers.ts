/**
 * How questions from earlier lessons were answered, by the question's id; kept on the device, the same in every tab. Only
 * the answers are kept: when a question comes back is worked out from them (`schedule.ts`), so nothing can contradict them.
 */
import { signal } from '@preact/signals';
import { readKept } from '../aside.ts';
import { onOtherTab, save } from '../storage.ts';

const key = 'recall';
const version = 1;
/** Answers remembered of one question; the oldest go first. */
const mostAnswers = 60;

const grades = ['right', 'guessed', 'wrong'] as const;
export type Grade = (typeof grades)[number];

/** The day it was given, see `day.ts`, and how it was. */
export type Answer = readonly [day: number, grade: Grade];
/** In the order they were given. The days may go back, where a clock was set. */
export type Answers = Readonly<Record<string, readonly Answer[]>>;

export const answers = signal<Answers>({});
let awake = false;

/** The id of a question: its lesson, and its place among the questions of that lesson, from 1. So new ones go to the end. */
export const questionId = (lesson: string, place: number): string => `${lesson}/${place}`;

const isId = (id: string) => /^[a-z0-9-]{1,80}\/\d{1,2}$/.test(id);
/** Days of four-digit years. */
const isDay = (day: unknown) => Number.isInteger(day) && Math.abs(day as number) < 3_000_000;
const isAnswer = (value: unknown): value is Answer =>
  Array.isArray(value) && value.length === 2 && isDay(value[0]) && grades.includes(value[1]);

/** The answers in a text that claims to hold them; what cannot be read is dropped. */
export function readAnswers(text: string | undefined): Answers {
  let claimed: { version?: unknown; answers?: unknown } | null;
  try {
    claimed = JSON.parse(text ?? 'null');
  } catch {
    return {};
  }
  const kept = claimed?.version === version ? claimed.answers : undefined;
  if (typeof kept !== 'object' || kept === null) return {};
  return Object.fromEntries(
    Object.entries(kept).flatMap(([id, value]) => {
      const good = isId(id) && Array.isArray(value) ? value.filter(isAnswer).slice(-mostAnswers) : [];
      return good.length > 0 ? [[id, good]] : [];
    }),
  );
}

export const writeAnswers = (all: Answers): string => JSON.stringify({ version, answers: all });

const kept = (): Answers => readKept(key, 'answers', readAnswers, writeAnswers);

/** Reads what is kept, and follows other tabs from then on. */
export function loadAnswers(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  answers.value = kept();
  onOtherTab(key, (text) => {
    answers.value = readAnswers(text);
  });
}

/** Changes the answers of one question, beside what any tab has kept of the others meanwhile. */
function keep(id: string, next: (own: readonly Answer[]) => readonly Answer[]): void {
  const all = { ...answers.value, ...kept() };
  answers.value = { ...all, [id]: next(all[id] ?? []).slice(-mostAnswers) };
  save(key, writeAnswers(answers.value));
}

export const addAnswer = (id: string, day: number, grade: Grade): void =>
  keep(id, (own) => [...own, [day, grade]]);

/** Says of the last answer how it was. */
export const regrade = (id: string, grade: Grade): void =>
  keep(id, (own) => own.map(([day, was], at) => [day, at === own.length - 1 ? grade : was]));

const same = ([day, grade]: Answer, [otherDay, otherGrade]: Answer) =>
  day === otherDay && grade === otherGrade;

/** The answers of two devices together, by their day; what both have stands once. */
export function mergeAnswers(own: Answers, other: Answers): Answers {
  const merged = { ...other, ...own };
  for (const id of Object.keys(own))
    if (other[id]) {
      const missing = other[id].filter((one) => !own[id]!.some((mine) => same(mine, one)));
      if (missing.length > 0)
        merged[id] = [...own[id]!, ...missing].sort(([one], [two]) => one - two).slice(-mostAnswers);
    }
  return merged;
}

/** How far the reader is in each lesson: which steps are done or skipped, and where they left off; kept on the device. */
import { signal } from '@preact/signals';
import { readKept } from './aside.ts';
import { onOtherTab, save } from './storage.ts';

const key = 'progress';

export type StepState = 'done' | 'skipped';

export interface LessonProgress {
  /** The step the reader was last at, by its name in the lesson. */
  readonly at?: string;
  readonly steps: Readonly<Record<string, StepState>>;
}

export type Progress = Readonly<Record<string, LessonProgress>>;

export const progress = signal<Progress>({});
/** The lesson the reader was in last. */
export const lastLesson = signal<string | undefined>(undefined);
let awake = false;

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What a text from the store says; whatever is not as it should be is dropped. */
function read(text: string | undefined): { lessons: Progress; last?: string } {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? '{}');
  } catch {
    return { lessons: {} };
  }
  if (!isRecord(kept) || !isRecord(kept.lessons)) return { lessons: {} };
  const lessons = Object.entries(kept.lessons).flatMap(([lesson, value]) => {
    if (!isRecord(value) || !isRecord(value.steps)) return [];
    const steps = Object.entries(value.steps).filter(
      (entry): entry is [string, StepState] => entry[1] === 'done' || entry[1] === 'skipped',
    );
    return [
      [
        lesson,
        {
          ...(typeof value.at === 'string' && { at: value.at }),
          steps: Object.fromEntries(steps),
        },
      ] as const,
    ];
  });
  return {
    lessons: Object.fromEntries(lessons),
    ...(typeof kept.last === 'string' && { last: kept.last }),
  };
}

const kept = () => readKept(key, 'steps of lessons', read);
const take = ({ lessons, last }: ReturnType<typeof read>) => {
  progress.value = lessons;
  lastLesson.value = last;
};

/** Loads what was kept, and follows other tabs from then on. */
export function loadProgress(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  take(kept());
  onOtherTab(key, (text) => take(read(text)));
}

/** Changes one lesson beside what any tab has kept of the others meanwhile. */
function keep(lesson: string, next: (now: LessonProgress) => LessonProgress): void {
  const { lessons } = kept();
  const all = { ...progress.value, ...lessons };
  progress.value = { ...all, [lesson]: next(all[lesson] ?? { steps: {} }) };
  lastLesson.value = lesson;
  save(key, JSON.stringify({ lessons: progress.value, last: lesson }));
}

/** The reader is at this step. */
export const reach = (lesson: string, step: string): void =>
  keep(lesson, (now) => (now.at === step ? now : { ...now, at: step }));

/** A step is done, or its guess was skipped. What is done stays done. */
export const finish = (lesson: string, step: string, state: StepState): void =>
  keep(lesson, (now) =>
    now.steps[step] === 'done' ? now : { ...now, steps: { ...now.steps, [step]: state } },
  );

/** A guess was covered again: its step is no longer done. */
export const reopen = (lesson: string, step: string): void =>
  keep(lesson, (now) => {
    const { [step]: _covered, ...steps } = now.steps;
    return { ...now, steps };
  });

/** Begins a lesson anew. */
export const startOver = (lesson: string): void => keep(lesson, () => ({ steps: {} }));

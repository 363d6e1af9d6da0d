/** What a teacher chose last for the sheets of a class: kept on this device alone. */

import { signal } from '@preact/signals';
import { readKept } from '../aside.ts';
import { onOtherTab, save } from '../storage.ts';

export const papers = ['A4', 'Letter'] as const;
export type Paper = (typeof papers)[number];
export const printed = ['both', 'sheets', 'keys'] as const;
export type Printed = (typeof printed)[number];
/** As many as one class has; more are two classes. */
export const mostLearners = 60;

export interface SheetChoices {
  readonly className: string;
  /** 1 to `mostLearners`. */
  readonly learners: number;
  readonly system: 'mm' | 'inch';
  readonly paper: Paper;
  readonly print: Printed;
  /** Ids. */
  readonly exercises: readonly string[];
}

const key = 'sheets';

export const sheetChoices = signal<SheetChoices | undefined>(undefined);
let awake = false;

const isOf = <T extends string>(list: readonly T[], value: unknown): value is T =>
  (list as readonly unknown[]).includes(value);

/** The choices in a text that claims to hold them; anything else is none. */
function read(text: string | undefined): SheetChoices | undefined {
  try {
    const claimed: unknown = JSON.parse(text ?? 'null');
    const { className, learners, system, paper, print, exercises } = (claimed ?? {}) as Partial<
      Record<keyof SheetChoices, unknown>
    >;
    if (
      typeof className !== 'string' ||
      className.length > 60 ||
      typeof learners !== 'number' ||
      !Number.isInteger(learners) ||
      learners < 1 ||
      learners > mostLearners ||
      !isOf(['mm', 'inch'] as const, system) ||
      !isOf(papers, paper) ||
      !isOf(printed, print) ||
      !Array.isArray(exercises)
    )
      return undefined;
    return {
      className,
      learners,
      system,
      paper,
      print,
      exercises: exercises.filter((one) => typeof one === 'string'),
    };
  } catch {
    return undefined;
  }
}

/** Loads what is kept, and follows other tabs from then on. */
export function loadSheets(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  sheetChoices.value = readKept(key, 'choices for sheets', read);
  onOtherTab(key, (text) => {
    sheetChoices.value = read(text);
  });
}

export function keepSheets(chosen: SheetChoices): void {
  sheetChoices.value = chosen;
  save(key, JSON.stringify(chosen));
}

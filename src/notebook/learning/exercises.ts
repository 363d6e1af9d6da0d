/**
 * Who does the exercises, and the tries made so far: kept on this device alone, to be looked at and printed. Nothing of it
 * goes anywhere.
 */
import { signal } from '@preact/signals';
import { readKept } from '../aside.ts';
import { onOtherTab, save } from '../storage.ts';

/** The name of a class and a number in it. */
export interface Member {
  readonly className: string;
  readonly number: number;
}

/** One answer that was given, as it is printed. */
export interface Try extends Member {
  /** Id of the exercise. */
  readonly exercise: string;
  /** What was asked: "outside length". */
  readonly asked: string;
  /** As it was typed or chosen. */
  readonly entry: string;
  /** What was said to it. */
  readonly said: string;
  readonly right: boolean;
}

const keys = { member: 'exercise-member', tries: 'exercise-tries' } as const;
/** More is more than a course has; the oldest go first. */
export const mostTries = 300;

export const member = signal<Member | undefined>(undefined);
export const tries = signal<readonly Try[]>([]);
let awake = false;

/** As `learnerOf` reads them from a link. */
const highestNumber = 999;
const longestName = 60;

function readJson(text: string | undefined): unknown {
  try {
    return JSON.parse(text ?? 'null');
  } catch {
    return null;
  }
}

const isMember = (value: unknown): value is Member =>
  typeof value === 'object' &&
  value !== null &&
  typeof (value as Member).className === 'string' &&
  (value as Member).className.length <= longestName &&
  Number.isInteger((value as Member).number) &&
  Math.abs((value as Member).number) <= highestNumber;
const readMember = (text: string | undefined): Member | undefined => {
  const kept = readJson(text);
  return isMember(kept) ? { className: kept.className, number: kept.number } : undefined;
};

const isTry = (value: unknown): value is Try =>
  isMember(value) &&
  ['exercise', 'asked', 'entry', 'said'].every(
    (name) => typeof (value as unknown as Record<string, unknown>)[name] === 'string',
  ) &&
  typeof (value as Try).right === 'boolean';

const readTries = (text: string | undefined): readonly Try[] => {
  const kept = readJson(text);
  return Array.isArray(kept)
    ? kept.filter(isTry).map(({ className, number, exercise, asked, entry, said, right }) => ({
        className,
        number,
        exercise,
        asked,
        entry,
        said,
        right,
      }))
    : [];
};
const keptTries = (): readonly Try[] => readKept(keys.tries, 'tries', readTries);

/** Loads what is kept, and follows other tabs from then on. A member named by the address comes before a kept one. */
export function loadExercises(named: Member | undefined): void {
  if (typeof window === 'undefined') return;
  if (!awake) {
    awake = true;
    member.value = readKept(keys.member, 'class and number', readMember);
    tries.value = keptTries();
    onOtherTab(keys.tries, (text) => {
      tries.value = readTries(text);
    });
    // Two learners may share a device, a tab each: another's name is taken only where there is none.
    onOtherTab(keys.member, (text) => {
      if (text !== '' && member.peek()) return;
      member.value = readMember(text);
    });
  }
  if (named) chooseMember(named);
}

export function chooseMember(chosen: Member): void {
  member.value = chosen;
  save(keys.member, JSON.stringify(chosen));
}

/** Adds an answer to what any tab has kept meanwhile. */
export function addTry(one: Try): void {
  // A refused store keeps nothing: then this page's own are all there are.
  const kept = keptTries();
  const before = kept.length >= tries.value.length ? kept : tries.value;
  tries.value = [...before, one].slice(-mostTries);
  save(keys.tries, JSON.stringify(tries.value));
}

/** Forgets every try. */
export function clearTries(): void {
  tries.value = [];
  save(keys.tries, '[]');
}

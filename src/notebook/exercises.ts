/**
 * Who does the exercises, and the tries made so far: kept on this device alone, to be looked at and printed. Nothing of it
 * goes anywhere.
 */
import { signal } from '@preact/signals';
import { load, onOtherTab, save } from './storage.ts';

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
  Number.isInteger((value as Member).number);

const isTry = (value: unknown): value is Try =>
  isMember(value) &&
  ['exercise', 'asked', 'entry', 'said'].every(
    (name) => typeof (value as unknown as Record<string, unknown>)[name] === 'string',
  ) &&
  typeof (value as Try).right === 'boolean';

const readTries = (text: string | undefined): readonly Try[] => {
  const kept = readJson(text);
  return Array.isArray(kept) ? kept.filter(isTry) : [];
};

/** Loads what is kept, and follows other tabs from then on. A member named by the address comes before a kept one. */
export function loadExercises(named: Member | undefined): void {
  if (typeof window === 'undefined') return;
  if (!awake) {
    awake = true;
    const kept = readJson(load(keys.member));
    member.value = isMember(kept) ? kept : undefined;
    tries.value = readTries(load(keys.tries));
    onOtherTab(keys.tries, (text) => {
      tries.value = readTries(text);
    });
    // Two learners may share a device, a tab each: another's name is taken only where there is none.
    onOtherTab(keys.member, (text) => {
      const chosen = readJson(text);
      if (text !== '' && member.peek()) return;
      member.value = isMember(chosen) ? chosen : undefined;
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
  const kept = readTries(load(keys.tries));
  const before = kept.length >= tries.value.length ? kept : tries.value;
  tries.value = [...before, one].slice(-mostTries);
  save(keys.tries, JSON.stringify(tries.value));
}

/** Forgets every try. */
export function clearTries(): void {
  tries.value = [];
  save(keys.tries, '[]');
}

/**
 * Which steps of the work are ticked as done: kept on the device by the name of the box, so that a kept design finds its
 * ticks again, and the same in every tab. With them stands what the box was like when the last one was set: a box that
 * only got another name keeps its ticks, and the sheet can say that a box was changed since.
 */
import { signal } from '@preact/signals';
import type { Box } from '../box/subjects/inputs.ts';
import { readKept } from './aside.ts';
import { bases } from './bases.ts';
import { onOtherTab, save } from './storage.ts';

const key = 'done';
/** Boxes that are remembered, the latest last: as many as designs are kept, and some that are not. */
const most = 60;

interface Ticks {
  readonly steps: readonly string[];
  /** What the box was like, see `likeness`. */
  readonly of: string;
}

type Kept = Readonly<Record<string, Ticks>>;

const kept = signal<Kept>({});
let awake = false;

const isTicks = (value: unknown): value is Ticks => {
  const { steps, of } = (value ?? {}) as Partial<Record<keyof Ticks, unknown>>;
  return (
    typeof of === 'string' &&
    Array.isArray(steps) &&
    steps.every((one) => typeof one === 'string' && one.length < 40)
  );
};

/** The ticks in a text that claims to hold them; what cannot be read is dropped. */
function readDone(text: string | undefined): Kept {
  try {
    const claimed: unknown = JSON.parse(text ?? '{}');
    if (typeof claimed !== 'object' || claimed === null) return {};
    return Object.fromEntries(
      Object.entries(claimed).flatMap(([name, ticks]: [string, unknown]) =>
        isTicks(ticks) ? [[name, { steps: ticks.steps, of: ticks.of }]] : [],
      ),
    );
  } catch {
    return {};
  }
}

/** Reads what is kept, and follows other tabs from then on. */
export function loadDone(): void {
  if (awake || typeof window === 'undefined') return;
  awake = true;
  kept.value = readKept(key, 'ticked steps', readDone);
  onOtherTab(key, (text) => {
    kept.value = readDone(text);
  });
}

/** What a box is like but for its name, the reasons given, and the air of the day, which the first step measures. */
const made = ({ name: _name, accepted: _accepted, humidityToday: _today, ...rest }: Box) => rest;
function hash(text: string): string {
  let mixed = 0x811c9dc5;
  for (const sign of text) mixed = Math.imul(mixed ^ sign.codePointAt(0)!, 0x01000193);
  return (mixed >>> 0).toString(36);
}

/** By what differs from a base that never changes, so that a box is like itself when the site gets another input. */
function likeness(box: Box): string {
  const base: Readonly<Record<string, unknown>> = { ...bases[1]! };
  const differs = Object.entries(made(box)).filter(
    ([name, value]) => JSON.stringify(value) !== JSON.stringify(base[name]),
  );
  return hash(JSON.stringify(differs.sort(([one], [other]) => (one < other ? -1 : 1))));
}
/** As ticks were kept at first: by all inputs there were. */
const formerLikeness = (box: Box): string => hash(JSON.stringify(made(box)));

export interface Done {
  readonly steps: ReadonlySet<string>;
  /** Whether the box is another than when the last tick was set. */
  readonly changed: boolean;
}

/** The ticks of a box: those under its name, or those of a box that is like it in all but the name. */
export function doneOf(box: Box): Done {
  const own = [likeness(box), formerLikeness(box)];
  // A box may be called “constructor”.
  const named = Object.hasOwn(kept.value, box.name) ? kept.value[box.name] : undefined;
  const found = named ?? Object.values(kept.value).find(({ of }) => own.includes(of));
  return {
    steps: new Set(found?.steps),
    changed: found !== undefined && found.steps.length > 0 && !own.includes(found.of),
  };
}

function put(box: Box, steps: readonly string[]): void {
  const { [box.name]: _old, ...others } = { ...kept.value, ...readKept(key, 'ticked steps', readDone) };
  const all = Object.entries({ ...others, [box.name]: { steps, of: likeness(box) } });
  kept.value = Object.fromEntries(all.slice(-most));
  save(key, JSON.stringify(kept.value));
}

/** Ticks a step of a box, or takes the tick back. */
export function tick(box: Box, step: string, isDone: boolean): void {
  const others = [...doneOf(box).steps].filter((one) => one !== step);
  put(box, isDone ? [...others, step] : others);
}

/** Takes all ticks of a box back. */
export const startOver = (box: Box): void => put(box, []);

/**
 * Asks the worker. One question is on its way at a time, so that a newer one about the same thing takes the place of one
 * that still waits, and answers are kept by question, since a reader goes back and forth. The worker is fetched with the
 * first question; where it cannot be, every question waiting is told so, and the next one tries again.
 */
import type { Answers, Question } from './questions.ts';

/** Said where the worker could not be fetched, or failed. */
const notReckoned =
  'A part of this page could not be fetched, so this is not worked out. It is tried again with the next change.';

interface Waiting {
  readonly question: Question;
  readonly key: string;
  readonly done: (answer: Answers[keyof Answers]) => void;
  readonly failed: (why: Error) => void;
}

/** Answers kept; the oldest goes first. */
const mostKept = 120;
const kept = new Map<string, Answers[keyof Answers]>();
/** What waits, by what it is about: `bands wall`. */
const waiting = new Map<string, Waiting>();
/** What is promised and not answered yet, by question. */
const pending = new Map<string, Promise<Answers[keyof Answers]>>();
let worker: Worker | undefined;
let asked: Waiting | undefined;

/** Rejected where a newer question about the same thing has taken its place. */
export class Overtaken extends Error {}

function keep(key: string, answer: Answers[keyof Answers]): void {
  kept.set(key, answer);
  if (kept.size > mostKept) kept.delete(kept.keys().next().value!);
}

function start(): Worker {
  const made = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  made.addEventListener('message', ({ data }: MessageEvent<Answers[keyof Answers]>) => {
    const { key, done } = asked!;
    asked = undefined;
    keep(key, data);
    done(data);
    next();
  });
  made.addEventListener('error', (event) => {
    event.preventDefault();
    made.terminate();
    worker = undefined;
    const all = [asked, ...waiting.values()];
    asked = undefined;
    waiting.clear();
    for (const one of all) one?.failed(new Error(notReckoned));
  });
  return made;
}

function next(): void {
  const [first] = waiting;
  if (asked || !first) return;
  const [about, question] = first;
  waiting.delete(about);
  asked = question;
  worker ??= start();
  worker.postMessage(question.question);
}

/**
 * The answer, from what is kept or from the worker.
 * @throws Overtaken where a newer question about the same thing came before it was asked; else an error whose message is
 *   for the reader
 */
export function reckon<Name extends keyof Answers>(question: Question<Name>): Promise<Answers[Name]> {
  const key = JSON.stringify(question);
  const known = kept.get(key);
  if (known) return Promise.resolve(known as Answers[Name]);
  const same = pending.get(key);
  if (same) return same as Promise<Answers[Name]>;
  const promised = new Promise<Answers[keyof Answers]>((done, failed) => {
    const about = `${question.ask} ${typeof question.of === 'string' ? question.of : ''}`;
    waiting.get(about)?.failed(new Overtaken());
    waiting.set(about, { question: question as Question, key, done, failed });
    next();
  });
  pending.set(key, promised);
  const forget = () => pending.delete(key);
  promised.then(forget, forget);
  return promised as Promise<Answers[Name]>;
}

/**
 * The words of relations: title, equation, names of symbols, evidence and source. A page is built with those of its
 * results; the browser's code carries none of them, and fetches them when the first reason is opened. The page says where
 * they are, so that they are those of its own version.
 */

import { signal } from '@preact/signals';

export interface Reason {
  readonly title: string;
  /** MathML in symbols, and with a place `<mn class="n-t">` for each number. */
  readonly symbols: string;
  readonly numbers: string;
  /** Name of each input by symbol. */
  readonly names: Readonly<Record<string, string>>;
  readonly evidence: string;
  /** The cited work, or the reason in a sentence. */
  readonly source: string;
  readonly limits?: string | undefined;
}

/** What is known so far, by relation; and whether it could not be fetched. */
export const reasons = signal<Readonly<Record<string, Reason>>>({});
export const reasonsMissing = signal(false);

/** While pages are built: the words of the relations a page shows. */
export function provideReasons(some: Readonly<Record<string, Reason>>): void {
  reasons.value = { ...reasons.value, ...some };
}

let asked: Promise<void> | undefined;

/** In the browser: fetches the words once; a failure is told, and the next opening tries again. */
export function fetchReasons(): Promise<void> {
  asked ??= fetch(document.documentElement.dataset.reasons ?? '')
    .then((answer) => (answer.ok ? answer.json() : Promise.reject(new Error(answer.statusText))))
    .then((found: Record<string, Reason>) => {
      reasons.value = found;
      reasonsMissing.value = false;
    })
    .catch(() => {
      asked = undefined;
      reasonsMissing.value = true;
    });
  return asked;
}

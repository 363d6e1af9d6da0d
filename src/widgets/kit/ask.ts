/** Opens the question field from anywhere on a page; the field itself stands in the frame (`ask/Ask.tsx`). */
import { signal } from '@preact/signals';

/** Whether the field is open. */
export const isAsking = signal(false);
/** What is asked. It stays while the field is closed, so that a reader finds it again. */
export const question = signal('');

/** Opens the field, with a question where one is given. Call it while a press is being handled, or a phone shows no keys. */
export function ask(text?: string): void {
  if (text !== undefined) question.value = text;
  isAsking.value = true;
}

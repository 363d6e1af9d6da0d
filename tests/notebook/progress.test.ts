/** What a lesson keeps of the reader's way through it. */
import { beforeEach, expect, test, vi } from 'vitest';

const store = new Map<string, string>();
beforeEach(() => {
  store.clear();
  vi.resetModules();
  vi.stubGlobal('window', {});
  vi.stubGlobal('addEventListener', () => {});
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (key: string, text: string) => store.set(key, text),
  });
});
const fresh = async () => {
  vi.resetModules();
  const one = await import('../../src/notebook/progress.ts');
  one.loadProgress();
  return one;
};

test('steps that are done, and the last place, are found again on the next visit', async () => {
  const first = await fresh();
  first.finish('proportion', 'by-eye', 'done');
  first.finish('proportion', 'inside', 'skipped');
  first.reach('proportion', 'inside');
  const next = await fresh();
  expect(next.progress.value.proportion).toEqual({
    at: 'inside',
    steps: { 'by-eye': 'done', inside: 'skipped' },
  });
  expect(next.lastLesson.value).toBe('proportion');
});

test('what is done stays done though its guess is skipped later, until it is covered again', async () => {
  const { finish, progress, reopen } = await fresh();
  finish('lid', 'a', 'done');
  finish('lid', 'a', 'skipped');
  expect(progress.value.lid?.steps.a).toBe('done');
  reopen('lid', 'a');
  expect(progress.value.lid?.steps.a).toBeUndefined();
});

test('to start over empties this lesson and no other', async () => {
  const { finish, progress, startOver } = await fresh();
  finish('one', 'a', 'done');
  finish('two', 'a', 'done');
  startOver('one');
  expect(progress.value).toEqual({ one: { steps: {} }, two: { steps: { a: 'done' } } });
});

test('a damaged store is read for what is whole in it', async () => {
  for (const [kept, lessons] of [
    ['not JSON', {}],
    ['[]', {}],
    ['{"lessons":{"a":{"steps":{"x":"done","y":7}},"b":3}}', { a: { steps: { x: 'done' } } }],
  ] as const) {
    store.set('rule-and-reason.progress', kept);
    expect((await fresh()).progress.value).toEqual(lessons);
  }
});
